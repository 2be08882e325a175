package org.washwright.explain.change;

import java.util.List;
import java.util.Optional;
import org.washwright.explain.vary.Difference;

/**
 * What would change an answer.
 *
 * @param goal what is wanted, as typed
 * @param process the process it is wanted of, by id; for displacing the first, the first
 * @param name what a reader calls it
 * @param reached true when the goal is reached as the task stands
 * @param verdict what was found, in a sentence
 * @param proposals smallest sets of changes that reach the goal, by effort
 * @param search how far it was searched
 */
public record Changes(
        String goal,
        String process,
        String name,
        boolean reached,
        String verdict,
        List<Proposal> proposals,
        Searched search) {

    /**
     * A smallest set of changes: none of its parts alone reaches the goal.
     *
     * @param effort the greatest effort of its changes, such as {@code DEMAND}
     * @param effortWords the same in words
     * @param changes the changes, the least effort first
     * @param elsewhere what else becomes otherwise
     */
    public record Proposal(String effort, String effortWords, List<Change> changes, Difference elsewhere) {}

    /**
     * One change.
     *
     * @param way {@code set}, {@code add}, {@code remove} or {@code close}
     * @param pointer JSON pointer of the place in the task
     * @param what what a reader calls the place
     * @param from what is said there now, in words
     * @param to what it becomes, in words
     * @param value the new value as one would type it; empty for {@code remove} and {@code close}
     * @param sentence the whole in a sentence
     * @param steps the same as steps {@code POINTER=VALUE} of a task tried otherwise
     * @param effort what it asks of a plant, such as {@code LOT}
     * @param others other values there that reach the goal too; looked for where this is the only change
     */
    public record Change(
            String way,
            String pointer,
            String what,
            String from,
            String to,
            String value,
            String sentence,
            List<String> steps,
            String effort,
            List<Other> others) {}

    /** Another value, in words and as one would type it. */
    public record Other(String to, String value) {}

    /**
     * How far it was searched.
     *
     * @param evaluations tasks tried
     * @param budget most tasks that might be tried
     * @param places how many things of the task might change
     * @param fixed groups that were held fast, by key
     * @param impossible true when no values at any of these places can reach the goal
     * @param sizes the sets by the number of their changes
     * @param complete true when nothing was left out
     * @param text the same in sentences
     */
    public record Searched(
            int evaluations,
            int budget,
            int places,
            List<String> fixed,
            boolean impossible,
            List<Size> sizes,
            boolean complete,
            List<String> text) {}

    /**
     * How far the sets of one size were searched.
     *
     * @param changes changes in a set
     * @param sets sets there are
     * @param passedOver sets that surely can't reach the goal or hold a smaller set that does
     * @param tried sets whose values were tried to the end
     * @param reached sets that reach the goal
     * @param left sets that were not tried to the end
     * @param combinations about how many combinations of values those hold
     * @param among pointers of the places that stand in them
     */
    public record Size(
            int changes,
            long sets,
            long passedOver,
            long tried,
            int reached,
            long left,
            double combinations,
            List<String> among) {}

    /** The proposal that asks least, if any. */
    public Optional<Proposal> easiest() {
        return proposals.stream().findFirst();
    }
}
