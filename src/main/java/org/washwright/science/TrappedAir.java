package org.washwright.science;

/**
 * How much of a blind hole with its mouth down a bath fills, for the air in it is only pressed together (Boyle 1662): {@code
 * filled = 1 - p0 / (p0 + rho g H + pc)}.
 *
 * <p>p0 ambient pressure in Pa, rho density of the bath in kg/m³, H depth of the mouth in m, pc capillary pressure in Pa
 * (negative where the bath does not wet), g = 9.80665 m/s². Air keeps its temperature and does not dissolve; over hours it
 * slowly does, in a hot bath vapour adds to it. Depths above 10 m are no cleaning bath: the value is given with a warning.
 */
public final class TrappedAir {

    private static final double DEEPEST = 10;

    private TrappedAir() {}

    /**
     * Share of the hole that fills with liquid, 0 to 1.
     *
     * @throws RefusedInput for a negative depth, a density or pressure that is not above zero
     */
    public static Estimate filledShare(double density, double depth, double capillaryPressure, double ambientPressure) {
        Need.positive(density, "density of the bath", "kg/m³");
        Need.notNegative(depth, "depth of the mouth", "m");
        Need.finite(capillaryPressure, "capillary pressure", "Pa");
        Need.positive(ambientPressure, "ambient pressure", "Pa");
        double pressed = StrictMath.max(0, density * JurinRise.GRAVITY * depth + capillaryPressure);
        return Estimate.of(pressed / (ambientPressure + pressed))
                .warnIf(
                        depth > DEEPEST,
                        () -> "Trapped air is reckoned for baths up to 10 m deep, not for " + Need.text(depth) + " m")
                .warnIf(
                        density * JurinRise.GRAVITY * depth + capillaryPressure < 0,
                        "The bath does not wet the hole, and its depth does not press it in: nothing fills");
    }
}
