package org.washwright.science;

/**
 * Water in air, as kilograms for each kilogram of dry air: {@code x = 0.62198 p / (P - p)} (Dalton's law with the molar
 * masses of water and air; ASHRAE Fundamentals, psychrometrics, from memory).
 *
 * <p>p partial pressure of water and P pressure of the air, both in Pa. Ideal gases: at one atmosphere 0.6 % below
 * tables of real air to 50 °C, 1.1 % to 70 °C and 1.6 % at 80 °C. Where water boils there is no air left: the ratio is
 * without end, with a warning.
 */
public final class HumidAir {

    private static final double MOLAR_MASSES = 0.62198;

    private HumidAir() {}

    /**
     * Humidity ratio at a partial pressure of water.
     *
     * @throws RefusedInput for a pressure of water that is negative or above that of the air
     */
    public static Estimate humidityRatio(double vapourPressure, double pressure) {
        Need.notNegative(vapourPressure, "partial pressure of water", "Pa");
        Need.positive(pressure, "pressure of the air", "Pa");
        Need.between(vapourPressure, 0, pressure, "partial pressure of water", "Pa");
        return ratio(vapourPressure, pressure);
    }

    /**
     * Humidity ratio of air over water of a temperature in K.
     *
     * @throws RefusedInput for a temperature or a pressure that is not above zero
     */
    public static Estimate saturated(double temperature, double pressure) {
        Need.positive(temperature, "temperature", "K");
        Need.positive(pressure, "pressure of the air", "Pa");
        Estimate vapour = WaterVapourPressure.pressure(temperature);
        return ratio(StrictMath.min(vapour.value(), pressure), pressure).warnAs(vapour);
    }

    private static Estimate ratio(double vapourPressure, double pressure) {
        boolean boils = vapourPressure >= pressure;
        return Estimate.of(
                        boils ? Double.POSITIVE_INFINITY : MOLAR_MASSES * vapourPressure / (pressure - vapourPressure))
                .warnIf(boils, "Water boils at this temperature and pressure: steam drives the air away");
    }
}
