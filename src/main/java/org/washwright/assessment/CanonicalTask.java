package org.washwright.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.quantity.Span;
import org.washwright.task.CleaningTask;
import org.washwright.task.Entry;
import org.washwright.task.Given;
import org.washwright.task.Group;
import org.washwright.task.Value;

/**
 * A task in canonical form for the hashed request: what decides, in SI, whatever units and words it was given in. Title and
 * notes decide nothing and are left out.
 */
final class CanonicalTask {

    /** What stands for an end of a range that nobody set. */
    static final String OPEN = "open";

    private CanonicalTask() {}

    static Map<String, Object> of(CleaningTask task) {
        Map<String, Object> out = new TreeMap<>();
        for (Group group : Group.values()) {
            CleaningTask.Entries entries = task.entries(group);
            if (group.isList()) {
                List<Object> list = new ArrayList<>();
                entries.entries().forEach(e -> list.add(entry(e)));
                out.put(group.key(), Map.of("open", entries.open(), "list", list));
            } else if (isOpenOnPurpose(group, entries)) {
                out.put(group.key(), Value.UNKNOWN.knowledge());
            } else {
                out.put(group.key(), entry(task.single(group)));
            }
        }
        Map<String, Object> declared = new TreeMap<>();
        task.declared().forEach((id, given) -> put(declared, id, given));
        out.put("attributes", declared);
        return out;
    }

    /** A group whose silence means that it does not apply was named, and nothing said of it. */
    private static boolean isOpenOnPurpose(Group group, CleaningTask.Entries entries) {
        return group.appliesOnlyWhenGiven()
                && !entries.entries().isEmpty()
                && entry(entries.entries().get(0)).isEmpty();
    }

    private static Map<String, Object> entry(Entry entry) {
        Map<String, Object> out = new TreeMap<>();
        entry.given().forEach((name, given) -> put(out, name, given));
        return out;
    }

    private static void put(Map<String, Object> out, String name, Given given) {
        if (!(given.value() instanceof Value.Unknown) || !given.treePath().isEmpty()) {
            Object value = value(given.value());
            out.put(
                    name,
                    given.treePath().isEmpty()
                            ? value
                            : Map.of("value", value, "path", given.treePath(), "overruled", given.overruled()));
        }
    }

    private static Object value(Value value) {
        if (value instanceof Value.Number n) {
            return List.of(end(n.span(), true), end(n.span(), false));
        }
        if (value instanceof Value.OneOf o) {
            return List.copyOf(o.terms());
        }
        return value.knowledge();
    }

    private static Object end(Span span, boolean low) {
        double end = low ? span.low() : span.high();
        return Double.isInfinite(end) ? OPEN : (Object) end;
    }
}
