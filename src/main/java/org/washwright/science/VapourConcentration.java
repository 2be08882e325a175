package org.washwright.science;

/** A vapour's share of the air and its mass in the air, as ideal gas: c = x M p / (R T). */
public final class VapourConcentration {

    private VapourConcentration() {}

    /** Mass in the air, kg/m³, of a share of the air; molar mass kg/mol, temperature K, pressure Pa. */
    public static double mass(double share, double molarMass, double kelvin, double pascal) {
        return Require.notNegative(share, "share")
                * Require.positive(molarMass, "molar mass")
                * Require.positive(pascal, "pressure")
                / (GasVolume.R * Require.positive(kelvin, "temperature"));
    }

    /** Share of the air of a mass in the air, kg/m³; molar mass kg/mol, temperature K, pressure Pa. */
    public static double share(double mass, double molarMass, double kelvin, double pascal) {
        return Require.notNegative(mass, "mass in the air")
                * GasVolume.R
                * Require.positive(kelvin, "temperature")
                / (Require.positive(molarMass, "molar mass") * Require.positive(pascal, "pressure"));
    }
}
