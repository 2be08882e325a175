package org.washwright.line;

import java.util.List;
import org.washwright.catalogue.ProcessTerm;
import org.washwright.engine.Fact;
import org.washwright.engine.Firing;

/**
 * The composed line of one process.
 *
 * @param process the process
 * @param steps stages in order
 * @param firings firings of line rules on it
 * @param refusals why it falls out; empty when it stands
 * @param conditions what might still change it; empty when nothing does
 * @param facts facts of its stages, as line rules saw them
 */
public record ProcessLine(
        ProcessTerm process,
        List<PlacedStage> steps,
        List<Firing> firings,
        List<Verdict> refusals,
        List<Verdict> conditions,
        List<Fact> facts) {

    /** How a condition begins that hangs on a stage which an undecided rule would place. */
    public static final String FURTHER_STAGE = "May need a further stage, ";

    /** Whether a process may clean the task. */
    public enum Status {
        RECOMMENDED("recommended"),
        CONDITIONAL("conditional"),
        RULED_OUT("ruled out");

        private final String word;

        Status(String word) {
            this.word = word;
        }

        /** As shown. */
        public String word() {
            return word;
        }
    }

    /** A sentence and the firings it rests on. */
    public record Verdict(String text, List<Integer> firings) {}

    /** Keeps copies. */
    public ProcessLine {
        steps = List.copyOf(steps);
        firings = List.copyOf(firings);
        refusals = List.copyOf(refusals);
        conditions = List.copyOf(conditions);
        facts = List.copyOf(facts);
    }

    /** Its status. */
    public Status status() {
        if (!refusals.isEmpty()) {
            return Status.RULED_OUT;
        }
        return conditions.isEmpty() ? Status.RECOMMENDED : Status.CONDITIONAL;
    }
}
