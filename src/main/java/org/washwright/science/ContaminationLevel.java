package org.washwright.science;

/**
 * Contamination levels of ISO 16232:2018: counts per 1000 cm² or 100 cm³. The upper count belongs to the level, the lower does
 * not. Levels 00, 0, 1, 4, 10, 12, 15 and 17 were seen in print; the others from memory.
 */
public final class ContaminationLevel {

    /** Level 00: no particle at all. */
    public static final int NONE = -1;

    private static final double[] UPPER = {
        1, 2, 4, 8, 16, 32, 64, 130, 250, 500, 1_000, 2_000, 4_000, 8_000, 16_000, 32_000, 64_000, 130_000, 250_000,
        500_000, 1e6, 2e6, 4e6, 8e6, 16e6
    };

    private ContaminationLevel() {}

    /** Highest count of a level; 0 for level 00. */
    public static double highest(int level) {
        if (level < NONE || level >= UPPER.length) {
            throw new IllegalArgumentException("levels run from 00 to 24, not to " + level);
        }
        return level == NONE ? 0 : UPPER[level];
    }

    /** Lowest level that holds a count. */
    public static int of(double count) {
        if (Require.notNegative(count, "count") == 0) {
            return NONE;
        }
        for (int level = 0; level < UPPER.length; level++) {
            if (count <= UPPER[level]) {
                return level;
            }
        }
        throw new IllegalArgumentException("no level holds " + count + " particles; the highest ends at 16 million");
    }

    /** Count per 1000 cm² of a count on an area, m². */
    public static double perThousandSquareCentimetres(double count, double area) {
        return Require.notNegative(count, "count") * 0.1 / Require.positive(area, "area");
    }
}
