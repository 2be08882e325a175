package org.washwright.taskfile;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.washwright.document.Node;
import org.washwright.task.Group;

/** A task document taken apart into names and what is said of each, for tables. Words and units stay as they were given. */
final class TaskFlat {

    private static final String UNKNOWN = "unknown";

    private final Map<String, String> cells = new LinkedHashMap<>();

    private TaskFlat() {}

    /** Cells by path, in the order of the document; texts are not guarded. */
    static Map<String, String> of(Node document) {
        TaskFlat flat = new TaskFlat();
        if (document instanceof Node.MapNode map) {
            map.entries().forEach(e -> flat.top(e.key(), e.value()));
        }
        return flat.cells;
    }

    private void top(String key, Node value) {
        if (Group.byKey(key).filter(Group::isList).isPresent()) {
            list(key, value);
        } else if (value instanceof Node.MapNode map && !TaskPaths.TEXTS.contains(key)) {
            map(key, map);
        } else {
            cells.put(key, value.shown());
        }
    }

    private void map(String path, Node.MapNode map) {
        if (map.entries().isEmpty()) {
            cells.put(path, UNKNOWN);
        }
        map.entries().forEach(e -> cells.put(path + "/" + e.key(), cell(e.value())));
    }

    private void list(String key, Node value) {
        if (value instanceof Node.MapNode map) {
            map.get(TaskPaths.OPEN).ifPresent(open -> cells.put(key + "/" + TaskPaths.OPEN, open.shown()));
            entries(key, map.get("list").orElse(new Node.ListNode(map.place(), List.of())));
        } else {
            entries(key, value);
        }
    }

    private void entries(String key, Node value) {
        if (!(value instanceof Node.ListNode list)) {
            cells.put(key, value.shown());
            return;
        }
        if (list.items().isEmpty()) {
            cells.putIfAbsent(key + "/" + TaskPaths.OPEN, "no");
        }
        for (int i = 0; i < list.items().size(); i++) {
            String path = key + "/" + i;
            if (list.items().get(i) instanceof Node.MapNode map) {
                map(path, map);
            } else {
                cells.put(path, cell(list.items().get(i)));
            }
        }
    }

    /** A value in one cell: nothing said is said outright, and what is no single value is written on one line. */
    private static String cell(Node value) {
        if (value instanceof Node.ScalarNode scalar) {
            return scalar.text().isBlank() ? UNKNOWN : scalar.text();
        }
        return inline(value);
    }

    private static String inline(Node value) {
        if (value instanceof Node.MapNode map) {
            return map.entries().stream()
                    .map(e -> e.key() + ": " + inline(e.value()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (value instanceof Node.ListNode list) {
            return list.items().stream().map(TaskFlat::inline).collect(Collectors.joining(", ", "[", "]"));
        }
        return YamlText.scalar(value.shown());
    }
}
