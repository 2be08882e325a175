package org.washwright.explain.vary;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.task.Attribute;
import org.washwright.task.CleaningTask;
import org.washwright.task.Entry;
import org.washwright.task.Given;
import org.washwright.task.Group;
import org.washwright.task.Value;

/**
 * Makes other tasks of one: with changes, and with places of which nothing is known any more. As knowing more never takes back
 * what was decided, whatever is decided with a place let go holds for every value there.
 */
public final class Moves {

    private Moves() {}

    /** The task with these changes. */
    public static CleaningTask apply(CleaningTask task, Collection<Move> moves) {
        return apply(task, moves, List.of());
    }

    /** The task with these changes, and nothing known at these places. */
    public static CleaningTask apply(CleaningTask task, Collection<Move> moves, Collection<Place> letGo) {
        CleaningTask out = task;
        for (Move m : moves) {
            if (m.place() instanceof Place.Said said) {
                out = said.edit().set(out, m.given().orElseThrow());
            } else if (m.place() instanceof Place.More more) {
                out = added(out, more.list(), m.given().orElseThrow());
            } else if (m.place() instanceof Place.Closed closed) {
                out = open(out, closed.list(), false);
            }
        }
        for (Place p : letGo) {
            if (p instanceof Place.Said said) {
                out = said.edit().set(out, Given.of(Value.UNKNOWN, said.pointer()));
            }
        }
        List<Place> gone = new ArrayList<>(letGo);
        moves.forEach(m -> gone.add(m.place()));
        // From the last entry to the first, so that the numbers of the others stay what they were.
        List<Place.Gone> entries = gone.stream()
                .filter(Place.Gone.class::isInstance)
                .map(Place.Gone.class::cast)
                .sorted(Comparator.comparingInt(Place.Gone::index).reversed())
                .toList();
        for (Place.Gone g : entries) {
            out = without(out, g);
        }
        for (Place p : letGo) {
            if (p instanceof Place.Gone || p instanceof Place.More) {
                out = open(out, p.group().orElseThrow(), true);
            }
        }
        return out;
    }

    /** False when nothing would be left to clean or nothing to clean off. */
    public static boolean leavesWork(CleaningTask before, CleaningTask after) {
        return List.of(Group.MATERIALS, Group.SOILS).stream().allMatch(g -> {
            CleaningTask.Entries now = after.entries(g);
            CleaningTask.Entries old = before.entries(g);
            return now.open() || !now.entries().isEmpty() || old.entries().isEmpty() && !old.open();
        });
    }

    private static CleaningTask added(CleaningTask task, Group list, Given what) {
        CleaningTask.Entries old = task.entries(list);
        Map<String, Given> given = new TreeMap<>();
        for (Attribute a : list.attributes()) {
            if (!a.computed()) {
                given.put(a.name(), Given.of(Value.NOT_APPLICABLE, what.pointer()));
            }
        }
        given.put(list.attributes().get(0).name(), what);
        List<Entry> entries = new ArrayList<>(old.entries());
        entries.add(new Entry(given));
        return task.with(list, new CleaningTask.Entries(entries, old.open()));
    }

    private static CleaningTask without(CleaningTask task, Place.Gone gone) {
        CleaningTask.Entries old = task.entries(gone.list());
        List<Entry> entries = new ArrayList<>(old.entries());
        entries.remove(gone.index());
        return task.with(gone.list(), new CleaningTask.Entries(entries, old.open()));
    }

    private static CleaningTask open(CleaningTask task, Group list, boolean open) {
        return task.with(list, new CleaningTask.Entries(task.entries(list).entries(), open));
    }
}
