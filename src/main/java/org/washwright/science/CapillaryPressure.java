package org.washwright.science;

/** Pressure across a curved liquid surface, Pa, by Young and Laplace (1805, 1806): 2 σ cos θ / r in a bore, 2 σ cos θ / w in a gap. */
public final class CapillaryPressure {

    private CapillaryPressure() {}

    /** In a cylinder: surface tension N/m, wetting angle rad, radius m. Negative where the liquid does not wet. */
    public static double inCylinder(double tension, double angle, double radius) {
        return 2
                * Require.notNegative(tension, "surface tension")
                * StrictMath.cos(angle)
                / Require.positive(radius, "radius");
    }

    /** In a gap between plates: surface tension N/m, wetting angle rad, width m. */
    public static double inGap(double tension, double angle, double width) {
        return 2
                * Require.notNegative(tension, "surface tension")
                * StrictMath.cos(angle)
                / Require.positive(width, "width");
    }
}
