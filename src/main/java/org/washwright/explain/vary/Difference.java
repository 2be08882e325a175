package org.washwright.explain.vary;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.washwright.catalogue.Catalogue;
import org.washwright.line.ProcessLine.Status;

/**
 * What is otherwise of another task.
 *
 * @param gained processes that stand and did not
 * @param lost processes that stood and are ruled out
 * @param moved processes that stand in both with another status
 * @param first who is first; empty when the order was not looked at
 */
public record Difference(List<Turn> gained, List<Turn> lost, List<Turn> moved, Optional<First> first) {

    /** A process with its status before and after. */
    public record Turn(String process, String name, String before, String after) {}

    /** Who was and who is first, by id and name, empty when nothing stands. */
    public record First(String before, String nameBefore, String after, String nameAfter) {

        /** True when it is another one. */
        public boolean changes() {
            return !before.equals(after);
        }
    }

    /** The difference between two. */
    public static Difference of(Seen before, Seen after, boolean order, Catalogue catalogue) {
        List<Turn> gained = new ArrayList<>();
        List<Turn> lost = new ArrayList<>();
        List<Turn> moved = new ArrayList<>();
        before.statuses().forEach((process, was) -> {
            Status is = after.statuses().get(process);
            if (was != is) {
                List<Turn> list = was == Status.RULED_OUT ? gained : is == Status.RULED_OUT ? lost : moved;
                list.add(new Turn(process, catalogue.name("process", process), was.word(), is.word()));
            }
        });
        Optional<First> first = order
                ? Optional.of(new First(before.first(), name(before, catalogue), after.first(), name(after, catalogue)))
                : Optional.empty();
        return new Difference(gained, lost, moved, first);
    }

    private static String name(Seen seen, Catalogue catalogue) {
        return seen.first().isEmpty() ? "none" : catalogue.name("process", seen.first());
    }

    /** How many processes have another status. */
    public int count() {
        return gained.size() + lost.size() + moved.size();
    }
}
