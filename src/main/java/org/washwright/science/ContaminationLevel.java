package org.washwright.science;

import java.util.OptionalInt;

/**
 * Contamination levels of ISO 16232:2018 and VDA 19.1:2015: counts of particles per 1000 cm² of wetted surface or 100 cm³ of
 * wetted volume. A level holds its upper bound and not its lower; level 00 is no particle, level 0 up to one. Bounds double,
 * rounded as printed (130, 250, 500, 1000). Levels 00, 0, 1, 4, 10, 12, 15 and 17 as seen in trade explanations and a
 * laboratory report, the rest from memory.
 *
 * <p>Level 00 is the number {@link #NONE} here. Above level 24, 16 million, there is no level.
 */
public final class ContaminationLevel {

    /** Level 00: no particle. */
    public static final int NONE = -1;

    /** The highest level. */
    public static final int HIGHEST = 24;

    private static final double[] UPPER = {
        1, 2, 4, 8, 16, 32, 64, 130, 250, 500, 1e3, 2e3, 4e3, 8e3, 16e3, 32e3, 64e3, 130e3, 250e3, 500e3, 1e6, 2e6, 4e6,
        8e6, 16e6
    };
    private static final double REFERENCE_AREA = 0.1;
    private static final double REFERENCE_VOLUME = 1e-4;

    private ContaminationLevel() {}

    /**
     * Level of a count per 1000 cm² or 100 cm³; empty above 16 million.
     *
     * @throws RefusedInput for a negative count
     */
    public static OptionalInt of(double count) {
        Need.notNegative(count, "count of particles", "");
        if (count == 0) {
            return OptionalInt.of(NONE);
        }
        for (int level = 0; level <= HIGHEST; level++) {
            if (count <= UPPER[level]) {
                return OptionalInt.of(level);
            }
        }
        return OptionalInt.empty();
    }

    /**
     * Largest count of a level.
     *
     * @throws RefusedInput for a level outside -1 (00) to 24
     */
    public static double upperBound(int level) {
        Need.between(level, NONE, HIGHEST, "contamination level", "");
        return level == NONE ? 0 : UPPER[level];
    }

    /**
     * Count that a level stays above; 0 for levels 00 and 0.
     *
     * @throws RefusedInput for a level outside -1 (00) to 24
     */
    public static double lowerBound(int level) {
        Need.between(level, NONE, HIGHEST, "contamination level", "");
        return level <= 0 ? 0 : UPPER[level - 1];
    }

    /** How a level is written: 00, 0, 1 and so on. */
    public static String text(int level) {
        return level == NONE ? "00" : Integer.toString(level);
    }

    /**
     * Count per 1000 cm² of particles counted on a wetted surface in m².
     *
     * @throws RefusedInput for a negative count or a surface that is not above zero
     */
    public static double perReferenceArea(double count, double wettedArea) {
        Need.notNegative(count, "count of particles", "");
        return count * REFERENCE_AREA / Need.positive(wettedArea, "wetted surface", "m²");
    }

    /**
     * Count per 100 cm³ of particles counted on parts of a wetted volume in m³.
     *
     * @throws RefusedInput for a negative count or a volume that is not above zero
     */
    public static double perReferenceVolume(double count, double wettedVolume) {
        Need.notNegative(count, "count of particles", "");
        return count * REFERENCE_VOLUME / Need.positive(wettedVolume, "wetted volume", "m³");
    }
}
