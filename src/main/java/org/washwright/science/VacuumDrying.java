package org.washwright.science;

/**
 * Liquid that a part evaporates under vacuum with its own heat: {@code m c dT / L}, by the balance of heat.
 *
 * <p>m mass of the part in kg, c in J/(kg K), dT how far the part cools in K, L latent heat in J/kg (see {@link
 * WaterLatentHeat}); the answer in kg. The most there can be: heat that walls, baskets and remaining water keep is not
 * counted, nor is heat that they give.
 */
public final class VacuumDrying {

    private VacuumDrying() {}

    /**
     * Evaporated liquid in kg.
     *
     * @throws RefusedInput for a negative quantity or a latent heat that is not above zero
     */
    public static Estimate evaporatedByOwnHeat(double mass, double specificHeat, double cooling, double latentHeat) {
        Need.notNegative(mass, "mass of the parts", "kg");
        Need.notNegative(specificHeat, "specific heat", "J/(kg K)");
        Need.notNegative(cooling, "cooling of the parts", "K");
        Need.positive(latentHeat, "latent heat", "J/kg");
        return Estimate.of(mass * specificHeat * cooling / latentHeat);
    }
}
