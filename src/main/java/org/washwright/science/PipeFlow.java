package org.washwright.science;

/**
 * Flow through a round bore (Hagen 1839, Poiseuille 1840; Reynolds 1883; all from memory): {@code Re = v d / nu},
 * {@code dp = 128 mu L Q / (pi d^4)}, {@code tau = 8 mu v / d}.
 *
 * <p>v mean velocity in m/s, d in m, nu in m²/s, mu in Pa s, L in m, Q in m³/s, dp in Pa, tau shear stress at the wall
 * in Pa. The two laminar ones hold for Re below 2300, away from the inlet. Turbulent flow, from about 4000, has more of
 * both: these methods do not know Re, so ask {@link #reynolds} first and take their values as the least.
 */
public final class PipeFlow {

    private PipeFlow() {}

    /**
     * Reynolds number; flow is laminar below 2300 and turbulent from about 4000.
     *
     * @throws RefusedInput for a negative velocity, or a diameter or viscosity that is not above zero
     */
    public static Estimate reynolds(double velocity, double diameter, double kinematicViscosity) {
        Need.notNegative(velocity, "velocity", "m/s");
        diameter(diameter);
        Need.positive(kinematicViscosity, "kinematic viscosity", "m²/s");
        return Estimate.of(velocity * diameter / kinematicViscosity);
    }

    /**
     * Pressure in Pa that laminar flow needs.
     *
     * @throws RefusedInput for a negative quantity, or a diameter or viscosity that is not above zero
     */
    public static Estimate laminarPressureDrop(double viscosity, double length, double flow, double diameter) {
        Need.positive(viscosity, "dynamic viscosity", "Pa s");
        Need.notNegative(length, "length", "m");
        Need.notNegative(flow, "volume rate", "m³/s");
        double square = diameter(diameter) * diameter;
        return Estimate.of(128 * viscosity * length * flow / (StrictMath.PI * square * square));
    }

    /**
     * Shear stress in Pa at the wall under laminar flow.
     *
     * @throws RefusedInput for a negative velocity, or a diameter or viscosity that is not above zero
     */
    public static Estimate laminarWallShear(double viscosity, double velocity, double diameter) {
        Need.positive(viscosity, "dynamic viscosity", "Pa s");
        Need.notNegative(velocity, "velocity", "m/s");
        return Estimate.of(8 * viscosity * velocity / diameter(diameter));
    }

    private static double diameter(double diameter) {
        return Need.positive(diameter, "diameter of the bore", "m");
    }
}
