package org.washwright.generate;

import java.util.List;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;
import org.washwright.task.FieldType;

/** Few amounts for each dimension, so that values of tasks and literals of rules meet, touch and miss each other. */
final class Grid {

    private Grid() {}

    static List<String> of(Dimension dimension) {
        return switch (dimension) {
            case ROCKWELL_C -> List.of("20", "31", "40", "60");
            case VICKERS -> List.of("240", "310", "392", "697");
            case PRESSURE -> List.of("800", "1000", "1265", "2000");
            case TEMPERATURE -> List.of("0", "20", "60", "100");
            case DATE -> List.of("2020-01-01", "2024-02-29", "2026-06-30");
            case RATIO, PH -> List.of("0.5", "1", "2", "5");
            default -> List.of("0", "1", "2", "5", "10");
        };
    }

    /** Three codes of a standard. */
    static List<String> codes(FieldType.Code code) {
        return code == FieldType.Code.COMPONENT_CLEANLINESS
                ? List.of("A(B-E17/F-G14/H-I4/J-K00)", "A(B-J10)", "N(G-H5/I-K0)")
                : List.of("200B", "100", "A/10");
    }

    /** The amount in SI. */
    static double si(Dimension dimension, String amount) {
        return dimension == Dimension.DATE
                ? java.time.LocalDate.parse(amount).toEpochDay()
                : Quantities.toSi(amount, dimension.defaultUnit(), dimension);
    }

    static String text(Dimension dimension, String amount) {
        return (amount + " " + dimension.defaultUnit()).strip();
    }
}
