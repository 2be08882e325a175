package org.washwright.taskfile;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.Message;
import org.washwright.document.Node;
import org.washwright.document.Place;

/** Reads the text of a cell as what a task file would say: a list, a map, or a single value as it stands. */
final class CellValue {

    // Lists and maps are read as the value of a key; alone they would be taken for JSON, which wants more quotes.
    private static final String KEY = "cell";

    private CellValue() {}

    /** The value as plain data; empty after an error. */
    static Optional<Object> read(String cell, Place place, Diagnostics diagnostics) {
        String text = cell.strip();
        if (!text.startsWith("[") && !text.startsWith("{")) {
            return Optional.of(text);
        }
        Diagnostics within = new Diagnostics();
        Optional<Node> document = DocumentReader.read(place.file(), KEY + ": " + text, within);
        if (within.hasErrors()) {
            within.all().forEach(d -> diagnostics.add(d.at(place)));
            return Optional.empty();
        }
        Optional<Object> value = document.filter(
                        d -> d instanceof Node.MapNode m && m.entries().size() == 1)
                .map(d -> data(((Node.MapNode) d).entries().get(0).value()));
        if (value.isEmpty()) {
            diagnostics.add(Message.BROKEN_YAML, place, text, "more follows the list or map");
        }
        return value;
    }

    private static Object data(Node node) {
        if (node instanceof Node.MapNode map) {
            Map<String, Object> out = new LinkedHashMap<>();
            map.entries().forEach(e -> out.put(e.key(), data(e.value())));
            return out;
        }
        if (node instanceof Node.ListNode list) {
            return list.items().stream().map(CellValue::data).toList();
        }
        return ((Node.ScalarNode) node).text();
    }
}
