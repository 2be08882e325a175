package org.washwright.casework;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;
import org.washwright.task.Attribute;
import org.washwright.task.FieldType;
import org.washwright.task.Group;
import org.washwright.task.Vocabulary;

/** Units offered beside a number: the one last typed first, then the usual ones. */
final class FormUnits {
    private static final String RESIDUE = "residue";

    private FormUnits() {}

    /** Units of an attribute that holds a number. */
    static List<String> of(Attribute attribute) {
        Dimension dimension = dimension(attribute);
        // What may remain is about a thousandth of what comes in, so it is written in a smaller unit.
        return attribute.name().equals(RESIDUE) ? List.of("mg/m²", "g/m²", "mg/dm²") : of(dimension);
    }

    private static List<String> of(Dimension dimension) {
        return switch (dimension) {
            case RATE -> List.of("1/h", "1/min", "1/d");
            case MASS -> List.of("g", "kg", "t", "lb");
            case AREA -> List.of("cm²", "dm²", "m²", "mm²");
            case LENGTH -> List.of("mm", "µm", "cm", "m", "in");
            case FINE_LENGTH -> List.of("µm", "mm");
            case AREAL_MASS -> List.of("g/m²", "mg/m²", "mg/dm²");
            case AREA_RATE -> List.of("m²/h", "dm²/h");
            case PRESSURE -> List.of("MPa", "N/mm²", "ksi");
            case TEMPERATURE -> List.of("°C", "°F", "K");
            case TIME -> List.of("s", "min", "h", "d");
            case CONCENTRATION -> List.of("g/L", "mg/L");
            case FREQUENCY -> List.of("kHz", "Hz", "MHz");
            case POWER -> List.of("kW", "W");
            case CURRENT_DENSITY -> List.of("A/dm²", "A/m²");
            default -> List.of(dimension.defaultUnit());
        };
    }

    /** The same with one that was typed and is not among them. */
    static List<String> of(Attribute attribute, String typed) {
        List<String> units = new ArrayList<>(of(attribute));
        if (!typed.isEmpty() && !units.contains(typed)) {
            units.add(typed);
        }
        return units;
    }

    /** The unit to offer for an empty field: the one chosen before where it still fits. */
    static String preferred(Attribute attribute, Optional<String> chosen) {
        return chosen.filter(u -> Quantities.isUnitOf(u, dimension(attribute)))
                .orElse(of(attribute).get(0));
    }

    /** The units that numbers were typed in, by attribute; of several rows the last counts. */
    static Map<String, String> typed(FormFields fields, Vocabulary vocabulary) {
        Map<String, String> units = new LinkedHashMap<>();
        for (Group group : Group.values()) {
            int rows = group.isList() ? fields.rows(group) : 1;
            for (Attribute attribute : group.attributes()) {
                for (int row = 0; row < rows; row++) {
                    String name = group.key() + (group.isList() ? "." + row : "") + "." + attribute.name();
                    typed(fields, name, attribute, units);
                }
            }
        }
        vocabulary.declaredAttributes().forEach((id, a) -> typed(fields, FormNames.DECLARED + "." + id, a, units));
        return units;
    }

    private static void typed(FormFields fields, String name, Attribute attribute, Map<String, String> units) {
        String unit = fields.first(name + ".unit");
        if (attribute.type() instanceof FieldType.NumberType n
                && !fields.first(name).isEmpty()
                && Quantities.isUnitOf(unit, n.dimension())) {
            units.put(FormNames.attribute(name), unit);
        }
    }

    private static Dimension dimension(Attribute attribute) {
        return ((FieldType.NumberType) attribute.type()).dimension();
    }
}
