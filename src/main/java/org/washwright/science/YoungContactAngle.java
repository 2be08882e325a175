package org.washwright.science;

/**
 * Contact angle of a liquid on a smooth, clean solid from the three tensions at its edge (Young, Philosophical Transactions 95
 * (1805) 65): {@code gS = gSL + gL cos(theta)}.
 *
 * <p>gS energy of the solid's surface, gSL of the face between solid and liquid, gL surface tension of the liquid, all in J/m²
 * (= N/m); theta in rad. Where the balance asks for a cosine above 1 the liquid spreads (angle 0), below -1 it draws back (angle
 * pi); both are given with a warning. Roughness and held edges shift measured angles by tens of degrees.
 */
public final class YoungContactAngle {

    private YoungContactAngle() {}

    /**
     * Contact angle in rad.
     *
     * @throws RefusedInput for a negative energy or a surface tension that is not above zero
     */
    public static Estimate angle(double solid, double solidLiquid, double liquid) {
        Need.notNegative(solid, "surface energy of the solid", "J/m²");
        Need.notNegative(solidLiquid, "energy between solid and liquid", "J/m²");
        Need.positive(liquid, "surface tension", "N/m");
        return ofCosine((solid - solidLiquid) / liquid);
    }

    /**
     * Energy in J/m² of the face between solid and liquid.
     *
     * @throws RefusedInput for a negative energy, a surface tension that is not above zero or an angle outside 0
     *     to pi
     */
    public static Estimate interfacialEnergy(double solid, double liquid, double contactAngle) {
        Need.notNegative(solid, "surface energy of the solid", "J/m²");
        Need.positive(liquid, "surface tension", "N/m");
        Need.contactAngle(contactAngle);
        double energy = solid - liquid * StrictMath.cos(contactAngle);
        return Estimate.of(energy)
                .warnIf(
                        energy < 0,
                        "The face between solid and liquid would have a negative energy: at so low an angle the surface"
                                + " energy of the solid has to be higher");
    }

    /** The angle of a cosine that may lie outside -1 to 1. */
    static Estimate ofCosine(double cosine) {
        return Estimate.of(StrictMath.acos(StrictMath.max(-1, StrictMath.min(1, cosine))))
                .warnIf(
                        cosine > 1,
                        () -> "The liquid spreads by itself: the balance asks for a cosine of " + Need.text(cosine)
                                + ", and no angle remains")
                .warnIf(
                        cosine < -1,
                        () -> "The liquid draws back altogether: the balance asks for a cosine of "
                                + Need.text(cosine));
    }
}
