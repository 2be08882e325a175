package org.washwright.science;

/** Exchange of the liquid in a hole by pressure cycles: after n cycles (1 − f)^n of the old liquid is left. */
public final class PressureCycling {

    private PressureCycling() {}

    /** Share left after a number of cycles, of which each exchanges a share. */
    public static double left(double exchanged, double cycles) {
        return StrictMath.pow(1 - share(exchanged), Require.notNegative(cycles, "number of cycles"));
    }

    /** Cycles, rounded up, until no more than a share is left. */
    public static double cyclesTo(double left, double exchanged) {
        double each = share(exchanged);
        if (each == 1) {
            return 1;
        }
        // A rounding error must not ask for one cycle more.
        return StrictMath.ceil(StrictMath.log(Require.positive(left, "share left")) / StrictMath.log(1 - each) - 1e-9);
    }

    private static double share(double exchanged) {
        if (!(exchanged > 0 && exchanged <= 1)) {
            throw new IllegalArgumentException("a cycle exchanges more than nothing and at most all, not " + exchanged);
        }
        return exchanged;
    }
}
