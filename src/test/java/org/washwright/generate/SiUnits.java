package org.washwright.generate;

import org.washwright.quantity.Dimension;

/** The coherent unit of each dimension as one writes it, so that a number in SI can be written and read without rounding. */
public final class SiUnits {

    private SiUnits() {}

    /** The unit; empty where a number stands alone. */
    public static String of(Dimension dimension) {
        return switch (dimension) {
            case TEMPERATURE, TEMPERATURE_DIFFERENCE -> "K";
            case LENGTH, FINE_LENGTH -> "m";
            case AREA -> "m2";
            case VOLUME, HALL_VOLUME -> "m3";
            case MASS -> "kg";
            case TIME -> "s";
            case RATE, ANNUAL_RATE, FREQUENCY -> "1/s";
            case AREAL_MASS -> "kg/m2";
            case AREA_RATE -> "m2/s";
            case MASS_RATE -> "kg/s";
            case VOLUME_RATE, AIR_FLOW -> "m3/s";
            case PRESSURE, LOW_PRESSURE -> "Pa";
            case SURFACE_TENSION -> "N/m";
            case VISCOSITY -> "Pa·s";
            case DIFFUSIVITY -> "m2/s";
            case MOLAR_MASS -> "kg/mol";
            case SOLUBILITY_PARAMETER -> "Pa^0.5";
            case SHARE, TINY_SHARE -> "m/m";
            case ANGLE -> "rad";
            case CONCENTRATION, MASS_CONCENTRATION_IN_AIR, DENSITY -> "kg/m3";
            case POWER -> "W";
            case POWER_DENSITY -> "W/m3";
            case ENERGY -> "J";
            case CURRENT_DENSITY -> "A/m2";
            case VELOCITY -> "m/s";
            case VOLUME_PER_AREA -> "m3/m2";
            case CONDUCTIVITY -> "S/m";
            case MONEY -> "€";
            case PRICE_PER_MASS -> "€/kg";
            case PRICE_PER_VOLUME -> "€/m3";
            case PRICE_PER_ENERGY -> "€/J";
            case PRICE_PER_TIME -> "€/s";
            case PRICE_PER_AREA -> "€/m2";
            case SPECIFIC_HEAT -> "J/(kg K)";
            case LATENT_HEAT -> "J/kg";
            case HEAT_PER_AREA -> "J/m2";
            case AREAL_MASS_RATE -> "kg/(m2 s)";
            case FLOW_PER_AREA -> "m3/(s m2)";
            case RATIO, PH, DATE -> "";
            case ROCKWELL_C -> "HRC";
            case VICKERS -> "HV";
        };
    }
}
