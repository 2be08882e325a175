package org.washwright.science;

/**
 * Flow of a liquid into a capillary by its own suction, by Washburn, Phys. Rev. 17 (1921) 273: L² = r σ cos θ t / (2 μ).
 * Holds for laminar flow, without gravity, into an open end.
 */
public final class WashburnPenetration {

    private WashburnPenetration() {}

    /** Length reached, m, after a time, s: radius m, surface tension N/m, wetting angle rad, viscosity Pa s. */
    public static double length(double seconds, double radius, double tension, double angle, double viscosity) {
        return StrictMath.sqrt(Require.positive(radius, "radius")
                * Require.positive(tension * StrictMath.cos(angle), "wetting tension")
                * Require.notNegative(seconds, "time")
                / (2 * Require.positive(viscosity, "viscosity")));
    }

    /** Time, s, to reach a length, m: radius m, surface tension N/m, wetting angle rad, viscosity Pa s. */
    public static double time(double length, double radius, double tension, double angle, double viscosity) {
        return 2
                * Require.positive(viscosity, "viscosity")
                * Require.notNegative(length, "length")
                * length
                / (Require.positive(radius, "radius")
                        * Require.positive(tension * StrictMath.cos(angle), "wetting tension"));
    }
}
