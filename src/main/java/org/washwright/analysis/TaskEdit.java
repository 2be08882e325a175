package org.washwright.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.rule.Edition;
import org.washwright.task.Attribute;
import org.washwright.task.CleaningTask;
import org.washwright.task.Entry;
import org.washwright.task.Given;
import org.washwright.task.Group;

/**
 * A place in a task by reference, as undecided firings name it.
 *
 * @param group group of the attribute; empty for an attribute that the edition declares
 * @param index which entry of a list, 0 for single groups
 * @param attribute the attribute
 */
public record TaskEdit(Optional<Group> group, int index, Attribute attribute) {

    private static final String DECLARED = "attributes/";

    /** The place that a reference such as {@code materials/0/hardness} names; empty when nobody can type there. */
    public static Optional<TaskEdit> of(String ref, Edition edition) {
        if (ref.startsWith(DECLARED)) {
            String id = ref.substring(DECLARED.length(), ref.lastIndexOf('/'));
            return Optional.ofNullable(edition.catalogue().attributes().get(id))
                    .map(a -> new TaskEdit(Optional.empty(), 0, a));
        }
        String[] steps = ref.split("/", -1);
        Optional<Group> group = Group.byKey(steps[0]);
        boolean listed = steps.length == 3 && steps[1].matches("[0-9]+");
        if (group.isEmpty() || !(listed || steps.length == 2)) {
            return Optional.empty();
        }
        return group.get()
                .attribute(steps[steps.length - 1])
                .filter(a -> !a.computed())
                .map(a -> new TaskEdit(group, listed ? Integer.parseInt(steps[1]) : 0, a));
    }

    /** Every attribute given in a task. */
    public static List<TaskEdit> given(CleaningTask task, Edition edition) {
        List<TaskEdit> out = new ArrayList<>();
        task.lists().forEach((group, entries) -> {
            for (int i = 0; i < entries.entries().size(); i++) {
                int index = i;
                group.attributes().stream()
                        .filter(a -> entries.entries().get(index).given().containsKey(a.name()))
                        .forEach(a -> out.add(new TaskEdit(Optional.of(group), index, a)));
            }
        });
        task.declared()
                .keySet()
                .forEach(id -> out.add(new TaskEdit(
                        Optional.empty(), 0, edition.catalogue().attributes().get(id))));
        return out;
    }

    /** What the task says there. */
    public Optional<Given> in(CleaningTask task) {
        if (group.isEmpty()) {
            return Optional.ofNullable(task.declared().get(attribute.name()));
        }
        List<Entry> entries = task.entries(group.get()).entries();
        return index < entries.size()
                ? Optional.ofNullable(entries.get(index).given().get(attribute.name()))
                : Optional.empty();
    }

    /** The task with another value there. */
    public CleaningTask set(CleaningTask task, Given given) {
        if (group.isEmpty()) {
            Map<String, Given> declared = new TreeMap<>(task.declared());
            declared.put(attribute.name(), given);
            return new CleaningTask(task.title(), task.notes(), task.lists(), declared);
        }
        CleaningTask.Entries old = task.entries(group.get());
        List<Entry> entries = new ArrayList<>(old.entries());
        while (entries.size() <= index) {
            entries.add(Entry.EMPTY);
        }
        Map<String, Given> values = new TreeMap<>(entries.get(index).given());
        values.put(attribute.name(), given);
        entries.set(index, new Entry(values));
        return task.with(
                group.get(), new CleaningTask.Entries(entries, group.get().isList() && old.open()));
    }

    /** JSON pointer of the place. */
    public String pointer() {
        return group.map(g -> "/" + g.key() + (g.isList() ? "/" + index : "") + "/" + attribute.name())
                .orElse("/" + DECLARED + attribute.name());
    }
}
