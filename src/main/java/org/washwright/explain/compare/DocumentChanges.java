package org.washwright.explain.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.washwright.document.Diagnostics;
import org.washwright.document.Node;
import org.washwright.document.Node.ListNode;
import org.washwright.document.Node.MapNode;
import org.washwright.document.Node.ScalarNode;
import org.washwright.document.Place;
import org.washwright.task.Group;
import org.washwright.task.Vocabulary;

/**
 * Makes the same changes in a task document as {@link TaskChanges} makes in the task, and leaves everything else as it was
 * typed: words, units, order.
 */
public final class DocumentChanges {

    private static final Place NEW = Place.ofFile("-");

    private final Map<String, Node> top = new LinkedHashMap<>();
    private final Map<Group, Set<Integer>> removed = new LinkedHashMap<>();

    private DocumentChanges(MapNode document) {
        document.entries().forEach(e -> top.put(e.key(), e.value()));
    }

    /**
     * The document with these changes.
     *
     * @param document a task document that reads without an error
     * @param changes changes that {@link TaskChanges} made of the same task without an error
     */
    public static Node apply(Node document, List<Change> changes, Vocabulary vocabulary) {
        if (!(document instanceof MapNode map)) {
            throw new IllegalArgumentException("a task document is a map");
        }
        DocumentChanges changed = new DocumentChanges(map);
        Diagnostics found = new Diagnostics();
        changes.forEach(c -> Spot.of(c, vocabulary, found).ifPresent(spot -> changed.set(spot, c)));
        if (found.hasErrors()) {
            throw new IllegalArgumentException("changes that were not tried before: " + found.all());
        }
        changed.takeOut();
        return map(changed.top);
    }

    /** The same document under another title. */
    public static Node titled(Node document, String title) {
        Map<String, Node> top = new LinkedHashMap<>();
        top.put("title", scalar(title));
        if (document instanceof MapNode map) {
            map.entries().stream().filter(e -> !e.key().equals("title")).forEach(e -> top.put(e.key(), e.value()));
        }
        return map(top);
    }

    private void set(Spot spot, Change change) {
        String word = change.word();
        if (spot.group().isEmpty()) {
            Map<String, Node> declared = values(Optional.ofNullable(top.get(Spot.DECLARED)));
            declared.put(spot.attribute().orElseThrow().name(), change.value());
            top.put(Spot.DECLARED, map(declared));
            return;
        }
        Group group = spot.group().get();
        switch (spot.kind()) {
            case GROUP -> {
                if (word.equals(Change.REMOVE)) {
                    top.remove(group.key());
                } else {
                    top.put(
                            group.key(),
                            word.equals(TaskChanges.NONE) ? new ListNode(NEW, List.of()) : scalar(TaskChanges.UNKNOWN));
                }
            }
            case OPEN -> list(group, items(group), !Set.of("no", "false").contains(word));
            case ENTRY -> {
                if (word.equals(Change.REMOVE)) {
                    removed.computeIfAbsent(group, g -> new TreeSet<>()).add(spot.index());
                } else {
                    attribute(spot, group, change.value());
                }
            }
            case ATTRIBUTE -> attribute(spot, group, change.value());
        }
    }

    private void attribute(Spot spot, Group group, Node value) {
        String name = spot.attribute().orElseThrow().name();
        if (!group.isList()) {
            Map<String, Node> values = values(Optional.ofNullable(top.get(group.key())));
            values.put(name, value);
            top.put(group.key(), map(values));
            return;
        }
        boolean open = isOpen(group);
        List<Node> items = new ArrayList<>(items(group));
        if (spot.index() == items.size()) {
            items.add(map(Map.of(name, value)));
        } else {
            items.set(spot.index(), entry(group, items.get(spot.index()), name, value));
        }
        list(group, items, open);
    }

    /** An entry with another value; what was written in short form stays so where it is all that is said. */
    private static Node entry(Group group, Node item, String name, Node value) {
        String first = group.attributes().get(0).name();
        if (item instanceof ScalarNode) {
            if (name.equals(first) && value instanceof ScalarNode) {
                return value;
            }
            Map<String, Node> values = new LinkedHashMap<>();
            values.put(first, item);
            values.put(name, value);
            return map(values);
        }
        Map<String, Node> values = values(Optional.of(item));
        values.put(name, value);
        return map(values);
    }

    private static Map<String, Node> values(Optional<Node> node) {
        Map<String, Node> out = new LinkedHashMap<>();
        if (node.isPresent() && node.get() instanceof MapNode map) {
            map.entries().forEach(e -> out.put(e.key(), e.value()));
        }
        return out;
    }

    private List<Node> items(Group group) {
        Node node = top.get(group.key());
        if (node instanceof MapNode map) {
            node = map.get("list").orElse(null);
        }
        return node instanceof ListNode list ? list.items() : List.of();
    }

    /** A list that is left out, or said to be unknown, may hold anything. */
    private boolean isOpen(Group group) {
        Node node = top.get(group.key());
        if (node instanceof MapNode map) {
            return map.get(Spot.OPEN)
                    .map(n -> Set.of("yes", "true").contains(n.shown()))
                    .orElse(false);
        }
        return !(node instanceof ListNode);
    }

    private void list(Group group, List<Node> items, boolean open) {
        if (open && items.isEmpty()) {
            top.put(group.key(), scalar(TaskChanges.UNKNOWN));
        } else if (open) {
            Map<String, Node> map = new LinkedHashMap<>();
            map.put(Spot.OPEN, scalar("yes"));
            map.put("list", new ListNode(NEW, List.copyOf(items)));
            top.put(group.key(), map(map));
        } else {
            top.put(group.key(), new ListNode(NEW, List.copyOf(items)));
        }
    }

    private void takeOut() {
        removed.forEach((group, out) -> {
            List<Node> kept = new ArrayList<>();
            List<Node> items = items(group);
            for (int i = 0; i < items.size(); i++) {
                if (!out.contains(i)) {
                    kept.add(items.get(i));
                }
            }
            list(group, kept, isOpen(group));
        });
    }

    private static Node scalar(String text) {
        return new ScalarNode(NEW, text, false);
    }

    private static Node map(Map<String, Node> values) {
        List<Node.Entry> entries = new ArrayList<>();
        values.forEach((key, value) -> entries.add(new Node.Entry(key, NEW, value)));
        return new MapNode(NEW, List.copyOf(entries));
    }
}
