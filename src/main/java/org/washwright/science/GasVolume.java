package org.washwright.science;

/** Volume of an ideal gas: V = m R T / (M p). Gas constant: CODATA 2018, exact since the SI of 2019. */
public final class GasVolume {

    /** Gas constant, J/(mol K). */
    public static final double R = 8.314_462_618;

    private GasVolume() {}

    /**
     * Volume, m³, of a mass; or volume flow of a mass flow.
     *
     * @param mass kg or kg/s
     * @param molarMass kg/mol
     * @param kelvin temperature, K
     * @param pascal pressure, Pa
     */
    public static double of(double mass, double molarMass, double kelvin, double pascal) {
        return Require.notNegative(mass, "mass")
                * R
                * Require.positive(kelvin, "temperature")
                / (Require.positive(molarMass, "molar mass") * Require.positive(pascal, "pressure"));
    }
}
