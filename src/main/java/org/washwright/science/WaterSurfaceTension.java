package org.washwright.science;

import org.washwright.quantity.Dimension;

/**
 * Surface tension of clean water (IAPWS R1-76(2014), Revised Release on Surface Tension of Ordinary Water Substance, equation
 * 1): {@code s = 235.8 mN/m tau^1.256 (1 - 0.625 tau)}, tau = 1 - T / 647.096 K.
 *
 * <p>s in N/m, T in K. Valid from the triple point, 273.16 K, to the critical point, 647.096 K; gives reasonable values down to
 * -25 °C, with a warning from there, and from the critical point on there is no surface: 0, with a warning. A trace of surfactant takes
 * half of it.
 */
public final class WaterSurfaceTension {

    private static final double CRITICAL = 647.096;
    private static final double TRIPLE = 273.16;

    private WaterSurfaceTension() {}

    /**
     * Surface tension in N/m at a temperature in K.
     *
     * @throws RefusedInput for a temperature that is not above zero
     */
    public static Estimate surfaceTension(double temperature) {
        Need.positive(temperature, "temperature", "K");
        double tau = StrictMath.max(0, 1 - temperature / CRITICAL);
        return Need.within(
                Estimate.of(0.2358 * StrictMath.pow(tau, 1.256) * (1 - 0.625 * tau)),
                temperature,
                TRIPLE,
                CRITICAL,
                Dimension.TEMPERATURE,
                "The surface tension of water holds");
    }
}
