package org.washwright.science;

/**
 * Liquid that a part still holds while it drips: {@code V = Vend + Vstart exp(-k t)} (National Center for Manufacturing
 * Sciences, rinsing manual, appendix D; fits the curves of EPA/625/4-87/018).
 *
 * <p>Vend what never drips off, Vstart what does, both as a volume in m³ or a film in m; k in 1/s, t in s. All three
 * are fitted to a part by weighing; they change with shape, hanging, temperature and wetting agent. Other parts than
 * the weighed one are outside, which no number shows.
 */
public final class DripCurve {

    private DripCurve() {}

    /**
     * What is held after a time, in the unit of the two volumes.
     *
     * @param end what never drips off
     * @param start what drips off in the end
     * @param rate k, 1/s
     * @param time s
     * @throws RefusedInput for a negative quantity
     */
    public static Estimate retained(double end, double start, double rate, double time) {
        Need.notNegative(end, "liquid that never drips off", "");
        Need.notNegative(start, "liquid that drips off", "");
        Need.notNegative(rate, "rate of dripping", "1/s");
        Need.notNegative(time, "time", "s");
        return Estimate.of(end + start * StrictMath.exp(-rate * time));
    }
}
