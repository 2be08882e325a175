package org.washwright.task;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.Message;
import org.washwright.document.Node;
import org.washwright.document.Node.ListNode;
import org.washwright.document.Node.MapNode;
import org.washwright.document.Node.ScalarNode;
import org.washwright.document.Place;
import org.washwright.document.Similar;

/** Reads a cleaning task from YAML or JSON against the vocabulary of an edition. Finds every error at once. */
public final class TaskReader {

    /** Most bytes of a task. */
    public static final int MAX_BYTES = 1_000_000;

    private static final int TITLE_LENGTH = 200;
    private static final int NOTES_LENGTH = 10_000;

    private final Vocabulary vocabulary;
    private final Diagnostics diagnostics;
    private final ValueReader values;

    private TaskReader(Vocabulary vocabulary, Diagnostics diagnostics) {
        this.vocabulary = vocabulary;
        this.diagnostics = diagnostics;
        this.values = new ValueReader(vocabulary, diagnostics);
    }

    /**
     * Reads a task.
     *
     * @param file name for messages
     * @param bytes UTF-8 text
     * @param vocabulary the edition's terms, attributes and trees
     * @param diagnostics takes every error
     * @return the task, or empty when there was any error
     */
    public static Optional<CleaningTask> read(
            String file, byte[] bytes, Vocabulary vocabulary, Diagnostics diagnostics) {
        if (bytes.length > MAX_BYTES) {
            diagnostics.add(Message.TOO_LARGE, Place.ofFile(file), bytes.length + " bytes", MAX_BYTES + " bytes");
            return Optional.empty();
        }
        return DocumentReader.read(file, bytes, diagnostics).flatMap(node -> read(node, vocabulary, diagnostics));
    }

    /** The same from a document already read. */
    public static Optional<CleaningTask> read(Node node, Vocabulary vocabulary, Diagnostics diagnostics) {
        CleaningTask task = new TaskReader(vocabulary, diagnostics).task(node);
        return diagnostics.hasErrors() ? Optional.empty() : Optional.of(task);
    }

    private CleaningTask task(Node node) {
        Map<Group, CleaningTask.Entries> lists = new EnumMap<>(Group.class);
        Map<String, Given> declared = new TreeMap<>();
        String title = "";
        String notes = "";
        if (!(node instanceof MapNode map)) {
            diagnostics.add(Message.EXPECTED_MAP, node.place(), node.shown());
            return new CleaningTask(title, notes, lists, declared);
        }
        for (Node.Entry entry : map.entries()) {
            switch (entry.key()) {
                case "title" -> title = text(entry.value(), TITLE_LENGTH);
                case "notes" -> notes = text(entry.value(), NOTES_LENGTH);
                case "shows" -> text(entry.value(), NOTES_LENGTH);
                case "attributes" -> declared(entry.value(), declared);
                default ->
                    Group.byKey(entry.key())
                            .ifPresentOrElse(
                                    group -> lists.put(group, group(group, entry.value())),
                                    () -> unknown(entry, "a cleaning task", taskKeys()));
            }
        }
        if (title.isBlank()) {
            diagnostics.add(Message.NO_TITLE, node.place(), "");
        }
        return new CleaningTask(title.strip(), notes, lists, declared);
    }

    private static List<String> taskKeys() {
        List<String> keys = new ArrayList<>(List.of("title", "notes", "shows", "attributes"));
        Arrays.stream(Group.values()).map(Group::key).forEach(keys::add);
        return keys;
    }

    private CleaningTask.Entries group(Group group, Node node) {
        if (!group.isList()) {
            return new CleaningTask.Entries(List.of(entry(group, node, "/" + group.key())), false);
        }
        if (isUnknown(node)) {
            return CleaningTask.Entries.UNKNOWN;
        }
        boolean open = false;
        Node list = node;
        if (node instanceof MapNode map) {
            list = map.get("list").orElse(new ListNode(node.place(), List.of()));
            open = map.get("open").map(this::flag).orElse(false);
            map.entries().stream()
                    .filter(e -> !e.key().equals("open") && !e.key().equals("list"))
                    .forEach(e -> unknown(e, "the list \"" + group.key() + "\"", List.of("open", "list")));
        }
        if (!(list instanceof ListNode items)) {
            diagnostics.add(Message.EXPECTED_LIST, list.place(), list.shown());
            return CleaningTask.Entries.UNKNOWN;
        }
        if (items.items().size() > group.cap()) {
            diagnostics.add(
                    Message.LIST_TOO_LONG,
                    items.place(),
                    String.valueOf(items.items().size()),
                    "entries under \"" + group.key() + "\"",
                    group.cap());
            return CleaningTask.Entries.UNKNOWN;
        }
        List<Entry> entries = new ArrayList<>();
        for (Node item : items.items()) {
            entries.add(entry(group, item, "/" + group.key() + "/" + entries.size()));
        }
        return new CleaningTask.Entries(entries, open);
    }

    private static boolean isUnknown(Node node) {
        return node instanceof ScalarNode s && s.text().strip().equals("unknown");
    }

    private Entry entry(Group group, Node node, String pointer) {
        Map<String, Given> given = new TreeMap<>();
        if (node instanceof ScalarNode && group.isList()) {
            // Short form: a list of terms of the group's first attribute.
            Attribute first = group.attributes().get(0);
            values.read(node, first, group.factType(), pointer + "/" + first.name())
                    .ifPresent(g -> given.put(first.name(), g));
            return new Entry(given);
        }
        if (isUnknown(node)) {
            return Entry.EMPTY;
        }
        if (!(node instanceof MapNode map)) {
            diagnostics.add(Message.EXPECTED_MAP, node.place(), node.shown());
            return Entry.EMPTY;
        }
        for (Node.Entry entry : map.entries()) {
            if (entry.key().equals(Group.REST)) {
                rest(entry.value());
                continue;
            }
            group.attribute(entry.key())
                    .filter(a -> !a.computed())
                    .ifPresentOrElse(
                            a -> values.read(entry.value(), a, group.factType(), pointer + "/" + a.name())
                                    .ifPresent(g -> given.put(a.name(), g)),
                            () -> unknown(
                                    entry,
                                    "\"" + group.key() + "\"",
                                    group.attributes().stream()
                                            .filter(a -> !a.computed())
                                            .map(Attribute::name)
                                            .toList()));
        }
        if (map.get(Group.REST).isPresent()) {
            group.attributes().stream()
                    .filter(a -> !a.computed() && map.get(a.name()).isEmpty())
                    .forEach(a -> given.put(a.name(), Given.of(Value.NOT_APPLICABLE, pointer + "/" + a.name())));
        }
        return new Entry(given);
    }

    private void rest(Node node) {
        if (!(node instanceof ScalarNode s) || !s.text().strip().equals(ValueReader.NOT_APPLICABLE)) {
            diagnostics.add(Message.BAD_REST, node.place(), node.shown());
        }
    }

    private void declared(Node node, Map<String, Given> declared) {
        if (!(node instanceof MapNode map)) {
            diagnostics.add(Message.EXPECTED_MAP, node.place(), node.shown());
            return;
        }
        Map<String, Attribute> known = vocabulary.declaredAttributes();
        for (Node.Entry entry : map.entries()) {
            Attribute attribute = known.get(entry.key());
            if (attribute == null) {
                unknown(entry, "the attributes of this edition", List.copyOf(known.keySet()));
            } else {
                values.read(entry.value(), attribute, "Attribute", "/attributes/" + entry.key())
                        .ifPresent(g -> declared.put(entry.key(), g));
            }
        }
    }

    private void unknown(Node.Entry entry, String where, List<String> known) {
        diagnostics.add(
                Message.UNKNOWN_FIELD, entry.keyPlace(), entry.key(), where, Similar.advice(entry.key(), known));
    }

    private String text(Node node, int longest) {
        if (!(node instanceof ScalarNode s)) {
            diagnostics.add(Message.EXPECTED_TEXT, node.place(), node.shown());
            return "";
        }
        if (s.text().length() > longest) {
            diagnostics.add(Message.TEXT_TOO_LONG, node.place(), s.text(), longest);
            return "";
        }
        return s.text();
    }

    private boolean flag(Node node) {
        String text = node instanceof ScalarNode s ? s.text() : "";
        if (ValueReader.YES.contains(text) || ValueReader.NO.contains(text)) {
            return ValueReader.YES.contains(text);
        }
        diagnostics.add(Message.NOT_A_FLAG, node.place(), node.shown());
        return false;
    }
}
