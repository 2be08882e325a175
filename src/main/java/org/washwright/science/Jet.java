package org.washwright.science;

import org.washwright.quantity.Dimension;

/**
 * Jet out of a nozzle, by Bernoulli's equation and the balance of momentum (Bernoulli 1738, from memory): {@code v =
 * sqrt(2 p / rho)}, {@code F = rho A v^2 = 2 p A}, {@code Q = v A}, A = pi d²/4.
 *
 * <p>v in m/s, p pressure above that of the air in Pa, rho in kg/m³, F force on a flat wall across the jet in N, Q in
 * m³/s, d in m. For a nozzle without loss and contraction; real ones give 60 to 98 % of the flow. Above 100 MPa, where
 * liquids give way, the value is given with a warning.
 */
public final class Jet {

    private static final double STIFF = 100e6;

    private Jet() {}

    /**
     * Velocity in m/s.
     *
     * @throws RefusedInput for a negative pressure or a density that is not above zero
     */
    public static Estimate velocity(double pressure, double density) {
        check(pressure);
        Need.positive(density, "density", "kg/m³");
        return warned(StrictMath.sqrt(2 * pressure / density), pressure);
    }

    /**
     * Force in N on a flat wall that the jet meets at a right angle.
     *
     * @throws RefusedInput for a negative pressure or a diameter that is not above zero
     */
    public static Estimate force(double pressure, double diameter) {
        check(pressure);
        return warned(2 * pressure * area(diameter), pressure);
    }

    /**
     * Volume rate in m³/s.
     *
     * @throws RefusedInput for a negative pressure, or a density or diameter that is not above zero
     */
    public static Estimate flow(double pressure, double density, double diameter) {
        Estimate velocity = velocity(pressure, density);
        return velocity.withValue(velocity.value() * area(diameter));
    }

    private static void check(double pressure) {
        Need.notNegative(pressure, "pressure at the nozzle", "Pa");
    }

    private static double area(double diameter) {
        Need.positive(diameter, "diameter of the nozzle", "m");
        return StrictMath.PI / 4 * diameter * diameter;
    }

    private static Estimate warned(double value, double pressure) {
        return Need.within(
                Estimate.of(value),
                pressure,
                0,
                STIFF,
                Dimension.PRESSURE,
                "Jets are computed as those of a liquid that does not give way");
    }
}
