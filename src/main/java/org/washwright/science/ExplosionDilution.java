package org.washwright.science;

import org.washwright.quantity.Dimension;

/**
 * Air that keeps a vapour at a fraction of its lower explosion limit: {@code Q = G / (f L B)}, G = (m / M) R T / p.
 *
 * <p>Q air flow in m³/s at the air's temperature T, m evaporated mass in kg/s, M molar mass in kg/mol, L lower explosion limit
 * as a share of air, f the fraction of it that is allowed (0.25 for steady operation: the safety factor 4; 0.1 for batches:
 * 10 to 12), B = 1 up to 121 °C (250 °F) and 0.7 above, since the limit falls with temperature. This is {@code Q = 403 SG 100 ER
 * Sf / (M L B)} of ACGIH, Industrial Ventilation, chapter on general ventilation, dilution for fire and explosion, in SI [from
 * memory].
 *
 * <p>Such air is far too little for breathing. Fractions above 0.25 are given with a warning, as is a process above 400 °C,
 * where B = 0.7 no longer covers the fall. Not for mist, dust or pure oxygen.
 */
public final class ExplosionDilution {

    /** Fraction of the lower explosion limit usual for steady operation. */
    public static final double STEADY = 0.25;

    private static final double HOT = 273.15 + (250 - 32) / 1.8;
    private static final double TOO_HOT = 673.15;
    private static final double HOT_FACTOR = 0.7;

    private ExplosionDilution() {}

    /** Factor B on the lower explosion limit at the temperature of the process in K. */
    public static double temperatureFactor(double processTemperature) {
        Need.positive(processTemperature, "temperature of the process", "K");
        return processTemperature > HOT ? HOT_FACTOR : 1;
    }

    /**
     * Air flow in m³/s, at the air's temperature.
     *
     * @param massRate evaporated, kg/s
     * @param molarMass kg/mol
     * @param lowerLimit lower explosion limit as a share of air (2 % = 0.02)
     * @param fraction of the lower limit that is allowed, above 0 and below 1
     * @param processTemperature where the vapour is, K
     * @param airTemperature at which the flow is counted, K
     * @param pressure Pa
     * @throws RefusedInput for nonsense: a negative rate, a limit or fraction outside 0 to 1
     */
    public static Estimate airFlow(
            double massRate,
            double molarMass,
            double lowerLimit,
            double fraction,
            double processTemperature,
            double airTemperature,
            double pressure) {
        double share = allowed(lowerLimit, fraction, processTemperature);
        Estimate gas = GasVolume.volume(massRate, molarMass, airTemperature, pressure);
        return warned(gas.withValue(gas.value() / share), fraction, processTemperature);
    }

    /**
     * Mass rate in kg/s that may evaporate into an air flow in m³/s: the inverse of {@link #airFlow}.
     *
     * @throws RefusedInput as {@link #airFlow}
     */
    public static Estimate permissibleMassRate(
            double airFlow,
            double molarMass,
            double lowerLimit,
            double fraction,
            double processTemperature,
            double airTemperature,
            double pressure) {
        double share = allowed(lowerLimit, fraction, processTemperature);
        Need.notNegative(airFlow, "air flow", "m³/s");
        Estimate rate = GasVolume.mass(airFlow * share, molarMass, airTemperature, pressure);
        return warned(rate, fraction, processTemperature);
    }

    private static double allowed(double lowerLimit, double fraction, double processTemperature) {
        Need.positive(lowerLimit, "lower explosion limit as a share of air", "");
        Need.between(lowerLimit, 0, 1, "lower explosion limit as a share of air", "");
        Need.positive(fraction, "fraction of the lower explosion limit", "");
        if (fraction >= 1) {
            throw Need.refused(
                    fraction,
                    "fraction of the lower explosion limit",
                    "",
                    "stay below 1; 0.25 is usual for steady work");
        }
        return lowerLimit * fraction * temperatureFactor(processTemperature);
    }

    private static Estimate warned(Estimate estimate, double fraction, double processTemperature) {
        return estimate.warnIf(
                        fraction > STEADY,
                        () -> "Usual is a quarter of the lower explosion limit at most, not " + Need.text(fraction)
                                + " of it: more needs gas warning and a competent person's word")
                .warnIf(
                        processTemperature > TOO_HOT,
                        () -> "The factor 0.7 covers warm drying, not "
                                + Need.text(processTemperature, Dimension.TEMPERATURE)
                                + ": ask for the explosion limit at that temperature");
    }
}
