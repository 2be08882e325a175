package org.washwright.science;

/**
 * Concentration in a flowing rinse on its way to rest: {@code V dC/dt = D C0 - (D + Q) C}, hence {@code C = Cs + (C -
 * Cs) exp(-(D + Q) t / V)} with {@code Cs = C0 D / (D + Q)}, by the balance of the tank.
 *
 * <p>C0 concentration in the bath or rinse before, C at the start, both in the unit of the answer; D drag-out and Q
 * fresh water in m³/s, V in m³, t in s. The tank is well mixed, the water clean. Without drag-out and water nothing
 * changes.
 */
public final class UnsteadyRinse {

    private UnsteadyRinse() {}

    /**
     * Concentration after a time.
     *
     * @param before concentration in the bath or rinse before
     * @param start concentration at the start
     * @param dragOutRate m³/s
     * @param waterRate m³/s
     * @param volume m³
     * @param time s
     * @throws RefusedInput for a negative quantity or a rinse without volume
     */
    public static Estimate concentration(
            double before, double start, double dragOutRate, double waterRate, double volume, double time) {
        Need.notNegative(before, "concentration in the bath before", "");
        Need.notNegative(start, "concentration at the start", "");
        Need.notNegative(dragOutRate, "drag-out", "m³/s");
        Need.notNegative(waterRate, "fresh water", "m³/s");
        Need.positive(volume, "volume of the rinse", "m³");
        Need.notNegative(time, "time", "s");
        double through = dragOutRate + waterRate;
        double steady = through > 0 ? before * dragOutRate / through : start;
        return Estimate.of(steady + (start - steady) * StrictMath.exp(-through * time / volume));
    }
}
