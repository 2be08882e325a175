package org.washwright.science;

/**
 * Work of adhesion of a liquid on a solid from its contact angle (Young 1805, Dupré 1869): {@code Wa = gL (1 + cos(theta))}.
 *
 * <p>Wa in J/m², gL surface tension in N/m, theta contact angle in rad. Holds for an angle that stays; for a liquid that spreads Wa is 2
 * gL and more, and an angle of less than 1° is given with a warning.
 */
public final class YoungDupre {

    private static final double SPREADING = StrictMath.toRadians(1);

    private YoungDupre() {}

    /**
     * Work of adhesion in J/m².
     *
     * @throws RefusedInput for a surface tension that is not above zero or an angle outside 0 to pi
     */
    public static Estimate workOfAdhesion(double surfaceTension, double contactAngle) {
        Need.positive(surfaceTension, "surface tension", "N/m");
        Need.contactAngle(contactAngle);
        return Estimate.of(surfaceTension * (1 + StrictMath.cos(contactAngle)))
                .warnIf(
                        contactAngle < SPREADING,
                        "The liquid spreads, so this is the least work of adhesion; it may be more");
    }

    /**
     * Contact angle in rad at which a work of adhesion in J/m² shows; 0 with a warning above twice the surface tension.
     *
     * @throws RefusedInput for a negative work or a surface tension that is not above zero
     */
    public static Estimate contactAngle(double surfaceTension, double workOfAdhesion) {
        Need.positive(surfaceTension, "surface tension", "N/m");
        Need.notNegative(workOfAdhesion, "work of adhesion", "J/m²");
        return YoungContactAngle.ofCosine(workOfAdhesion / surfaceTension - 1);
    }
}
