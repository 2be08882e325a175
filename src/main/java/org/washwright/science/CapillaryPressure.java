package org.washwright.science;

import org.washwright.quantity.Dimension;

/**
 * Pressure with which a bore or gap draws a liquid in (Young 1805, Laplace 1805): {@code p = 2 s cos(theta) / r} in a cylinder of
 * radius r, {@code p = 2 s cos(theta) / w} between plates a width w apart.
 *
 * <p>p in Pa, negative where the liquid is kept out (theta above 90°); s surface tension in N/m, theta contact angle in rad, r
 * and w in m. Holds from about 10 nm, where liquid is no longer a continuum, to 2 mm, where gravity bends the surface
 * (capillary length of water 2.7 mm, of solvents 1.5 to 2 mm); outside, the value is given with a warning.
 */
public final class CapillaryPressure {

    private static final double FINEST = 10e-9;
    private static final double WIDEST = 2e-3;

    private CapillaryPressure() {}

    /**
     * In a round bore of a radius in m.
     *
     * @throws RefusedInput for a surface tension or radius that is not above zero or an angle outside 0 to pi
     */
    public static Estimate cylinder(double surfaceTension, double contactAngle, double radius) {
        Need.positive(radius, "radius of the bore", "m");
        return over(surfaceTension, contactAngle, radius);
    }

    /**
     * In a gap between two faces a width in m apart.
     *
     * @throws RefusedInput for a surface tension or width that is not above zero or an angle outside 0 to pi
     */
    public static Estimate gap(double surfaceTension, double contactAngle, double width) {
        Need.positive(width, "width of the gap", "m");
        return over(surfaceTension, contactAngle, width);
    }

    private static Estimate over(double surfaceTension, double contactAngle, double size) {
        Need.positive(surfaceTension, "surface tension", "N/m");
        Need.contactAngle(contactAngle);
        return Need.within(
                Estimate.of(2 * surfaceTension * StrictMath.cos(contactAngle) / size),
                size,
                FINEST,
                WIDEST,
                Dimension.FINE_LENGTH,
                "Capillary pressure by Young and Laplace holds");
    }
}
