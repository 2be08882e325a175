package org.washwright.casework;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.washwright.document.Node;
import org.washwright.document.Node.ListNode;
import org.washwright.document.Node.MapNode;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;
import org.washwright.task.Attribute;
import org.washwright.task.FieldType;
import org.washwright.task.Group;
import org.washwright.task.Vocabulary;

/** Turns a kept document back into the fields of the form, as they were typed. */
final class FormReader {

    private FormReader() {}

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
        boolean silent = node.isPresent()
                && !(node.get() instanceof MapNode m && !m.entries().isEmpty());
        if (silent && group.appliesOnlyWhenGiven()) {
            // That there is one of which nothing is known is more than to leave it out.
            String first = prefix + "." + group.attributes().get(0).name();
            return before.with(first + ".unknown", List.of("yes"));
        }
        if (node.isPresent() && node.get() instanceof MapNode map) {
            boolean rest = map.get(Group.REST).isPresent();
            for (Attribute attribute : group.attributes()) {
                if (rest && !attribute.computed() && map.get(attribute.name()).isEmpty()) {
                    fields = fields.with(prefix + "." + attribute.name() + ".none", List.of("yes"));
                }
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

    static FormFields value(
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
        if (text.equals(FormDocument.UNKNOWN)) {
            return before.with(name + ".unknown", List.of("yes"));
        }
        if (text.equals(FormDocument.NOT_APPLICABLE)) {
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
