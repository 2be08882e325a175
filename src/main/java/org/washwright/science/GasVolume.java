package org.washwright.science;

/**
 * Volume of a gas or vapour as an ideal gas: {@code V = (m / M) R T / p}.
 *
 * <p>m mass in kg, M molar mass in kg/mol, T in K, p in Pa, R = 8.314462618 J/(mol K), exact since the SI of 2019 (CODATA
 * 2018). Good to about 1 % for the air of a hall and for vapours in it at ambient pressure, whatever the share of vapour.
 * The formula has no lower or upper end there; compressed gas is not meant.
 */
public final class GasVolume {

    /** Molar gas constant in J/(mol K). */
    public static final double GAS_CONSTANT = 8.314462618;

    /** One standard atmosphere in Pa. */
    public static final double ATMOSPHERE = 101_325;

    private static final double COMPRESSED = 10 * ATMOSPHERE;

    private GasVolume() {}

    /**
     * Molar volume in m³/mol at a temperature in K and a pressure in Pa.
     *
     * @throws RefusedInput for a temperature or pressure that is not above zero
     */
    public static Estimate molarVolume(double temperature, double pressure) {
        Need.positive(temperature, "temperature", "K");
        Need.positive(pressure, "pressure", "Pa");
        return Estimate.of(GAS_CONSTANT * temperature / pressure)
                .warnIf(
                        pressure > COMPRESSED,
                        () -> "The ideal gas law is meant for gas near ambient pressure, not for "
                                + Need.text(pressure / 1e5) + " bar");
    }

    /**
     * Volume in m³ (or m³/s) of a mass in kg (or kg/s) of gas of a molar mass in kg/mol.
     *
     * @throws RefusedInput for a negative mass, or a molar mass, temperature or pressure that is not above zero
     */
    public static Estimate volume(double mass, double molarMass, double temperature, double pressure) {
        Need.notNegative(mass, "mass", "kg");
        Need.positive(molarMass, "molar mass", "kg/mol");
        Estimate molar = molarVolume(temperature, pressure);
        return molar.withValue(mass / molarMass * molar.value());
    }

    /**
     * Mass in kg (or kg/s) of a volume in m³ (or m³/s): the inverse of {@link #volume}.
     *
     * @throws RefusedInput for a negative volume, or a molar mass, temperature or pressure that is not above
     *     zero
     */
    public static Estimate mass(double volume, double molarMass, double temperature, double pressure) {
        Need.notNegative(volume, "volume of gas", "m³");
        Need.positive(molarMass, "molar mass", "kg/mol");
        Estimate molar = molarVolume(temperature, pressure);
        return molar.withValue(volume / molar.value() * molarMass);
    }
}
