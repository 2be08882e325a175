package org.washwright.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import org.washwright.task.CleaningTask;
import org.washwright.task.Entry;
import org.washwright.task.Given;
import org.washwright.task.Group;

/** Tells whether two tasks differ in one thing: the value of one attribute, or one entry more or less of a list. */
final class OneChange {

    private OneChange() {}

    /** True when exactly one thing differs; where values come from, titles and notes do not count. */
    static boolean between(CleaningTask a, CleaningTask b) {
        return changes(a, b) == 1;
    }

    /** True when nothing differs. */
    static boolean none(CleaningTask a, CleaningTask b) {
        return changes(a, b) == 0;
    }

    /** Things that differ, counted up to a few. */
    private static int changes(CleaningTask a, CleaningTask b) {
        int changes = values(a.declared(), b.declared());
        for (Group group : Group.values()) {
            if (changes > 1) {
                break;
            }
            changes += changes(a.entries(group), b.entries(group));
        }
        return changes;
    }

    private static int changes(CleaningTask.Entries a, CleaningTask.Entries b) {
        int changes = a.open() == b.open() ? 0 : 1;
        int more = a.entries().size() - b.entries().size();
        if (more == 0) {
            return changes + values(a.entries(), b.entries());
        }
        boolean one = more > 0 ? isOneMore(a.entries(), b.entries()) : isOneMore(b.entries(), a.entries());
        return changes + (one ? 1 : 2);
    }

    private static boolean isOneMore(List<Entry> longer, List<Entry> shorter) {
        for (int i = 0; i < longer.size(); i++) {
            List<Entry> rest = new ArrayList<>(longer);
            rest.remove(i);
            if (rest.size() == shorter.size() && values(rest, shorter) == 0) {
                return true;
            }
        }
        return false;
    }

    private static int values(List<Entry> a, List<Entry> b) {
        int changes = 0;
        for (int i = 0; i < a.size(); i++) {
            changes += values(a.get(i).given(), b.get(i).given());
        }
        return changes;
    }

    private static int values(Map<String, Given> a, Map<String, Given> b) {
        TreeSet<String> keys = new TreeSet<>(a.keySet());
        keys.addAll(b.keySet());
        return (int) keys.stream()
                .filter(k -> !Objects.equals(value(a.get(k)), value(b.get(k))))
                .count();
    }

    private static Object value(Given given) {
        return given == null ? null : given.code().isEmpty() ? given.value() : given.code();
    }
}
