package org.washwright.science;

/**
 * Distance of two substances in the space of solubility parameters: Ra² = 4 ΔD² + ΔP² + ΔH². Below the radius of the solid or
 * soil the liquid dissolves it, near it it may swell or crack it.
 *
 * <p>Source: Hansen, Solubility Parameters, A User's Handbook, 2nd ed. (2007), chapter 1. Affinity only: no speed, no
 * saponification, no particles; crystalline polymers resist at room temperature in spite of it.
 */
public final class HansenDistance {

    private HansenDistance() {}

    /** Distance Ra, Pa^0.5. */
    public static double between(HansenParameters a, HansenParameters b) {
        double d = a.dispersion() - b.dispersion();
        double p = a.polar() - b.polar();
        double h = a.hydrogen() - b.hydrogen();
        return StrictMath.sqrt(4 * d * d + p * p + h * h);
    }

    /** Distance over the radius within which it dissolves, both in Pa^0.5: the relative energy difference. */
    public static double relative(HansenParameters liquid, HansenParameters solid, double radius) {
        return between(liquid, solid) / Require.positive(radius, "radius");
    }
}
