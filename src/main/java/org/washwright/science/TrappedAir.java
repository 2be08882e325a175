package org.washwright.science;

/** Share of a dead end, mouth down, that fills under a bath, by Boyle and Mariotte: 1 − p / (p + ρ g h + capillary pressure). */
public final class TrappedAir {

    private TrappedAir() {}

    /** Share: depth under the level m, density kg/m³, capillary pressure Pa (below zero where it keeps liquid out), pressure of the air Pa. */
    public static double filledShare(double depth, double density, double capillary, double ambient) {
        double more =
                Require.notNegative(depth, "depth") * Require.positive(density, "density") * JurinRise.G + capillary;
        return Math.max(0, 1 - Require.positive(ambient, "pressure of the air") / (ambient + Math.max(0, more)));
    }
}
