package org.washwright.science;

/**
 * Share of a dead end that fills when it is evacuated, flooded and brought back to air, by Boyle and Mariotte; the vapour of
 * the liquid condenses and is in nobody's way.
 */
public final class VacuumFilling {

    private VacuumFilling() {}

    /** Share: pressure of the vacuum, vapour pressure of the liquid and pressure of the air, Pa; a vacuum below the vapour pressure boils the liquid and is refused. */
    public static double filledShare(double vacuum, double vapour, double ambient) {
        if (!(vacuum >= vapour)) {
            throw new IllegalArgumentException(
                    "the liquid boils at " + vapour + " Pa, so the pressure cannot fall to " + vacuum + " Pa");
        }
        double air =
                Require.positive(ambient - Require.notNegative(vapour, "vapour pressure"), "air beside the vapour");
        return Math.max(0, 1 - (vacuum - vapour) / air);
    }
}
