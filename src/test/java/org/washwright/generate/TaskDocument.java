package org.washwright.generate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.Hashes;
import org.washwright.document.Node;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Span;
import org.washwright.rule.RuleText;
import org.washwright.task.Attribute;
import org.washwright.task.CleaningTask;
import org.washwright.task.Entry;
import org.washwright.task.FieldType;
import org.washwright.task.Given;
import org.washwright.task.Group;
import org.washwright.task.Value;

/** Writes a task as the document that says it, number for number, and what of a task must survive any way of writing it. */
public final class TaskDocument {

    private TaskDocument() {}

    /** The document of a task in which no tree was played. */
    public static Node of(CleaningTask task, Map<String, Attribute> declared) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("title", task.title());
        if (!task.notes().isEmpty()) {
            out.put("notes", task.notes());
        }
        task.lists().forEach((group, entries) -> {
            List<Object> list = new ArrayList<>();
            entries.entries().forEach(e -> list.add(entry(group, e)));
            if (!group.isList()) {
                list.stream().findFirst().ifPresent(e -> out.put(group.key(), e));
            } else {
                out.put(group.key(), entries.open() ? Map.of("open", "yes", "list", list) : list);
            }
        });
        Map<String, Object> attributes = new LinkedHashMap<>();
        task.declared()
                .forEach((id, given) ->
                        attributes.put(id, value(given, declared.get(id).type())));
        if (!attributes.isEmpty()) {
            out.put("attributes", attributes);
        }
        return DocumentReader.read("task.json", Hashes.canonical(out), new Diagnostics())
                .orElseThrow();
    }

    private static Map<String, Object> entry(Group group, Entry entry) {
        Map<String, Object> out = new LinkedHashMap<>();
        entry.given()
                .forEach((name, given) -> out.put(
                        name, value(given, group.attribute(name).orElseThrow().type())));
        return out;
    }

    private static Object value(Given given, FieldType type) {
        Value value = given.value();
        if (!given.code().isEmpty()) {
            return given.code();
        }
        if (value instanceof Value.Number n) {
            return text(n.span(), ((FieldType.NumberType) type).dimension());
        }
        if (value instanceof Value.OneOf o) {
            return o.terms().size() == 1 ? o.terms().first() : List.copyOf(o.terms());
        }
        return value.knowledge();
    }

    private static String text(Span span, Dimension dimension) {
        if (span.isPoint()) {
            return text(span.low(), dimension);
        }
        if (Double.isInfinite(span.high())) {
            return ">= " + text(span.low(), dimension);
        }
        return Double.isInfinite(span.low())
                ? "<= " + text(span.high(), dimension)
                : text(span.low(), dimension) + " .. " + text(span.high(), dimension);
    }

    private static String text(double si, Dimension dimension) {
        String number = dimension == Dimension.DATE ? RuleText.date(si) : Double.toString(si);
        return (number + " " + SiUnits.of(dimension)).strip();
    }

    /** All that a task says: what is not said and what is said to be unknown are the same. */
    public static Map<String, Object> said(CleaningTask task) {
        Map<String, Object> out = new TreeMap<>();
        out.put("title", task.title());
        out.put("notes", task.notes());
        for (Group group : Group.values()) {
            CleaningTask.Entries entries = task.entries(group);
            if (group.appliesOnlyWhenGiven()) {
                out.put(group.key() + " given", !entries.entries().isEmpty());
            }
            List<Object> list = new ArrayList<>();
            entries.entries().forEach(e -> list.add(said(e.given())));
            boolean silent = !group.isList() && (list.isEmpty() || list.equals(List.of(Map.of())));
            out.put(group.key(), silent ? List.of() : list);
            out.put(group.key() + " open", group.isList() && entries.open());
        }
        out.put("attributes", said(task.declared()));
        return out;
    }

    private static Map<String, Object> said(Map<String, Given> given) {
        Map<String, Object> out = new TreeMap<>();
        given.forEach((name, g) -> {
            if (!(g.value() instanceof Value.Unknown) || !g.treePath().isEmpty()) {
                out.put(name, List.of(g.value(), g.code(), g.treePath(), g.overruled(), g.pointer()));
            }
        });
        return out;
    }
}
