package org.washwright.exchange;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.washwright.document.Diagnostics;
import org.washwright.document.MapReader;
import org.washwright.document.Node;
import org.washwright.line.sizing.SizingInputs;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;
import org.washwright.quantity.Span;
import org.washwright.rule.Edition;
import org.washwright.task.Value;

/** Reads one assumption; its unit says its dimension. */
public final class AssumptionReader {

    private AssumptionReader() {}

    static Optional<Edition.Assumption> read(Node node, Diagnostics diagnostics) {
        MapReader map = MapReader.of(node, "an assumption", diagnostics);
        String id = map.id("id");
        String label = map.required("label");
        String text = map.required("value");
        String source = map.required("source");
        map.text("note");
        map.noMore();
        if (id.isEmpty() || text.isEmpty()) {
            return Optional.empty();
        }
        // What the program reads has to measure what it is read as; of the rest the unit tells.
        Dimension dimension = SizingInputs.ofAssumption(id)
                .orElseGet(() -> dimension(text.replaceFirst("^.*?[0-9.]+(?:\\s*(?:\\.\\.|to)\\s*[0-9.]+)?\\s*", "")));
        Optional<Span> value = Quantities.readSpan(text, dimension, map.place(), diagnostics);
        return value.map(v -> new Edition.Assumption(id, label, new Value.Number(v), dimension, source));
    }

    /** The dimension that a unit speaks of; where several share it, the one that is usually written so. */
    private static Dimension dimension(String unit) {
        String written = unit.replace("2", "²").replace("3", "³");
        List<Dimension> fitting = Arrays.stream(Dimension.values())
                .filter(d -> Quantities.isUnitOf(unit, d))
                .toList();
        return fitting.stream()
                .filter(d -> d.defaultUnit().equals(written))
                .findFirst()
                .orElse(fitting.isEmpty() ? Dimension.RATIO : fitting.get(0));
    }
}
