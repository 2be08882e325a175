package org.washwright.science;

/**
 * Air that keeps a vapour below a health limit by dilution: {@code Q = G K / C}, G = (m / M) R T / p.
 *
 * <p>Q air flow in m³/s, m evaporated mass in kg/s, M molar mass in kg/mol, C limit as a mole fraction (500 ppm = 0.0005), K
 * mixing factor 1 (perfect) to 10 (poor), T in K, p in Pa. This is {@code Q = 403 SG 10⁶ ER K / (M C)} of ACGIH, Industrial
 * Ventilation, chapter on general ventilation, dilution for health, in SI (its 403 is the volume in ft³ at 70 °F of a pint of a liquid of density
 * 1 times its molar mass); as printed in the ventilation formula sheet of the University of Toledo.
 *
 * <p>Validity there: limit of 100 ppm and more, even evaporation, workers away from the source. Below 100 ppm and outside K = 1
 * to 10 the value is given with a warning.
 */
public final class DilutionAir {

    private static final double LOWEST_LIMIT = 100e-6;
    private static final double HIGHEST_FACTOR = 10;

    private DilutionAir() {}

    /**
     * Air flow in m³/s that keeps a steady evaporation below a limit.
     *
     * @param massRate evaporated, kg/s
     * @param molarMass kg/mol
     * @param limit mole fraction
     * @param mixingFactor K, 1 to 10
     * @param temperature of the air, K
     * @param pressure Pa
     * @throws RefusedInput for nonsense: a negative rate, a limit outside 0 to 1, K below 1
     */
    public static Estimate airFlow(
            double massRate, double molarMass, double limit, double mixingFactor, double temperature, double pressure) {
        check(limit, mixingFactor);
        Estimate gas = GasVolume.volume(massRate, molarMass, temperature, pressure);
        return warned(gas.withValue(gas.value() * mixingFactor / limit), limit, mixingFactor);
    }

    /**
     * Mass rate in kg/s that may evaporate into an air flow in m³/s: the inverse of {@link #airFlow}.
     *
     * @throws RefusedInput as {@link #airFlow}
     */
    public static Estimate permissibleMassRate(
            double airFlow, double molarMass, double limit, double mixingFactor, double temperature, double pressure) {
        check(limit, mixingFactor);
        Need.notNegative(airFlow, "air flow", "m³/s");
        Estimate rate = GasVolume.mass(airFlow * limit / mixingFactor, molarMass, temperature, pressure);
        return warned(rate, limit, mixingFactor);
    }

    private static void check(double limit, double mixingFactor) {
        Need.positive(limit, "exposure limit as a share of air", "");
        Need.between(limit, 0, 1, "exposure limit as a share of air", "");
        if (!(mixingFactor >= 1) || Double.isInfinite(mixingFactor)) {
            throw Need.refused(
                    mixingFactor,
                    "mixing factor",
                    "",
                    "1 is perfect mixing, 3 to 5 usual, 10 the worst; give one of these");
        }
    }

    private static Estimate warned(Estimate estimate, double limit, double mixingFactor) {
        return estimate.warnIf(
                        limit < LOWEST_LIMIT,
                        () -> "Dilution is meant for limits of 100 ppm and more, not for " + Need.text(limit * 1e6)
                                + " ppm: enclose the source and extract at it")
                .warnIf(
                        mixingFactor > HIGHEST_FACTOR,
                        () -> "Mixing factors run from 1 to 10, not to " + Need.text(mixingFactor)
                                + ": where air mixes that badly, extract at the source");
    }
}
