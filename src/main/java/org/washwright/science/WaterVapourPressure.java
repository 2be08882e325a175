package org.washwright.science;

import org.washwright.quantity.Dimension;

/**
 * Vapour pressure of liquid water (Wagner and Pruss, Journal of Physical and Chemical Reference Data 22 (1993) 783, equation 1; IAPWS
 * SR1-86(1992)): {@code ln(p / pc) = (Tc / T) (a1 x + a2 x^1.5 + a3 x^3 + a4 x^3.5 + a5 x^4 + a6 x^7.5)}, x = 1 - T / Tc.
 *
 * <p>p in Pa, T in K, Tc = 647.096 K, pc = 22.064 MPa. Valid from the triple point, 273.16 K, to the critical point. Below, the value is
 * that over supercooled water, given with a warning; above the critical point there is no liquid, and the critical pressure is given with a
 * warning.
 */
public final class WaterVapourPressure {

    private static final double CRITICAL = 647.096;
    private static final double CRITICAL_PRESSURE = 22.064e6;
    private static final double TRIPLE = 273.16;
    private static final double COLDEST = 173;
    private static final double[] A = {-7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502};
    private static final double[] POWER = {1, 1.5, 3, 3.5, 4, 7.5};

    private WaterVapourPressure() {}

    /**
     * Vapour pressure in Pa at a temperature in K.
     *
     * @throws RefusedInput for a temperature that is not above zero
     */
    public static Estimate pressure(double temperature) {
        Need.positive(temperature, "temperature", "K");
        return checked(at(temperature), temperature);
    }

    /**
     * Temperature in K at which water boils under a pressure in Pa, found by halving to a hundred-millionth of a kelvin.
     *
     * @throws RefusedInput for a pressure that water never has between 173 K and the critical point
     */
    public static Estimate boilingTemperature(double pressure) {
        Need.between(pressure, at(COLDEST), CRITICAL_PRESSURE, "pressure over boiling water", "Pa");
        double low = COLDEST;
        double high = CRITICAL;
        while (high - low > 1e-8) {
            double middle = (low + high) / 2;
            if (at(middle) < pressure) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return checked(high, high);
    }

    private static double at(double temperature) {
        double x = StrictMath.max(0, 1 - temperature / CRITICAL);
        double sum = 0;
        for (int i = 0; i < A.length; i++) {
            sum += A[i] * StrictMath.pow(x, POWER[i]);
        }
        return CRITICAL_PRESSURE * StrictMath.exp(CRITICAL / temperature * sum);
    }

    /** Rise of the pressure with temperature in Pa/K, by the derivative of the equation; from 173 K to the critical point. */
    static double slope(double temperature) {
        double x = StrictMath.max(0, 1 - temperature / CRITICAL);
        double sum = 0;
        double derivative = 0;
        for (int i = 0; i < A.length; i++) {
            sum += A[i] * StrictMath.pow(x, POWER[i]);
            derivative += A[i] * POWER[i] * StrictMath.pow(x, POWER[i] - 1);
        }
        return -at(temperature) / temperature * (CRITICAL / temperature * sum + derivative);
    }

    private static Estimate checked(double value, double temperature) {
        return Need.within(
                Estimate.of(value),
                temperature,
                TRIPLE,
                CRITICAL,
                Dimension.TEMPERATURE,
                "The vapour pressure of liquid water holds");
    }
}
