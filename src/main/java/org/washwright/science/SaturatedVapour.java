package org.washwright.science;

/** Saturated vapour in air, as ideal gas. */
public final class SaturatedVapour {

    private SaturatedVapour() {}

    /** Share of the vapour in saturated air; 1 at and above the boiling point. */
    public static double share(double vapourPressure, double ambientPressure) {
        Require.notNegative(vapourPressure, "vapour pressure");
        return Math.min(1, vapourPressure / Require.positive(ambientPressure, "pressure of the air"));
    }

    /**
     * Vapour in saturated air, kg/m³: p M / (R T).
     *
     * @param vapourPressure Pa
     * @param molarMass kg/mol
     * @param kelvin temperature, K
     */
    public static double concentration(double vapourPressure, double molarMass, double kelvin) {
        return Require.notNegative(vapourPressure, "vapour pressure")
                * Require.positive(molarMass, "molar mass")
                / (GasVolume.R * Require.positive(kelvin, "temperature"));
    }
}
