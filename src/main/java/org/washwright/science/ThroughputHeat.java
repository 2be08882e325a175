package org.washwright.science;

/**
 * Power that parts, baskets, fresh water or air carry away: {@code P = m c dT}, by the balance of heat.
 *
 * <p>P in W, m in kg/s, c in J/(kg K), dT in K. Parts come to the temperature of the bath only when they stay long
 * enough; the number is then the most. No change of phase: water that evaporates is counted by {@link WaterLatentHeat}.
 */
public final class ThroughputHeat {

    private ThroughputHeat() {}

    /**
     * Power in W.
     *
     * @param massRate kg/s
     * @param specificHeat J/(kg K)
     * @param rise K
     * @throws RefusedInput for a negative quantity
     */
    public static Estimate power(double massRate, double specificHeat, double rise) {
        Need.notNegative(massRate, "mass per time", "kg/s");
        Need.notNegative(specificHeat, "specific heat", "J/(kg K)");
        Need.notNegative(rise, "rise of temperature", "K");
        return Estimate.of(massRate * specificHeat * rise);
    }
}
