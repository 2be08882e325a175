package org.washwright.taskfile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.document.Similar;
import org.washwright.task.Attribute;
import org.washwright.task.Group;
import org.washwright.task.Vocabulary;

/** The paths that cells may be named by: those of the task format, such as {@code part/mass}. */
final class TaskPaths {

    /** Free text: whatever stands in the cell. */
    static final List<String> TEXTS = List.of("title", "notes", "shows");

    /** Column that says whether there may be more entries than the row lists. */
    static final String OPEN = "open";

    static final String ATTRIBUTES = "attributes";

    private static final Pattern IN_LIST = Pattern.compile("([A-Za-z]+)/([0-9]{1,4})(?:/.*)?");

    private final List<String> declared;
    private final Map<Integer, Set<String>> known = new HashMap<>();

    TaskPaths(Vocabulary vocabulary) {
        this.declared = List.copyOf(vocabulary.declaredAttributes().keySet());
    }

    /** The list that a path leads into and the number of the entry; empty when it leads into none. */
    static Optional<Group> list(String path) {
        int slash = path.indexOf('/');
        return Group.byKey(slash < 0 ? path : path.substring(0, slash)).filter(Group::isList);
    }

    /** Number of the entry that a path leads to; -1 when it leads to none. */
    static int index(String path) {
        Matcher matcher = IN_LIST.matcher(path);
        return matcher.matches() && list(path).isPresent() ? Integer.parseInt(matcher.group(2)) : -1;
    }

    /** Checks names, all of them: each is known, none comes twice, and none lies within another. */
    void check(List<TaskCells.Cell> cells, Diagnostics diagnostics) {
        Set<String> paths = new HashSet<>();
        Map<String, String> within = new HashMap<>();
        for (TaskCells.Cell cell : cells) {
            String path = cell.path();
            check(path, cell.place(), diagnostics);
            if (!paths.add(path)) {
                diagnostics.add(Message.DUPLICATE_KEY, cell.place(), path);
            }
            List<String> above = above(path);
            Optional.ofNullable(within.get(path))
                    .or(() -> above.stream().filter(paths::contains).findFirst())
                    .ifPresent(p -> diagnostics.add(Message.COLUMN_WITHIN, cell.place(), path, p));
            above.forEach(a -> within.putIfAbsent(a, path));
        }
    }

    /** The paths that a path lies in, the outermost first: of {@code a/b/c} these are {@code a} and {@code a/b}. */
    private static List<String> above(String path) {
        List<String> above = new ArrayList<>();
        for (int slash = path.indexOf('/'); slash >= 0; slash = path.indexOf('/', slash + 1)) {
            above.add(path.substring(0, slash));
        }
        return above;
    }

    private void check(String path, Place place, Diagnostics diagnostics) {
        int index = index(path);
        if (index >= 0 && index >= list(path).orElseThrow().cap()) {
            int last = list(path).orElseThrow().cap() - 1;
            diagnostics.add(Message.OUT_OF_RANGE, place, path, "entries 0 to " + last);
            return;
        }
        Set<String> known = known(Math.max(0, index));
        if (!known.contains(path)) {
            diagnostics.add(
                    Message.UNKNOWN_FIELD, place, path, "the header of a table of tasks", Similar.advice(path, known));
        }
    }

    /** Every path there is, of lists those of the entry with this number. */
    private Set<String> known(int index) {
        return known.computeIfAbsent(index, this::make);
    }

    private Set<String> make(int index) {
        Set<String> known = new LinkedHashSet<>(TEXTS);
        declared.forEach(id -> known.add(ATTRIBUTES + "/" + id));
        known.add(ATTRIBUTES);
        for (Group group : Group.values()) {
            known.add(group.key());
            if (group.isList()) {
                known.add(group.key() + "/" + OPEN);
                known.add(group.key() + "/" + index);
            }
            String prefix = group.key() + "/" + (group.isList() ? index + "/" : "");
            group.attributes().stream()
                    .filter(a -> !a.computed())
                    .map(Attribute::name)
                    .forEach(name -> known.add(prefix + name));
            known.add(prefix + Group.REST);
        }
        return known;
    }
}
