package org.washwright.casework;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.washwright.document.Node;
import org.washwright.document.Node.ListNode;
import org.washwright.document.Node.MapNode;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;
import org.washwright.task.Attribute;
import org.washwright.task.FieldType;
import org.washwright.task.Group;
import org.washwright.task.Vocabulary;

/** Turns the fields of the form into the document that a file or a program would send, and back. */
final class FormDocument {
    static final String UNKNOWN = "unknown";
    static final String NOT_APPLICABLE = "not applicable";

    private static final ObjectMapper JSON = new ObjectMapper();

    private FormDocument() {}

    // ---- fields to document

    static byte[] write(FormFields fields, Vocabulary vocabulary) {
        Map<String, Object> document = new LinkedHashMap<>();
        put(document, "title", fields.first("title"));
        put(document, "notes", fields.first("notes"));
        for (Group group : Group.values()) {
            if (group.isList()) {
                list(fields, group).ifPresent(list -> document.put(group.key(), list));
            } else {
                Map<String, Object> entry = entry(fields, group, group.key());
                if (!entry.isEmpty()) {
                    document.put(group.key(), entry);
                }
            }
        }
        Map<String, Object> declared = new LinkedHashMap<>();
        vocabulary
                .declaredAttributes()
                .forEach((id, attribute) ->
                        value(fields, "attributes." + id, attribute.type()).ifPresent(v -> declared.put(id, v)));
        if (!declared.isEmpty()) {
            document.put("attributes", declared);
        }
        try {
            return JSON.writerWithDefaultPrettyPrinter()
                    .writeValueAsString(document)
                    .getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("maps of text can always be written", e);
        }
    }

    private static void put(Map<String, Object> document, String key, String text) {
        if (!text.isEmpty()) {
            document.put(key, text);
        }
    }

    /** A list as rows; nothing when it is open and empty, which says nothing. */
    private static Optional<Object> list(FormFields fields, Group group) {
        boolean open = fields.ticked(group.key() + ".open");
        int rows = fields.rows(group);
        if (open && rows == 0) {
            return Optional.empty();
        }
        boolean single = group.attributes().stream().filter(a -> !a.computed()).count() == 1;
        List<Object> list = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            Map<String, Object> entry = entry(fields, group, group.key() + "." + row);
            // A group of one attribute is written in its short form, as people write it in files.
            list.add(single ? entry.values().stream().findFirst().orElse(UNKNOWN) : entry);
        }
        return Optional.of(open ? openList(list) : list);
    }

    private static Map<String, Object> openList(List<Object> list) {
        Map<String, Object> open = new LinkedHashMap<>();
        open.put("open", true);
        open.put("list", list);
        return open;
    }

    private static Map<String, Object> entry(FormFields fields, Group group, String prefix) {
        Map<String, Object> entry = new LinkedHashMap<>();
        group.attributes().stream()
                .filter(a -> !a.computed())
                .forEach(a -> value(fields, prefix + "." + a.name(), a.type()).ifPresent(v -> entry.put(a.name(), v)));
        return entry;
    }

    private static Optional<Object> value(FormFields fields, String name, FieldType type) {
        Optional<Object> typed = typed(fields, name, type);
        String tree = fields.first(name + ".tree");
        if (tree.isEmpty()) {
            return typed;
        }
        Map<String, Object> played = new LinkedHashMap<>();
        typed.filter(v -> !v.equals(UNKNOWN)).ifPresent(v -> played.put("value", v));
        played.put("tree", tree);
        played.put("answers", answers(fields, name));
        return Optional.of(played);
    }

    static List<String> answers(FormFields fields, String name) {
        return Arrays.stream(fields.first(name + ".answers").split(","))
                .filter(a -> !a.isEmpty())
                .toList();
    }

    private static Optional<Object> typed(FormFields fields, String name, FieldType type) {
        if (fields.ticked(name + ".unknown")) {
            return Optional.of(UNKNOWN);
        }
        if (fields.ticked(name + ".none")) {
            return Optional.of(NOT_APPLICABLE);
        }
        String text = fields.first(name);
        if (type instanceof FieldType.TermType) {
            if (text.equals(NOT_APPLICABLE)) {
                return Optional.of(NOT_APPLICABLE);
            }
            List<String> terms = Stream.concat(Stream.of(text), fields.all(name + ".any").stream())
                    .filter(t -> !t.isEmpty())
                    .distinct()
                    .toList();
            return terms.size() > 1
                    ? Optional.of(terms)
                    : terms.stream().findFirst().map(t -> (Object) t);
        }
        if (text.isEmpty()) {
            return Optional.empty();
        }
        String unit = fields.first(name + ".unit");
        boolean endsInNumber = Character.isDigit(text.charAt(text.length() - 1));
        return Optional.of(
                type instanceof FieldType.NumberType && endsInNumber && !unit.isEmpty() ? text + " " + unit : text);
    }

    // ---- document to fields

    static FormFields read(Node document, Vocabulary vocabulary) {
        FormFields fields = FormFields.empty();
        MapNode map = (MapNode) document;
        for (String key : List.of("title", "notes")) {
            fields = fields.with(key, List.of(map.get(key).map(Node::shown).orElse("")));
        }
        for (Group group : Group.values()) {
            fields = group.isList()
                    ? rows(fields, group, map.get(group.key()), vocabulary)
                    : row(fields, group, group.key(), map.get(group.key()), vocabulary);
        }
        Optional<MapNode> declared =
                map.get("attributes").filter(MapNode.class::isInstance).map(MapNode.class::cast);
        for (Attribute attribute : vocabulary.declaredAttributes().values()) {
            Optional<Node> node = declared.flatMap(d -> d.get(attribute.name()));
            fields = value(fields, "attributes." + attribute.name(), attribute.type(), node, vocabulary);
        }
        return fields;
    }

    private static FormFields rows(FormFields before, Group group, Optional<Node> node, Vocabulary vocabulary) {
        boolean open = node.isEmpty() || node.get() instanceof Node.ScalarNode;
        Optional<Node> list = node;
        if (node.isPresent() && node.get() instanceof MapNode map) {
            open = map.get("open")
                    .map(n -> List.of("yes", "true").contains(n.shown()))
                    .orElse(false);
            list = map.get("list");
        }
        FormFields fields = open ? before.with(group.key() + ".open", List.of("yes")) : before;
        List<Node> items = list.isPresent() && list.get() instanceof ListNode l ? l.items() : List.of();
        for (int i = 0; i < items.size(); i++) {
            String prefix = group.key() + "." + i;
            fields = fields.withRow(group);
            fields = items.get(i) instanceof MapNode
                    ? row(fields, group, prefix, Optional.of(items.get(i)), vocabulary)
                    : value(
                            fields,
                            prefix + "." + group.attributes().get(0).name(),
                            group.attributes().get(0).type(),
                            Optional.of(items.get(i)),
                            vocabulary);
        }
        return fields;
    }

    private static FormFields row(
            FormFields before, Group group, String prefix, Optional<Node> node, Vocabulary vocabulary) {
        FormFields fields = before;
        if (node.isPresent() && node.get() instanceof MapNode map) {
            for (Attribute attribute : group.attributes()) {
                fields = value(
                        fields,
                        prefix + "." + attribute.name(),
                        attribute.type(),
                        map.get(attribute.name()),
                        vocabulary);
            }
        }
        return fields;
    }

    private static FormFields value(
            FormFields before, String name, FieldType type, Optional<Node> node, Vocabulary vocabulary) {
        if (node.isEmpty()) {
            return before;
        }
        if (node.get() instanceof MapNode map) {
            FormFields fields = before;
            if (map.get("tree").isPresent()) {
                String answers = map.get("answers")
                        .filter(ListNode.class::isInstance)
                        .map(n ->
                                ((ListNode) n).items().stream().map(Node::shown).collect(Collectors.joining(",")))
                        .orElse("");
                fields = fields.with(
                                name + ".tree", List.of(map.get("tree").get().shown()))
                        .with(name + ".answers", List.of(answers));
            }
            return value(fields, name, type, map.get("value"), vocabulary);
        }
        if (node.get() instanceof ListNode list) {
            List<String> terms = list.items().stream()
                    .map(n -> id(type, n.shown(), vocabulary))
                    .toList();
            return terms.size() == 1 ? before.with(name, terms) : before.with(name + ".any", terms);
        }
        String text = node.get().shown().strip();
        if (text.equals(UNKNOWN)) {
            return before.with(name + ".unknown", List.of("yes"));
        }
        if (text.equals(NOT_APPLICABLE)) {
            return before.with(name + ".none", List.of("yes"));
        }
        return type instanceof FieldType.NumberType n
                ? quantity(before, name, n.dimension(), text)
                : before.with(name, List.of(id(type, text, vocabulary)));
    }

    private static String id(FieldType type, String word, Vocabulary vocabulary) {
        if (!(type instanceof FieldType.TermType t)) {
            return word;
        }
        if (t.isFlag()) {
            return word.equals("true") ? "yes" : word.equals("false") ? "no" : word;
        }
        return vocabulary.term(t.kind(), word).orElse(word);
    }

    /** Number and unit apart where the unit stands once at the end; else all of it in the field, as it was typed. */
    private static FormFields quantity(FormFields before, String name, Dimension dimension, String text) {
        for (int cut = text.length() - 1; cut > 0; cut--) {
            String number = text.substring(0, cut).stripTrailing();
            String unit = text.substring(cut).strip();
            boolean wholeNumber = number.matches("(?:>=|<=|≥|≤)?[-+0-9., eE]*(?:\\s*(?:\\.\\.|to)\\s*)?[-+0-9.]*[0-9]");
            if (wholeNumber && !unit.isEmpty() && Quantities.isUnitOf(unit, dimension)) {
                return before.with(name, List.of(number)).with(name + ".unit", List.of(unit));
            }
        }
        return before.with(name, List.of(text));
    }
}
