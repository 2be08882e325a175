package org.washwright.casework;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.washwright.document.Node;
import org.washwright.engine.Words;
import org.washwright.rule.Edition;
import org.washwright.task.Attribute;
import org.washwright.task.CleaningTask;
import org.washwright.task.Entry;
import org.washwright.task.Given;
import org.washwright.task.Group;
import org.washwright.task.Value;

/**
 * A task for reading: what is known of it, in the words and units it was given in.
 *
 * @param sections the groups
 * @param chips what is known, in a few words each
 */
record TaskSummary(List<Section> sections, List<String> chips) {
    private static final int CHIPS = 12;

    /** A group; {@code remark} says what is known of the list as a whole. */
    record Section(String title, List<Item> entries, String remark) {}

    /** An entry. */
    record Item(String name, List<Line> lines) {}

    /** An attribute with its value; {@code path} is the way through a question tree, when one was played. */
    record Line(String label, String value, boolean known, String path) {}

    static TaskSummary of(CleaningTask task, String document, Edition edition) {
        Node nodes = GivenTask.nodes(document);
        List<Section> sections = new ArrayList<>();
        List<String> chips = new ArrayList<>();
        for (Group group : Group.values()) {
            CleaningTask.Entries entries = task.entries(group);
            List<Item> items = new ArrayList<>();
            for (int i = 0; i < entries.entries().size(); i++) {
                Entry entry = entries.entries().get(i);
                String name = group.isList() ? group.label() + " " + (i + 1) : "";
                items.add(new Item(name, lines(group.attributes(), entry.given(), nodes, edition)));
                chip(items.get(items.size() - 1)).ifPresent(chips::add);
            }
            if (!group.isList() && items.isEmpty()) {
                items.add(new Item("", lines(group.attributes(), Map.of(), nodes, edition)));
            }
            sections.add(new Section(group.heading(), items, remark(group, entries)));
        }
        if (!edition.declaredAttributes().isEmpty()) {
            List<Attribute> declared = List.copyOf(edition.declaredAttributes().values());
            sections.add(new Section(
                    "More", List.of(new Item("", lines(declared, task.declared(), nodes, edition))), ""));
        }
        return new TaskSummary(
                List.copyOf(sections), chips.stream().limit(CHIPS).toList());
    }

    private static String remark(Group group, CleaningTask.Entries entries) {
        if (!group.isList()) {
            return "";
        }
        if (entries.entries().isEmpty()) {
            return entries.open() ? "Not known." : "There are none.";
        }
        return entries.open() ? "There may be more." : "";
    }

    private static List<Line> lines(List<Attribute> attributes, Map<String, Given> given, Node nodes, Edition edition) {
        return attributes.stream()
                .filter(a -> !a.computed())
                .map(a -> line(a, Optional.ofNullable(given.get(a.name())), nodes, edition))
                .toList();
    }

    private static Line line(Attribute attribute, Optional<Given> given, Node nodes, Edition edition) {
        if (given.isEmpty() || given.get().value() instanceof Value.Unknown) {
            return new Line(
                    attribute.label(),
                    "not known",
                    false,
                    given.map(Given::treePath).orElse(""));
        }
        Value value = given.get().value();
        String words = new Words(edition.catalogue()).value(value, attribute.type(), Words.GIVEN);
        // A number is shown as it was typed, in the user's own unit.
        String shown = value instanceof Value.Number
                ? typed(nodes, given.get().pointer()).orElse(words)
                : words;
        return new Line(attribute.label(), shown, true, given.get().treePath());
    }

    /** The text at a place of the document, where it is a single value. */
    private static Optional<String> typed(Node root, String pointer) {
        Optional<Node> node = Optional.of(root);
        for (String step : pointer.substring(1).split("/")) {
            String key = step.replace("~1", "/").replace("~0", "~");
            node = node.flatMap(n -> n instanceof Node.MapNode map
                    ? map.get(key)
                    : n instanceof Node.ListNode list
                                    && key.matches("[0-9]{1,4}")
                                    && Integer.parseInt(key) < list.items().size()
                            ? Optional.of(list.items().get(Integer.parseInt(key)))
                            : Optional.empty());
        }
        return node.filter(Node.ScalarNode.class::isInstance)
                .map(Node::shown)
                .map(text -> text.replace("..", " to ").replace("m2", "m²"));
    }

    private static Optional<String> chip(Item item) {
        String text = item.lines().stream()
                .filter(l ->
                        l.known() && !List.of("yes", "no", "does not apply").contains(l.value()))
                .map(Line::value)
                .collect(Collectors.joining(", "));
        return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }
}
