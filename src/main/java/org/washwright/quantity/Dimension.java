package org.washwright.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What a quantity measures. Inside the program every quantity is a double in the coherent SI unit of its dimension; the
 * default unit is what readers see. Dimensions with the same base units (a concentration and a density) stay apart, so
 * that a rule can't compare them by mistake.
 *
 * <p>Hardness numbers and pH are scales, not units: they have dimensions of their own and never convert here. A date is a
 * scale too: days since 1970-01-01, written as ISO 8601.
 */
public enum Dimension {
    TEMPERATURE("temperature", "°C", "60 °C", 0, 0, 0, 1, 0, 0),
    TEMPERATURE_DIFFERENCE("temperature difference", "K", "15 K", 0, 0, 0, 1, 0, 0),
    LENGTH("length", "mm", "6 mm", 1, 0, 0, 0, 0, 0),
    FINE_LENGTH("fine length", "µm", "400 um", 1, 0, 0, 0, 0, 0),
    AREA("area", "cm²", "120 cm2", 2, 0, 0, 0, 0, 0),
    VOLUME("volume", "L", "400 L", 3, 0, 0, 0, 0, 0),
    MASS("mass", "g", "310 g", 0, 1, 0, 0, 0, 0),
    TIME("time", "s", "90 s", 0, 0, 1, 0, 0, 0),
    RATE("rate", "1/h", "1200 1/h", 0, 0, -1, 0, 0, 0),
    ANNUAL_RATE("rate a year", "1/year", "250000 1/year", 0, 0, -1, 0, 0, 0),
    AREAL_MASS("mass per area", "g/m²", "2 g/m2", -2, 1, 0, 0, 0, 0),
    AREA_RATE("area per time", "m²/h", "14 m2/h", 2, 0, -1, 0, 0, 0),
    MASS_RATE("mass per time", "g/h", "30 g/h", 0, 1, -1, 0, 0, 0),
    VOLUME_RATE("volume per time", "L/h", "60 L/h", 3, 0, -1, 0, 0, 0),
    AIR_FLOW("air flow", "m³/h", "6000 m3/h", 3, 0, -1, 0, 0, 0),
    HALL_VOLUME("volume of a room", "m³", "4000 m3", 3, 0, 0, 0, 0, 0),
    LOW_PRESSURE("pressure of a gas or liquid", "kPa", "5 kPa", -1, 1, -2, 0, 0, 0),
    PRESSURE("pressure or strength", "MPa", "1000 MPa", -1, 1, -2, 0, 0, 0),
    CONCENTRATION("concentration", "g/L", "20 g/L", -3, 1, 0, 0, 0, 0),
    MASS_CONCENTRATION_IN_AIR("mass concentration in air", "mg/m³", "50 mg/m3", -3, 1, 0, 0, 0, 0),
    DENSITY("density", "kg/m³", "880 kg/m3", -3, 1, 0, 0, 0, 0),
    FREQUENCY("frequency", "kHz", "40 kHz", 0, 0, -1, 0, 0, 0),
    POWER("power", "kW", "12 kW", 2, 1, -3, 0, 0, 0),
    POWER_DENSITY("power per volume", "W/L", "10 W/L", -1, 1, -3, 0, 0, 0),
    ENERGY("energy", "kWh", "5 kWh", 2, 1, -2, 0, 0, 0),
    CURRENT_DENSITY("current density", "A/dm²", "4 A/dm2", -2, 0, 0, 0, 1, 0),
    VELOCITY("velocity", "m/s", "2 m/s", 1, 0, -1, 0, 0, 0),
    VOLUME_PER_AREA("volume per area", "L/m²", "0.1 L/m2", 1, 0, 0, 0, 0, 0),
    CONDUCTIVITY("conductivity", "µS/cm", "30 uS/cm", -3, -1, 3, 0, 2, 0),
    SURFACE_TENSION("surface tension or energy", "mN/m", "30 mN/m", 0, 1, -2, 0, 0, 0),
    VISCOSITY("dynamic viscosity", "mPa·s", "1.2 mPa s", -1, 1, -1, 0, 0, 0),
    DIFFUSIVITY("diffusivity", "m²/s", "1e-9 m2/s", 2, 0, -1, 0, 0, 0),
    MOLAR_MASS("molar mass", "g/mol", "58 g/mol", 0, 0, 0, 0, 0, 0),
    SOLUBILITY_PARAMETER("solubility parameter", "MPa^0.5", "16.0 MPa^0.5", 0, 0, 0, 0, 0, 0),
    SHARE("share", "%", "25 %", 0, 0, 0, 0, 0, 0),
    TINY_SHARE("share of the air", "ppm", "500 ppm", 0, 0, 0, 0, 0, 0),
    ANGLE("angle", "°", "30 °", 0, 0, 0, 0, 0, 0),
    DATE("date", "", "2026-01-31", 0, 0, 0, 0, 0, 0),
    MONEY("money", "€", "1.5 €", 0, 0, 0, 0, 0, 1),
    PRICE_PER_MASS("price per mass", "€/kg", "4 €/kg", 0, -1, 0, 0, 0, 1),
    PRICE_PER_VOLUME("price per volume", "€/m³", "2.5 €/m3", -3, 0, 0, 0, 0, 1),
    PRICE_PER_ENERGY("price per energy", "€/kWh", "0.22 €/kWh", -2, -1, 2, 0, 0, 1),
    PRICE_PER_TIME("price per time", "€/h", "42 €/h", 0, 0, -1, 0, 0, 1),
    PRICE_PER_AREA("price per area", "€/m²", "0.4 €/m2", -2, 0, 0, 0, 0, 1),
    SPECIFIC_HEAT("specific heat", "kJ/(kg·K)", "0.49 kJ/(kg K)", 2, 0, -2, -1, 0, 0),
    LATENT_HEAT("heat of evaporation", "kJ/kg", "209 kJ/kg", 2, 0, -2, 0, 0, 0),
    HEAT_PER_AREA("energy per area", "kWh/m²", "0.2 kWh/m2", 0, 1, -2, 0, 0, 0),
    AREAL_MASS_RATE("mass per area and time", "kg/(m²·h)", "0.5 kg/(m2 h)", -2, 1, -1, 0, 0, 0),
    FLOW_PER_AREA("air flow per area", "m³/(h·m²)", "1800 m3/(h m2)", 1, 0, -1, 0, 0, 0),
    RATIO("ratio", "", "0.8", 0, 0, 0, 0, 0, 0),
    PH("pH", "", "10.5", 0, 0, 0, 0, 0, 0),
    ROCKWELL_C("Rockwell C hardness", "HRC", "46 HRC", 0, 0, 0, 0, 0, 0),
    VICKERS("Vickers hardness", "HV", "450 HV", 0, 0, 0, 0, 0, 0);

    private final String label;
    private final String defaultUnit;
    private final String example;
    private final int[] exponents;

    Dimension(String label, String defaultUnit, String example, int... exponents) {
        this.label = label;
        this.defaultUnit = defaultUnit;
        this.example = example;
        this.exponents = exponents;
    }

    /** Name in edition files, for instance {@code areal-mass}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What a reader calls it. */
    public String label() {
        return label;
    }

    /** Unit shown when nothing else is asked for; empty for plain numbers. */
    public String defaultUnit() {
        return defaultUnit;
    }

    /** A quantity of this dimension as one may write it. */
    public String example() {
        return example;
    }

    /** True for numbers that are written without a unit. */
    public boolean isPlain() {
        return this == RATIO || this == PH;
    }

    /** True for scales, whose units stand for nothing else. */
    boolean isScale() {
        return switch (this) {
            case PH, ROCKWELL_C, VICKERS, ANGLE, MOLAR_MASS, SOLUBILITY_PARAMETER, DATE -> true;
            default -> false;
        };
    }

    /** Exponents of metre, kilogram, second, kelvin, ampere and currency. */
    int[] exponents() {
        return exponents.clone();
    }

    /** The dimension with this id in edition files. */
    public static Optional<Dimension> byId(String id) {
        return Arrays.stream(values()).filter(d -> d.id().equals(id)).findFirst();
    }

    /** All ids. */
    public static List<String> ids() {
        return Arrays.stream(values()).map(Dimension::id).toList();
    }
}
