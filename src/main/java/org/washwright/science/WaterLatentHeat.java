package org.washwright.science;

import org.washwright.quantity.Dimension;

/**
 * Latent heat of evaporation of water by Clapeyron's equation {@code L = T (1/rho" - 1/rho') dp/dT}, with the
 * saturation pressure and the densities of liquid and steam of Wagner and Pruss, Journal of Physical and Chemical
 * Reference Data 22 (1993) 783, equations 1 to 3 (IAPWS SR1-86(1992)), coefficients from memory: {@code rho'/rhoc = 1 +
 * sum(b x^q)}, {@code ln(rho"/rhoc) = sum(c x^r)}, x = 1 - T / Tc.
 *
 * <p>L in J/kg, T in K, rho in kg/m³, Tc = 647.096 K, rhoc = 322 kg/m³. Valid from the triple point, 273.16 K, to the
 * critical point, within 0.1 % of the IAPWS formulations to 350 °C. Below, the value is that over supercooled water,
 * from 200 K down that at 200 K; from the critical point up there is no heat of evaporation: zero. Both with a warning.
 */
public final class WaterLatentHeat {

    private static final double CRITICAL = 647.096;
    private static final double CRITICAL_DENSITY = 322;
    private static final double TRIPLE = 273.16;
    private static final double COLDEST = 200;
    private static final double[] B = {1.99274064, 1.09965342, -0.510839303, -1.75493479, -45.5170352, -6.74694450e5};
    private static final double[] THIRDS = {1, 2, 5, 16, 43, 110};
    private static final double[] C = {-2.03150240, -2.68302940, -5.38626492, -17.2991605, -44.7586581, -63.9201063};
    private static final double[] SIXTHS = {2, 4, 8, 18, 37, 71};

    private WaterLatentHeat() {}

    /**
     * Latent heat in J/kg at a temperature in K.
     *
     * @throws RefusedInput for a temperature that is not above zero
     */
    public static Estimate at(double temperature) {
        Need.positive(temperature, "temperature", "K");
        return Need.within(
                Estimate.of(clapeyron(StrictMath.max(COLDEST, temperature))),
                temperature,
                TRIPLE,
                CRITICAL,
                Dimension.TEMPERATURE,
                "The latent heat of water holds");
    }

    private static double clapeyron(double temperature) {
        if (temperature >= CRITICAL) {
            return 0;
        }
        double x = 1 - temperature / CRITICAL;
        double liquid = CRITICAL_DENSITY * (1 + sum(B, THIRDS, StrictMath.cbrt(x)));
        double steam = CRITICAL_DENSITY * StrictMath.exp(sum(C, SIXTHS, StrictMath.sqrt(StrictMath.cbrt(x))));
        return temperature * (1 / steam - 1 / liquid) * WaterVapourPressure.slope(temperature);
    }

    private static double sum(double[] factors, double[] powers, double root) {
        double sum = 0;
        for (int i = 0; i < factors.length; i++) {
            sum += factors[i] * StrictMath.pow(root, powers[i]);
        }
        return sum;
    }
}
