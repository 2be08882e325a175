package org.washwright.science;

/** Height of a liquid in a capillary, m, by Jurin (1718): h = 2 σ cos θ / (ρ g r). Holds for bores well below the capillary length. */
public final class JurinRise {

    /** Standard gravity, m/s²; CGPM 1901, exact. */
    static final double G = 9.80665;

    private JurinRise() {}

    /** Height: surface tension N/m, wetting angle rad, density kg/m³, radius m. */
    public static double height(double tension, double angle, double density, double radius) {
        return CapillaryPressure.inCylinder(tension, angle, radius) / (Require.positive(density, "density") * G);
    }
}
