package org.washwright.science;

import org.washwright.quantity.Dimension;

/**
 * How far a wetting liquid creeps into a bore or pore that is open at the far end (Washburn, Physical Review 17 (1921) 273,
 * equation 13; Lucas 1918): {@code L = sqrt(r s cos(theta) t / (2 mu))}.
 *
 * <p>L in m, r radius in m, s surface tension in N/m, theta contact angle in rad, mu dynamic viscosity in Pa s, t in s. Without
 * inertia, gravity and trapped air: for radii up to 0.5 mm; above, the value is given with a warning. In a bore that is closed
 * at its end air stops the liquid: see {@link TrappedAir}. A liquid that does not wet (theta from 90°) does not enter: length 0
 * or time without end, with a warning.
 */
public final class WashburnPenetration {

    private static final double FINEST = 10e-9;
    private static final double WIDEST = 0.5e-3;

    private WashburnPenetration() {}

    /**
     * Length in m wetted after a time in s.
     *
     * @throws RefusedInput for a quantity that is not above zero, a negative time or an angle outside 0 to pi
     */
    public static Estimate length(
            double radius, double surfaceTension, double contactAngle, double viscosity, double time) {
        Need.notNegative(time, "time", "s");
        double speed = speed(radius, surfaceTension, contactAngle, viscosity);
        return warned(StrictMath.sqrt(StrictMath.max(0, speed) * time), speed, radius, contactAngle);
    }

    /**
     * Time in s until a length in m is wetted.
     *
     * @throws RefusedInput for a quantity that is not above zero, a negative length or an angle outside 0 to pi
     */
    public static Estimate time(
            double radius, double surfaceTension, double contactAngle, double viscosity, double length) {
        Need.notNegative(length, "length", "m");
        double speed = speed(radius, surfaceTension, contactAngle, viscosity);
        double time = speed > 0 ? length * length / speed : Double.POSITIVE_INFINITY;
        return warned(time, speed, radius, contactAngle);
    }

    /** Square of the wetted length over time, m²/s. */
    private static double speed(double radius, double surfaceTension, double contactAngle, double viscosity) {
        Need.positive(radius, "radius of the bore", "m");
        Need.positive(surfaceTension, "surface tension", "N/m");
        Need.contactAngle(contactAngle);
        Need.positive(viscosity, "dynamic viscosity", "Pa s");
        // The cosine of a right angle is not exactly zero in doubles.
        double cosine = contactAngle >= StrictMath.PI / 2 ? 0 : StrictMath.cos(contactAngle);
        return radius * surfaceTension * cosine / (2 * viscosity);
    }

    private static Estimate warned(double value, double speed, double radius, double contactAngle) {
        return Need.within(
                        Estimate.of(value),
                        radius,
                        FINEST,
                        WIDEST,
                        Dimension.FINE_LENGTH,
                        "Washburn's creeping flow holds for radii")
                .warnIf(
                        speed <= 0,
                        () -> "A liquid with a contact angle of " + Need.text(StrictMath.toDegrees(contactAngle))
                                + "° is not drawn in: it needs pressure, vacuum or a wetting agent");
    }
}
