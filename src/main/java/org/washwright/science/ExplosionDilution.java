package org.washwright.science;

/**
 * Fresh air that keeps a vapour below a share of its lower explosion limit: Q = G R T / (M p LEL s B).
 *
 * <p>Source: ACGIH, Industrial Ventilation, dilution for fire and explosion (from memory): a quarter of the limit in continuous
 * work; B is 1 up to 120 °C and 0.7 above.
 */
public final class ExplosionDilution {

    /** Temperature above which the limit is lowered: 250 °F, K. */
    private static final double HOT = 394.26;

    private static final double AIR = 101_325;

    private ExplosionDilution() {}

    /** Air, m³/s, for a release, kg/s. */
    public static double needed(double release, double limit, double fraction, double molarMass, double kelvin) {
        return GasVolume.of(release, molarMass, kelvin, AIR)
                / Require.positive(limit * fraction * lowered(kelvin), "share of the explosion limit");
    }

    /**
     * Release, kg/s, that an air flow carries off.
     *
     * @param airFlow m³/s
     * @param limit lower explosion limit as a share of the air
     * @param fraction share of that limit that may be reached
     * @param molarMass kg/mol
     * @param kelvin temperature of the air, K
     */
    public static double tolerableRelease(
            double airFlow, double limit, double fraction, double molarMass, double kelvin) {
        return Require.notNegative(airFlow, "air flow")
                * Require.notNegative(limit * fraction, "share of the explosion limit")
                * lowered(kelvin)
                / GasVolume.of(1, molarMass, kelvin, AIR);
    }

    private static double lowered(double kelvin) {
        return kelvin > HOT ? 0.7 : 1;
    }
}
