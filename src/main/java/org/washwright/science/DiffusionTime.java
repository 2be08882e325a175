package org.washwright.science;

/** Time for molecules to cross a length by diffusion, order of magnitude: t = L² / D (Einstein, Ann. Phys. 17 (1905) 549). */
public final class DiffusionTime {

    private DiffusionTime() {}

    /** Time, s: length m, diffusivity m²/s. */
    public static double over(double length, double diffusivity) {
        return Require.notNegative(length, "length") * length / Require.positive(diffusivity, "diffusivity");
    }
}
