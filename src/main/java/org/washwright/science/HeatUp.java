package org.washwright.science;

/**
 * Power that warms a bath and its tank in a time: {@code P = C dT / (t eta)} with {@code C = sum(m c)}, by the balance
 * of heat.
 *
 * <p>P in W, C heat capacity of liquid, tank and parts together in J/K, dT in K, t in s, eta share of the power that
 * arrives in the bath. Losses on the way are only in eta: a hot open bath loses more than it seems, see {@link
 * TankSurfaceLoss}.
 */
public final class HeatUp {

    private HeatUp() {}

    /**
     * Power in W.
     *
     * @param heatCapacity J/K
     * @param rise K
     * @param time s
     * @param efficiency share from above 0 to 1
     * @throws RefusedInput for a negative quantity, no time or an efficiency outside 0 to 1
     */
    public static Estimate power(double heatCapacity, double rise, double time, double efficiency) {
        Need.notNegative(heatCapacity, "heat capacity", "J/K");
        Need.notNegative(rise, "rise of temperature", "K");
        Need.positive(time, "time to heat up", "s");
        Need.positive(efficiency, "share of the power that arrives", "");
        Need.between(efficiency, 0, 1, "share of the power that arrives", "");
        return Estimate.of(heatCapacity * rise / (time * efficiency));
    }
}
