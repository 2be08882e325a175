package org.washwright.science;

/**
 * Time in which dissolved matter spreads through still liquid by diffusion (Einstein 1905, Fick 1855), as an order of magnitude:
 * {@code t = L^2 / D}.
 *
 * <p>t in s, L depth of the hole in m, D diffusion coefficient in m²/s (about 1e-9 for small molecules in water, 1e-11 for
 * proteins and polymers). Some books put 2 D for a mean displacement; this is the time of nearly complete exchange in a hole
 * of depth L. Deeper than 100 mm still liquid no longer is still: the value is given with a warning.
 */
public final class DiffusionTime {

    private static final double DEEPEST = 0.1;

    private DiffusionTime() {}

    /**
     * Time in s for a depth in m.
     *
     * @throws RefusedInput for a negative depth or a coefficient that is not above zero
     */
    public static Estimate time(double depth, double diffusivity) {
        Need.notNegative(depth, "depth", "m");
        Need.positive(diffusivity, "diffusion coefficient", "m²/s");
        return warned(depth * depth / diffusivity, depth);
    }

    /**
     * Depth in m reached in a time in s.
     *
     * @throws RefusedInput for a negative time or a coefficient that is not above zero
     */
    public static Estimate depth(double time, double diffusivity) {
        Need.notNegative(time, "time", "s");
        Need.positive(diffusivity, "diffusion coefficient", "m²/s");
        double depth = StrictMath.sqrt(diffusivity * time);
        return warned(depth, depth);
    }

    private static Estimate warned(double value, double depth) {
        return Estimate.of(value)
                .warnIf(
                        depth > DEEPEST,
                        () -> "Diffusion alone is reckoned for holes up to 100 mm deep, not for "
                                + Need.text(depth * 1e3) + " mm: warmth and movement stir the liquid there");
    }
}
