package org.washwright.casework;

import java.util.ArrayList;
import java.util.List;
import org.washwright.quantity.Dimension;
import org.washwright.task.Attribute;
import org.washwright.task.FieldType;

/** Units offered beside a number, the usual one first. */
final class FormUnits {
    private static final String RESIDUE = "residue";

    private FormUnits() {}

    /** Units of an attribute that holds a number. */
    static List<String> of(Attribute attribute) {
        Dimension dimension = ((FieldType.NumberType) attribute.type()).dimension();
        // What may remain is about a thousandth of what comes in, so it is written in a smaller unit.
        return attribute.name().equals(RESIDUE) ? List.of("mg/m²", "g/m²", "mg/dm²") : of(dimension);
    }

    private static List<String> of(Dimension dimension) {
        return switch (dimension) {
            case RATE -> List.of("1/h", "1/min", "1/d");
            case MASS -> List.of("g", "kg", "t", "lb");
            case AREA -> List.of("cm²", "dm²", "m²", "mm²");
            case LENGTH -> List.of("mm", "µm", "cm", "m", "in");
            case AREAL_MASS -> List.of("g/m²", "mg/m²", "mg/dm²");
            case PRESSURE -> List.of("MPa", "N/mm²", "ksi");
            case TEMPERATURE -> List.of("°C", "°F", "K");
            case TIME -> List.of("s", "min", "h", "d");
            default -> List.of(dimension.defaultUnit());
        };
    }

    /** The same with a unit that was typed and is not among them. */
    static List<String> of(Attribute attribute, String typed) {
        List<String> units = new ArrayList<>(of(attribute));
        if (!typed.isEmpty() && !units.contains(typed)) {
            units.add(typed);
        }
        return units;
    }
}
