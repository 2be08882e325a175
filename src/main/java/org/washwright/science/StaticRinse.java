package org.washwright.science;

/**
 * What gathers in a standing rinse: {@code C = C0 (1 - exp(-D t / V))} with a steady drag-out, {@code C = C0 (1 - (V /
 * (V + d))^k)} after k dips, by the balance of the tank (EPA 625/8-82-008, 1982, drag-out tanks, from memory).
 *
 * <p>C0 concentration in the bath before, in the unit of the answer; D drag-out in m³/s, which also leaves; d drag-out
 * of a dip in m³; V volume of the rinse in m³; t in s. The rinse starts clean and is well mixed. Both forms agree where
 * d is small against V; the answer never passes C0.
 */
public final class StaticRinse {

    private StaticRinse() {}

    /**
     * Concentration after a time of steady work.
     *
     * @throws RefusedInput for a negative quantity or a rinse without volume
     */
    public static Estimate concentration(double bath, double dragOutRate, double time, double volume) {
        check(bath, volume);
        Need.notNegative(dragOutRate, "drag-out", "m³/s");
        Need.notNegative(time, "time", "s");
        return Estimate.of(-bath * StrictMath.expm1(-dragOutRate * time / volume));
    }

    /**
     * Concentration after a number of dips.
     *
     * @throws RefusedInput for a negative quantity or a rinse without volume
     */
    public static Estimate afterDips(double bath, double dragOutPerDip, double volume, int dips) {
        check(bath, volume);
        Need.notNegative(dragOutPerDip, "drag-out of a dip", "m³");
        Need.notNegative(dips, "number of dips", "");
        return Estimate.of(-bath * StrictMath.expm1(-(double) dips * StrictMath.log1p(dragOutPerDip / volume)));
    }

    private static void check(double bath, double volume) {
        Need.notNegative(bath, "concentration in the bath before", "");
        Need.positive(volume, "volume of the rinse", "m³");
    }
}
