package org.washwright.science;

/**
 * Soil that gathers in a bath with or without a side stream through a separator or filter: {@code V dC/dt = G - q e C},
 * by the balance of mass. Hence {@code t = V (Cmax - C0) / G} without, {@code Cs = G / (q e)} in the end, and {@code C
 * = Cs + (C0 - Cs) exp(-q e t / V)} with one.
 *
 * <p>C in kg/m³, V in m³, G soil that comes in, in kg/s; q side stream in m³/s, e share of the soil that one passage
 * takes out. The bath is well mixed, and G is steady. Soil that settles, evaporates or leaves with the parts is not
 * counted, which makes a bath last longer; soil that emulsifies passes the separator, which makes e small.
 */
public final class BathContamination {

    private BathContamination() {}

    /**
     * Time in s until a limit without removal; 0 when already there, endless without load.
     *
     * @throws RefusedInput for a negative quantity or a bath without volume
     */
    public static Estimate timeToLimit(double volume, double limit, double start, double load) {
        return timeToLimitWithSideStream(volume, limit, start, load, 0, 0);
    }

    /**
     * Concentration in the end, kg/m³.
     *
     * @throws RefusedInput for a negative load, or a side stream or efficiency that is not above zero
     */
    public static Estimate steadyState(double load, double sideStream, double efficiency) {
        Need.notNegative(load, "soil that comes in", "kg/s");
        Need.positive(sideStream, "side stream", "m³/s");
        Need.positive(efficiency, "share taken out in a passage", "");
        Need.between(efficiency, 0, 1, "share taken out in a passage", "");
        return Estimate.of(load / (sideStream * efficiency));
    }

    /**
     * Time in s until a limit; 0 when already there, endless when never reached.
     *
     * @throws RefusedInput for a negative quantity, a share outside 0 to 1 or a bath without volume
     */
    public static Estimate timeToLimitWithSideStream(
            double volume, double limit, double start, double load, double sideStream, double efficiency) {
        check(volume, start, load, sideStream, efficiency);
        Need.notNegative(limit, "limit", "kg/m³");
        double removal = sideStream * efficiency;
        if (start >= limit) {
            return Estimate.of(0);
        }
        // What is left of the load when the limit comes near: none left, and it never comes.
        if (load <= removal * limit) {
            return Estimate.of(Double.POSITIVE_INFINITY);
        }
        if (removal == 0) {
            return Estimate.of(volume * (limit - start) / load);
        }
        double gone = removal * (limit - start) / (load - removal * start);
        return Estimate.of(-volume / removal * StrictMath.log1p(-gone));
    }

    /**
     * Concentration in kg/m³ after a time in s.
     *
     * @throws RefusedInput for a negative quantity, a share outside 0 to 1 or a bath without volume
     */
    public static Estimate concentration(
            double volume, double start, double load, double sideStream, double efficiency, double time) {
        check(volume, start, load, sideStream, efficiency);
        Need.notNegative(time, "time", "s");
        double changes = sideStream * efficiency * time / volume;
        // Of what came in during the time, the share that is still there.
        double kept = changes > 0 ? -StrictMath.expm1(-changes) / changes : 1;
        return Estimate.of(start * StrictMath.exp(-changes) + load * time / volume * kept);
    }

    private static void check(double volume, double start, double load, double sideStream, double efficiency) {
        Need.positive(volume, "volume of the bath", "m³");
        Need.notNegative(start, "concentration at the start", "kg/m³");
        Need.notNegative(load, "soil that comes in", "kg/s");
        Need.notNegative(sideStream, "side stream", "m³/s");
        Need.between(efficiency, 0, 1, "share taken out in a passage", "");
    }
}
