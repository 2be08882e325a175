package org.washwright.explain.vary;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.washwright.analysis.TaskEdit;
import org.washwright.engine.Readers;
import org.washwright.rule.Edition;
import org.washwright.rule.FactTypes;
import org.washwright.task.Attribute;
import org.washwright.task.CleaningTask;
import org.washwright.task.Entry;
import org.washwright.task.Given;
import org.washwright.task.Group;
import org.washwright.task.Value;

/**
 * What of a task may be otherwise. In a group that is held fast only what is not known yet may turn out one way or another;
 * elsewhere anything may change, entries may go as long as work is left, and lists of what is permitted or in place may grow.
 */
public final class Places {

    /** Lists that grow by a decision. Soils, holes and law are not added to come to an answer. */
    private static final Set<Group> GROW = Set.of(Group.PERMITTED_SOLVENTS, Group.PLANTS);

    /** What somebody has in mind changes nothing about what stands. */
    private static final Set<Group> IDLE = Set.of(Group.INTENDED);

    private final Edition edition;
    private final Readers readers;
    private final Values values;

    /** Places in tasks of an edition. */
    public Places(Edition edition) {
        this.edition = edition;
        this.readers = Readers.of(edition);
        this.values = new Values(edition, readers);
    }

    /** Which rules read each attribute. */
    public Readers readers() {
        return readers;
    }

    /**
     * A place and what may be done there.
     *
     * @param place where
     * @param moves the changes tried there, the nearest to what is said now first; never empty
     */
    public record Choice(Place place, List<Move> moves) {

        /** Keeps a copy. */
        public Choice {
            moves = List.copyOf(moves);
        }

        /** The least effort of its changes. */
        public Effort effort() {
            return moves.stream()
                    .map(Move::effort)
                    .min(Comparator.naturalOrder())
                    .orElseThrow();
        }
    }

    /**
     * Every place with its changes, by effort and pointer.
     *
     * @param fixed groups that are held fast
     * @param points true when what only moves points counts too; else attributes that no rule reads are left out
     */
    public List<Choice> of(CleaningTask task, Set<Group> fixed, boolean points) {
        List<Choice> out = new ArrayList<>();
        for (Group group : Group.values()) {
            if (!IDLE.contains(group)) {
                said(task, group, fixed.contains(group), points, out);
                if (group.isList()) {
                    listed(task, group, fixed.contains(group), out);
                }
            }
        }
        for (Attribute a : edition.catalogue().attributes().values()) {
            said(task, new TaskEdit(Optional.empty(), 0, a), false, points, out);
        }
        return out.stream()
                .sorted(Comparator.comparing(Choice::effort)
                        .thenComparing(c -> c.place().pointer()))
                .toList();
    }

    /** What is not known of a task: values that are open, and lists that may hold more, each with what it may turn out to be. */
    public List<Choice> open(CleaningTask task) {
        TreeSet<Group> all = new TreeSet<>(List.of(Group.values()));
        List<Choice> out = new ArrayList<>();
        for (Choice c : of(task, all, true)) {
            boolean open = !(c.place() instanceof Place.Said said) || !isDefinite(said.edit(), task);
            if (open) {
                out.add(c);
            }
        }
        return out;
    }

    /** The entries that a list which is open may hold besides, one of each kind. */
    public List<Move> further(CleaningTask task, Group list) {
        Place.More more = new Place.More(list, task.entries(list).entries().size());
        return values.further(more).stream()
                .map(g -> new Move(more, Optional.of(g), Effort.FIND_OUT))
                .toList();
    }

    private static boolean isDefinite(TaskEdit edit, CleaningTask task) {
        return edit.in(task).map(Given::value).orElse(Value.UNKNOWN).isDefinite();
    }

    private void said(CleaningTask task, Group group, boolean fixed, boolean points, List<Choice> out) {
        List<Entry> entries = task.entries(group).entries();
        int count = group.isList() ? entries.size() : 1;
        for (int i = 0; i < count; i++) {
            for (Attribute a : group.attributes()) {
                if (!a.computed()) {
                    said(task, new TaskEdit(Optional.of(group), i, a), fixed, points, out);
                }
            }
        }
    }

    private void said(CleaningTask task, TaskEdit edit, boolean fixed, boolean points, List<Choice> out) {
        boolean read = !readers.of(type(edit), field(edit)).isEmpty();
        if (!read && !points) {
            return;
        }
        Place place = new Place.Said(edit);
        Value now = edit.in(task).map(Given::value).orElse(Value.UNKNOWN);
        List<Move> moves = new ArrayList<>();
        for (Given given : values.of(edit, now, points)) {
            boolean within = !now.isDefinite() && Values.within(given.value(), now);
            if (within || !fixed) {
                moves.add(new Move(place, Optional.of(given), within ? Effort.FIND_OUT : Effort.of(edit.group())));
            }
        }
        if (!moves.isEmpty()) {
            out.add(new Choice(place, moves));
        }
    }

    private void listed(CleaningTask task, Group group, boolean fixed, List<Choice> out) {
        CleaningTask.Entries list = task.entries(group);
        if (list.open()) {
            Place closed = new Place.Closed(group);
            out.add(new Choice(closed, List.of(new Move(closed, Optional.empty(), Effort.FIND_OUT))));
        }
        if (fixed) {
            return;
        }
        for (int i = 0; i < list.entries().size(); i++) {
            Place gone = new Place.Gone(group, i);
            out.add(new Choice(gone, List.of(new Move(gone, Optional.empty(), Effort.of(Optional.of(group))))));
        }
        if (GROW.contains(group) && list.entries().size() < group.cap()) {
            Place.More more = new Place.More(group, list.entries().size());
            Set<Value> there = new java.util.HashSet<>();
            list.entries()
                    .forEach(e -> there.add(e.value(group.attributes().get(0).name())));
            List<Move> moves = values.further(more).stream()
                    .filter(g -> !there.contains(g.value()))
                    .map(g -> new Move(more, Optional.of(g), Effort.of(Optional.of(group))))
                    .toList();
            if (!moves.isEmpty()) {
                out.add(new Choice(more, moves));
            }
        }
    }

    /** The fact type that rules match to read an attribute. */
    static String type(TaskEdit edit) {
        return edit.group()
                .map(Group::factType)
                .orElseGet(() -> FactTypes.declared(edit.attribute().name()));
    }

    /** The field of that fact type. */
    static String field(TaskEdit edit) {
        return edit.group().isPresent() ? edit.attribute().name() : "value";
    }
}
