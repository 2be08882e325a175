package org.washwright.science;

/**
 * Solvent that condenses on cold parts in its vapour: {@code m c dT / L}, by the balance of heat.
 *
 * <p>m parts in kg/s (or kg), c in J/(kg K), dT from the parts as they come to the boiling point in K, L latent heat of
 * the solvent in J/kg; the answer in kg/s (or kg). It ends when the parts are as warm as the vapour. Parts that already
 * are warm condense nothing and are not cleaned.
 */
public final class VapourCondensation {

    private VapourCondensation() {}

    /**
     * Condensate in kg/s.
     *
     * @throws RefusedInput for a negative quantity or a latent heat that is not above zero
     */
    public static Estimate massRate(double massRate, double specificHeat, double rise, double latentHeat) {
        Estimate heat = ThroughputHeat.power(massRate, specificHeat, rise);
        return heat.withValue(heat.value() / Need.positive(latentHeat, "latent heat", "J/kg"));
    }
}
