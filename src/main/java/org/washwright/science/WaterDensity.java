package org.washwright.science;

import org.washwright.quantity.Dimension;

/**
 * Density of air-free liquid water at one atmosphere (Kell, Journal of Chemical and Engineering Data 20 (1975) 97, equation 16): {@code
 * rho = (999.83952 + 16.945176 t - 7.9870401e-3 t^2 - 46.170461e-6 t^3 + 105.56302e-9 t^4 - 280.54253e-12 t^5) / (1 +
 * 16.879850e-3 t)}.
 *
 * <p>rho in kg/m³, t in °C (here from T in K). Valid from 0 °C to 150 °C (above 100 °C extrapolated to one atmosphere by Kell);
 * outside, the value is given with a warning; below -30 °C and above 200 °C, where the polynomial runs away, it is that at the end.
 */
public final class WaterDensity {

    private static final double[] UPPER = {
        999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12
    };
    private static final double LOWER = 16.879850e-3;
    private static final double ZERO_CELSIUS = 273.15;

    private WaterDensity() {}

    /**
     * Density in kg/m³ at a temperature in K.
     *
     * @throws RefusedInput for a temperature that is not above zero
     */
    public static Estimate density(double temperature) {
        Need.positive(temperature, "temperature", "K");
        double t = StrictMath.max(-30, StrictMath.min(200, temperature - ZERO_CELSIUS));
        double sum = 0;
        for (int i = UPPER.length - 1; i >= 0; i--) {
            sum = sum * t + UPPER[i];
        }
        return Need.within(
                Estimate.of(sum / (1 + LOWER * t)),
                temperature,
                ZERO_CELSIUS,
                ZERO_CELSIUS + 150,
                Dimension.TEMPERATURE,
                "The density of liquid water by Kell holds");
    }
}
