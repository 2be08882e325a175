package org.washwright.science;

/**
 * How far flowing rinses thin what the parts carry over, by the balance of each tank: one tank {@code C0/C1 = 1 + R}; n
 * tanks in a row, each fed with fresh water, {@code C0/Cn = (1 + R)^n}; n tanks with the water against the parts {@code
 * C0/Cn = 1 + R + R^2 + ... + R^n} (EPA 625/8-82-008, Control and Treatment Technology for the Metal Finishing
 * Industry: In-Plant Changes, 1982, from memory; Kushner, Water and Waste Control for the Plating Shop, from memory).
 *
 * <p>R fresh water over drag-out, both in m³/s; for tanks in a row R is the water of one tank. C0 concentration in the
 * bath before, Cn in the last rinse, in one unit. Holds for tanks that are well mixed, at rest in their concentrations,
 * fed with water free of what is rinsed, and where as much is dragged out as dragged in. Films that dry on, blind holes
 * and poor mixing need more water; no number here says how much more.
 */
public final class RinseDilution {

    private static final int MOST_TANKS = 100;

    /** From here on the rule of the root asks for at most a quarter more than the balance: 5 to 4 with one tank. */
    private static final double LARGE_RATIO = 5;

    private RinseDilution() {}

    /**
     * C0/C1 of one tank.
     *
     * @throws RefusedInput for a negative ratio
     */
    public static Estimate single(double waterRatio) {
        return Estimate.of(1 + ratio(waterRatio));
    }

    /**
     * C0/Cn of tanks in a row, each fed with its own fresh water, n R in all.
     *
     * @throws RefusedInput for a negative ratio or fewer than one tank
     */
    public static Estimate series(double waterRatio, int tanks) {
        return Estimate.of(StrictMath.pow(1 + ratio(waterRatio), count(tanks)));
    }

    /**
     * C0/Cn of tanks through which one stream of water runs against the parts.
     *
     * @throws RefusedInput for a negative ratio or fewer than one tank
     */
    public static Estimate counterCurrent(double waterRatio, int tanks) {
        return Estimate.of(sum(ratio(waterRatio), count(tanks)));
    }

    /**
     * R with which counter-current tanks reach a dilution C0/Cn: the inverse of {@link #counterCurrent}, halved down to
     * neighbouring numbers.
     *
     * @throws RefusedInput for a dilution below 1 or fewer than one tank
     */
    public static Estimate waterRatio(double dilution, int tanks) {
        dilution(dilution);
        double low = 0;
        // The sum is never below R^n and never below 1 + R.
        double high = StrictMath.min(dilution - 1, StrictMath.pow(dilution, 1.0 / count(tanks)));
        double middle = high / 2;
        while (low < middle && middle < high) {
            if (sum(middle, tanks) < dilution) {
                low = middle;
            } else {
                high = middle;
            }
            middle = low + (high - low) / 2;
        }
        return Estimate.of(high);
    }

    /**
     * R by the rule of thumb {@code (C0/Cn)^(1/n)}, always on the safe side; given with a warning below 5, where it
     * asks for far too much water.
     *
     * @throws RefusedInput for a dilution below 1 or fewer than one tank
     */
    public static Estimate approximateWaterRatio(double dilution, int tanks) {
        double ratio = StrictMath.pow(dilution(dilution), 1.0 / count(tanks));
        return Estimate.of(ratio)
                .warnIf(
                        ratio < LARGE_RATIO,
                        () -> "The rule of the root holds where much water meets little drag-out, not at "
                                + Need.text(ratio) + " to 1: solve the balance of the tanks");
    }

    /** 1 + R + ... + R^n. */
    private static double sum(double ratio, int tanks) {
        double sum = 1;
        for (int i = 0; i < tanks; i++) {
            sum = sum * ratio + 1;
        }
        return sum;
    }

    private static double ratio(double waterRatio) {
        return Need.notNegative(waterRatio, "fresh water over drag-out", "");
    }

    private static double dilution(double dilution) {
        if (!(dilution >= 1) || Double.isInfinite(dilution)) {
            throw Need.refused(dilution, "dilution from bath to last rinse", "", "give 1 or a number above it");
        }
        return dilution;
    }

    private static int count(int tanks) {
        Need.between(tanks, 1, MOST_TANKS, "number of rinse tanks", "");
        return tanks;
    }
}
