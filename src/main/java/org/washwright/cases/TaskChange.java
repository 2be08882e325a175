package org.washwright.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Node;
import org.washwright.document.Node.ListNode;
import org.washwright.document.Node.MapNode;

/** Sets values of a document by JSON pointer (RFC 6901), so that one task can be told by its difference from another. */
final class TaskChange {

    private static final int LONGEST_NUMBER = 4;

    private final Diagnostics diagnostics;

    TaskChange(Diagnostics diagnostics) {
        this.diagnostics = diagnostics;
    }

    /** The document with these values set; what leads nowhere is reported and left as it is. */
    Node apply(Node document, List<Node.Entry> changes) {
        Node changed = document;
        for (Node.Entry change : changes) {
            changed = set(changed, change).orElse(changed);
        }
        return changed;
    }

    private Optional<Node> set(Node document, Node.Entry change) {
        String pointer = change.key();
        if (!pointer.startsWith("/")) {
            diagnostics.add(
                    Message.CASE_POINTER, change.keyPlace(), pointer, "Write a JSON pointer such as /materials/0");
            return Optional.empty();
        }
        List<String> steps = new ArrayList<>();
        for (String step : pointer.substring(1).split("/", -1)) {
            steps.add(step.replace("~1", "/").replace("~0", "~"));
        }
        return set(document, steps, change);
    }

    private Optional<Node> set(Node node, List<String> steps, Node.Entry change) {
        if (steps.isEmpty()) {
            return Optional.of(change.value());
        }
        String step = steps.get(0);
        List<String> rest = steps.subList(1, steps.size());
        if (node instanceof MapNode map) {
            Optional<Node> old = map.get(step);
            if (old.isEmpty() && !rest.isEmpty()) {
                return nowhere(change, "There is no \"" + step + "\" on the way; set the whole of it");
            }
            return (rest.isEmpty() ? Optional.of(change.value()) : set(old.get(), rest, change))
                    .map(value -> with(map, step, value, change));
        }
        if (node instanceof ListNode list) {
            int index = index(step, list.items().size());
            if (index < 0 || index == list.items().size() && !rest.isEmpty()) {
                return nowhere(
                        change,
                        "The list holds " + list.items().size() + " entries; count from 0, or write - to add one");
            }
            return (index == list.items().size()
                            ? Optional.of(change.value())
                            : set(list.items().get(index), rest, change))
                    .map(value -> with(list, index, value));
        }
        return nowhere(change, "A single value stands on the way; write that entry as a map");
    }

    private Optional<Node> nowhere(Node.Entry change, String advice) {
        diagnostics.add(Message.CASE_POINTER, change.keyPlace(), change.key(), advice);
        return Optional.empty();
    }

    private static int index(String step, int size) {
        if (step.equals("-")) {
            return size;
        }
        boolean number = step.matches("0|[1-9][0-9]*") && step.length() <= LONGEST_NUMBER;
        int index = number ? Integer.parseInt(step) : -1;
        return index <= size ? index : -1;
    }

    private static Node with(MapNode map, String key, Node value, Node.Entry change) {
        List<Node.Entry> entries = new ArrayList<>();
        boolean replaced = false;
        for (Node.Entry e : map.entries()) {
            boolean here = e.key().equals(key);
            entries.add(here ? new Node.Entry(key, e.keyPlace(), value) : e);
            replaced |= here;
        }
        if (!replaced) {
            entries.add(new Node.Entry(key, change.keyPlace(), value));
        }
        return new MapNode(map.place(), List.copyOf(entries));
    }

    private static Node with(ListNode list, int index, Node value) {
        List<Node> items = new ArrayList<>(list.items());
        if (index == items.size()) {
            items.add(value);
        } else {
            items.set(index, value);
        }
        return new ListNode(list.place(), List.copyOf(items));
    }
}
