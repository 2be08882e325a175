package org.washwright.science;

/**
 * Height to which a liquid climbs in a bore (Jurin 1718): {@code h = 2 s cos(theta) / (rho g r)}.
 *
 * <p>h in m, negative where the liquid is pressed down; s surface tension in N/m, theta contact angle in rad, rho density in
 * kg/m³, r radius in m, g = 9.80665 m/s² (standard gravity, CGPM 1901). Holds while the bore is narrow beside the capillary
 * length {@code sqrt(s / (rho g))}; where the radius comes above it the value is given with a warning.
 */
public final class JurinRise {

    /** Standard acceleration of gravity in m/s². */
    public static final double GRAVITY = 9.80665;

    private JurinRise() {}

    /**
     * Height in m.
     *
     * @throws RefusedInput for a quantity that is not above zero or an angle outside 0 to pi
     */
    public static Estimate height(double surfaceTension, double contactAngle, double density, double radius) {
        Need.positive(surfaceTension, "surface tension", "N/m");
        Need.contactAngle(contactAngle);
        Need.positive(density, "density of the liquid", "kg/m³");
        Need.positive(radius, "radius of the bore", "m");
        double length = StrictMath.sqrt(surfaceTension / (density * GRAVITY));
        return Estimate.of(2 * surfaceTension * StrictMath.cos(contactAngle) / (density * GRAVITY * radius))
                .warnIf(
                        radius > length,
                        () -> "Jurin's height holds for bores narrower than the capillary length of "
                                + Need.text(length * 1e3) + " mm in radius, not for " + Need.text(radius * 1e3)
                                + " mm");
    }
}
