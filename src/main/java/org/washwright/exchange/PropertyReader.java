package org.washwright.exchange;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.washwright.catalogue.Kind;
import org.washwright.catalogue.Property;
import org.washwright.document.Diagnostics;
import org.washwright.document.MapReader;
import org.washwright.document.Message;
import org.washwright.document.Node;
import org.washwright.document.Similar;
import org.washwright.task.Value;
import org.washwright.task.ValueReader;

/** Reads the properties of terms, each a value or a value with its source. */
final class PropertyReader {

    /** Values and sources by property id. */
    record Read(Map<String, Value> values, Map<String, String> sources) {}

    private final ValueReader values;
    private final Set<String> sourceIds;
    private final Diagnostics diagnostics;

    PropertyReader(Map<String, Set<String>> ids, Set<String> sourceIds, Diagnostics diagnostics) {
        this.values = new ValueReader(
                new BareVocabulary(
                        (kind, word) -> Optional.of(word)
                                .filter(w -> ids.getOrDefault(kind, Set.of()).contains(w)),
                        kind -> ids.getOrDefault(kind, Set.of())),
                diagnostics);
        this.sourceIds = sourceIds;
        this.diagnostics = diagnostics;
    }

    Read read(Kind kind, List<Node.Entry> entries) {
        Map<String, Value> out = new TreeMap<>();
        Map<String, String> sources = new TreeMap<>();
        for (Node.Entry e : entries) {
            Property property = kind.properties().get(e.key());
            if (property == null) {
                diagnostics.add(
                        Message.UNKNOWN_FIELD,
                        e.keyPlace(),
                        e.key(),
                        "the properties of kind " + kind.id(),
                        Similar.advice(e.key(), kind.properties().keySet()));
                continue;
            }
            Optional<Node> value = Optional.of(e.value());
            if (e.value() instanceof Node.MapNode) {
                MapReader map = MapReader.of(e.value(), "a property's value", diagnostics);
                value = map.get("value");
                String source = map.required("source");
                checkSource(source, e.value());
                sources.put(e.key(), source);
                map.noMore();
                if (value.isEmpty()) {
                    diagnostics.add(Message.MISSING_FIELD, e.keyPlace(), "", "the property", "value");
                }
            }
            value.flatMap(n -> values.value(n, property.type())).ifPresent(v -> out.put(e.key(), v));
        }
        return new Read(out, sources);
    }

    private void checkSource(String source, Node node) {
        for (String one : source.split(";")) {
            String id = one.split(",", 2)[0].strip();
            if (!id.isEmpty() && !sourceIds.contains(id) && !id.equals("common practice")) {
                diagnostics.add(Message.UNKNOWN_SOURCE, node.place(), id, Similar.advice(id, sourceIds));
            }
        }
    }
}
