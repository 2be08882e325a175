package org.washwright.casework;

import java.util.ArrayList;
import java.util.List;
import org.washwright.quantity.Dimension;

/** Units offered beside a number, the usual one first. */
final class FormUnits {
    private FormUnits() {}

    static List<String> of(Dimension dimension) {
        return switch (dimension) {
            case RATE -> List.of("1/h", "1/min", "1/d");
            case MASS -> List.of("g", "kg", "t", "lb");
            case AREA -> List.of("cm²", "dm²", "m²", "mm²");
            case LENGTH -> List.of("mm", "µm", "cm", "m", "in");
            case AREAL_MASS -> List.of("mg/m²", "g/m²", "mg/dm²");
            case PRESSURE -> List.of("MPa", "N/mm²", "ksi");
            case TEMPERATURE -> List.of("°C", "°F", "K");
            case TIME -> List.of("s", "min", "h", "d");
            default -> List.of(dimension.defaultUnit());
        };
    }

    /** The same with a unit that was typed and is not among them. */
    static List<String> of(Dimension dimension, String typed) {
        List<String> units = new ArrayList<>(of(dimension));
        if (!typed.isEmpty() && !units.contains(typed)) {
            units.add(typed);
        }
        return units;
    }
}
