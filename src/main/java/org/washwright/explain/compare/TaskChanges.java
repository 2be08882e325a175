package org.washwright.explain.compare;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Node;
import org.washwright.document.Place;
import org.washwright.task.CleaningTask;
import org.washwright.task.Entry;
import org.washwright.task.FieldType;
import org.washwright.task.Given;
import org.washwright.task.Group;
import org.washwright.task.Value;
import org.washwright.task.ValueReader;
import org.washwright.task.Vocabulary;

/** Applies changes to a task: what a what-if asks. Finds every error at once. */
public final class TaskChanges {

    /** Most changes at once. */
    public static final int MOST = 50;

    static final String NONE = "none";
    static final String UNKNOWN = "unknown";

    private final Diagnostics diagnostics;
    private final ValueReader values;
    private final Map<Group, List<Map<String, Given>>> entries = new EnumMap<>(Group.class);
    private final Map<Group, Boolean> open = new EnumMap<>(Group.class);
    private final Map<Group, Integer> own = new EnumMap<>(Group.class);
    private final Map<Group, Set<Integer>> removed = new EnumMap<>(Group.class);
    private final Map<Group, Set<Integer>> touched = new EnumMap<>(Group.class);
    private final Map<String, Given> declared = new TreeMap<>();

    private TaskChanges(CleaningTask task, Vocabulary vocabulary, Diagnostics diagnostics) {
        this.diagnostics = diagnostics;
        this.values = new ValueReader(vocabulary, diagnostics);
        for (Group group : Group.values()) {
            CleaningTask.Entries old = task.entries(group);
            List<Map<String, Given>> copies = new ArrayList<>();
            old.entries().forEach(e -> copies.add(new TreeMap<>(e.given())));
            entries.put(group, copies);
            open.put(group, old.open());
            own.put(group, copies.size());
        }
        declared.putAll(task.declared());
    }

    /**
     * The task with these changes.
     *
     * @param vocabulary terms and attributes of the edition that answers
     * @param diagnostics takes every error, each at the place of its change's value
     * @return empty after an error
     */
    public static Optional<CleaningTask> apply(
            CleaningTask task, List<Change> changes, Vocabulary vocabulary, Diagnostics diagnostics) {
        if (changes.isEmpty()) {
            diagnostics.add(Message.CHANGE_NONE, Place.ofFile("-"), "");
            return Optional.empty();
        }
        if (changes.size() > MOST) {
            diagnostics.add(
                    Message.CHANGES_TOO_MANY,
                    Place.ofFile(changes.get(0).value().place().file()),
                    String.valueOf(changes.size()),
                    MOST);
            return Optional.empty();
        }
        Diagnostics found = new Diagnostics();
        TaskChanges applied = new TaskChanges(task, vocabulary, found);
        Set<String> seen = new HashSet<>();
        for (Change change : changes) {
            if (seen.add(change.pointer())) {
                Spot.of(change, vocabulary, found).ifPresent(spot -> applied.set(spot, change));
            } else {
                found.add(Message.DUPLICATE_KEY, change.value().place(), change.pointer());
            }
        }
        diagnostics.addAll(found);
        return found.hasErrors() ? Optional.empty() : Optional.of(applied.task(task));
    }

    private void set(Spot spot, Change change) {
        switch (spot.kind()) {
            case GROUP -> group(spot, change);
            case OPEN ->
                values.value(change.value(), FieldType.flag())
                        .ifPresent(v -> open.put(spot.group().orElseThrow(), !v.equals(Value.flag(false))));
            case ENTRY -> entry(spot, change);
            case ATTRIBUTE -> attribute(spot, change);
        }
    }

    private void group(Spot spot, Change change) {
        Group group = spot.group().orElseThrow();
        String word = change.word();
        boolean list = group.isList();
        if (word.equals(UNKNOWN) || word.equals(list ? NONE : Change.REMOVE)) {
            entries.put(group, new ArrayList<>());
            own.put(group, 0);
            open.put(group, word.equals(UNKNOWN) && list);
            if (!list && word.equals(UNKNOWN)) {
                entries.get(group).add(new TreeMap<>());
            }
            return;
        }
        String first = group.attributes().get(0).name();
        Spot.nowhere(
                change,
                diagnostics,
                list
                        ? "Write none or unknown, or set an entry: /" + group.key() + "/0/" + first
                        : "Write unknown or remove, or set an attribute: /" + group.key() + "/" + first);
    }

    private void entry(Spot spot, Change change) {
        if (!change.word().equals(Change.REMOVE)) {
            attribute(spot, change);
            return;
        }
        Group group = spot.group().orElseThrow();
        if (spot.index() >= own.get(group)) {
            Spot.nowhere(change, diagnostics, holds(group));
        } else if (touched.getOrDefault(group, Set.of()).contains(spot.index())) {
            Spot.nowhere(change, diagnostics, "It is set and taken out at once; keep one of the two");
        } else {
            removed.computeIfAbsent(group, g -> new TreeSet<>()).add(spot.index());
        }
    }

    private String holds(Group group) {
        int size = entries.get(group).size();
        return size == 0
                ? "There are none; /" + group.key() + "/0 adds one"
                : "There " + (size == 1 ? "is 1 entry" : "are " + size + " entries") + ", counted from 0; /"
                        + group.key() + "/" + size + " adds one";
    }

    private void attribute(Spot spot, Change change) {
        if (spot.group().isEmpty()) {
            read(spot, change)
                    .ifPresent(g -> declared.put(spot.attribute().orElseThrow().name(), g));
            return;
        }
        Group group = spot.group().get();
        List<Map<String, Given>> list = entries.get(group);
        if (group.isList() && spot.index() > list.size()) {
            Spot.nowhere(change, diagnostics, holds(group));
            return;
        }
        if (removed.getOrDefault(group, Set.of()).contains(spot.index())) {
            Spot.nowhere(change, diagnostics, "It is set and taken out at once; keep one of the two");
            return;
        }
        if (spot.index() == list.size()) {
            // Added even when its value is wrong, so that the changes behind it are read as well.
            list.add(new TreeMap<>());
        }
        touched.computeIfAbsent(group, g -> new HashSet<>()).add(spot.index());
        read(spot, change)
                .ifPresent(g -> list.get(spot.index())
                        .put(spot.attribute().orElseThrow().name(), g));
    }

    private Optional<Given> read(Spot spot, Change change) {
        Node value = change.value();
        return values.read(value, spot.attribute().orElseThrow(), spot.factType(), spot.pointer());
    }

    private CleaningTask task(CleaningTask old) {
        Map<Group, CleaningTask.Entries> lists = new EnumMap<>(Group.class);
        entries.forEach((group, list) -> {
            Set<Integer> out = removed.getOrDefault(group, Set.of());
            List<Entry> kept = new ArrayList<>();
            for (int i = 0; i < list.size(); i++) {
                if (!out.contains(i)) {
                    kept.add(new Entry(pointed(group, kept.size(), list.get(i))));
                }
            }
            boolean silent = !group.isList() && kept.isEmpty();
            boolean never = group.isList()
                    && kept.isEmpty()
                    && open.get(group)
                    && !old.lists().containsKey(group);
            if (!silent && !never) {
                lists.put(group, new CleaningTask.Entries(kept, group.isList() && open.get(group)));
            }
        });
        return new CleaningTask(old.title(), old.notes(), lists, declared);
    }

    /** What is given of an entry, at the place where the entry stands now. */
    private static Map<String, Given> pointed(Group group, int index, Map<String, Given> given) {
        String entry = "/" + group.key() + (group.isList() ? "/" + index : "") + "/";
        Map<String, Given> out = new TreeMap<>();
        given.forEach(
                (name, g) -> out.put(name, new Given(g.value(), entry + name, g.treePath(), g.overruled(), g.code())));
        return out;
    }
}
