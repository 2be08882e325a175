package org.washwright.science;

import org.washwright.quantity.Dimension;

/**
 * Surface tension of a pure liquid by a straight line in temperature (Jasper, Journal of Physical and Chemical Reference Data 1 (1972)
 * 841): {@code s = a - b t}.
 *
 * <p>s in N/m, t in °C (here from T in K); a in N/m is the value at 0 °C, b in N/(m K) its fall. Jasper prints mN/m: divide by
 * 1000. Outside the range of the measurements, mostly 10 °C to the boiling point, the value is given with a warning; where
 * the line meets zero it is 0.
 *
 * @param a value at 0 °C in N/m
 * @param b fall in N/(m K)
 * @param lowest lowest temperature measured, K
 * @param highest highest temperature measured, K
 */
public record JasperSurfaceTension(double a, double b, double lowest, double highest) {

    private static final double ZERO_CELSIUS = 273.15;
    private static final double UNBELIEVABLE = 1;

    /**
     * Checks the constants.
     *
     * @throws RefusedInput when they are no falling line over a range, or were left in mN/m
     */
    public JasperSurfaceTension {
        Need.positive(a, "surface tension at 0 °C", "N/m");
        if (a > UNBELIEVABLE) {
            throw Need.refused(a, "surface tension at 0 °C", "N/m", "tables print mN/m; divide by 1000");
        }
        Need.notNegative(b, "fall of the surface tension", "N/(m K)");
        Need.positive(lowest, "lowest temperature measured", "K");
        if (!(highest > lowest) || Double.isInfinite(highest)) {
            throw Need.refused(highest, "highest temperature measured", "K", "give one above the lowest, " + lowest);
        }
    }

    /**
     * Surface tension in N/m at a temperature in K.
     *
     * @throws RefusedInput for a temperature that is not above zero
     */
    public Estimate surfaceTension(double temperature) {
        Need.positive(temperature, "temperature", "K");
        return Need.within(
                Estimate.of(StrictMath.max(0, a - b * (temperature - ZERO_CELSIUS))),
                temperature,
                lowest,
                highest,
                Dimension.TEMPERATURE,
                "This line of surface tension was measured");
    }
}
