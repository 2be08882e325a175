package org.washwright.cases;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.washwright.assessment.Outcome;
import org.washwright.engine.Firing;
import org.washwright.task.CleaningTask;

/**
 * Which rules a set of cases shows both ways: fired in one case, and silent in another that differs from it in one thing, so
 * that nobody has to guess what held the rule back.
 *
 * @param heldBack for each rule that one change holds back, the first such pair of cases
 */
public record Flips(Map<String, Pair> heldBack) {

    /** Keeps an ordered copy. */
    public Flips {
        heldBack = Collections.unmodifiableMap(new TreeMap<>(heldBack));
    }

    /**
     * Two cases that differ in one thing.
     *
     * @param fires id of the case in which the rule fires
     * @param silent id of the case in which it neither fires nor hangs on what is not known
     */
    public record Pair(String fires, String silent) {}

    /**
     * What a task made of the rules; small enough to keep for thousands of tasks.
     *
     * @param id id of the case
     * @param task its task
     * @param asOf date for which law was read, ISO 8601
     * @param fired rules with a certain firing
     * @param undecided rules with none but undecided firings
     */
    public record Ran(String id, CleaningTask task, String asOf, Set<String> fired, Set<String> undecided) {

        /** What is to be kept of an outcome. */
        public static Ran of(String id, CleaningTask task, String asOf, Outcome outcome) {
            Set<String> fired = new TreeSet<>();
            Set<String> undecided = new TreeSet<>();
            for (Firing firing : outcome.firings()) {
                (firing.certain() ? fired : undecided).add(firing.rule().id());
            }
            undecided.removeAll(fired);
            return new Ran(id, task, asOf, fired, undecided);
        }

        /** True when the rule neither fires nor hangs on what is not known. */
        public boolean silent(String rule) {
            return !fired.contains(rule) && !undecided.contains(rule);
        }

        private boolean differsInOne(Ran other) {
            return differInOne(task, asOf, other.task, other.asOf);
        }
    }

    /** Looks at every pair of tasks. */
    public static Flips of(List<Ran> ran) {
        Map<String, Pair> heldBack = new TreeMap<>();
        for (Ran a : ran) {
            for (Ran b : ran) {
                if (a.differsInOne(b)) {
                    a.fired().stream()
                            .filter(b::silent)
                            .forEach(rule -> heldBack.putIfAbsent(rule, new Pair(a.id(), b.id())));
                }
            }
        }
        return new Flips(heldBack);
    }

    /** True when one thing differs: the value of one attribute, one entry more or less of a list, or the date. */
    public static boolean differInOne(CleaningTask a, String dateOfA, CleaningTask b, String dateOfB) {
        return dateOfA.equals(dateOfB) ? OneChange.between(a, b) : OneChange.none(a, b);
    }
}
