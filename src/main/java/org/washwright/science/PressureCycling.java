package org.washwright.science;

import java.util.OptionalLong;

/**
 * Soil or old liquid that is left in a hole after cycles of pressure, each of which exchanges a share of what is in it: {@code
 * left = (1 - f)^n} (dilution in steps, any textbook of mass transfer).
 *
 * <p>f share exchanged in a cycle, 0 to 1; n cycles. Holds for what mixes within the hole between cycles; what clings to the wall
 * comes off more slowly. Above 1000 cycles the value is given with a warning.
 */
public final class PressureCycling {

    private static final long MOST = 1000;

    private PressureCycling() {}

    /**
     * Share that is left after a number of cycles.
     *
     * @throws RefusedInput for an exchanged share outside 0 to 1 or a negative number
     */
    public static Estimate remainingShare(double exchangedShare, long cycles) {
        Need.between(exchangedShare, 0, 1, "share exchanged in a cycle", "");
        if (cycles < 0) {
            throw Need.refused(cycles, "number of cycles", "", "give zero or more");
        }
        return Estimate.of(StrictMath.pow(1 - exchangedShare, cycles))
                .warnIf(
                        cycles > MOST,
                        "Cycling is reckoned for up to 1000 cycles, not for " + cycles
                                + ": find a way to exchange more at once");
    }

    /**
     * Fewest cycles after which at most a share is left; empty when nothing is exchanged.
     *
     * @throws RefusedInput for an exchanged share outside 0 to 1, or a share to leave that is not above 0 and at
     *     most 1
     */
    public static OptionalLong cyclesToReach(double exchangedShare, double share) {
        Need.between(exchangedShare, 0, 1, "share exchanged in a cycle", "");
        Need.positive(share, "share to leave", "");
        Need.between(share, 0, 1, "share to leave", "");
        if (share == 1) {
            return OptionalLong.of(0);
        }
        if (exchangedShare == 0) {
            return OptionalLong.empty();
        }
        if (exchangedShare == 1) {
            return OptionalLong.of(1);
        }
        double cycles = StrictMath.log(share) / StrictMath.log1p(-exchangedShare);
        // A whole number may come out a rounding error above itself.
        return OptionalLong.of((long) StrictMath.ceil(cycles - 1e-9));
    }
}
