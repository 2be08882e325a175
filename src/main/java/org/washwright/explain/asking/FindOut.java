package org.washwright.explain.asking;

import java.util.List;
import java.util.Optional;
import org.washwright.explain.vary.Difference;

/**
 * What to find out next. Outcomes of one unknown are taken as equally likely, and unknowns as independent of each other; both
 * are assumptions and said where a result is shown.
 *
 * @param verdict what to find out first, in a sentence
 * @param assumption what is assumed of the outcomes
 * @param first the process that is first as the task stands, by id; empty when nothing stands
 * @param firstName what a reader calls it
 * @param open how many processes stand under conditions as the task stands
 * @param matters unknowns on which the answer hangs, in the order in which to find them out
 * @param same unknowns of which the answer is the same whatever they are
 * @param notTried unknowns for which no evaluation was left, by their question
 * @param evaluations tasks tried
 * @param budget most tasks that might be tried
 */
public record FindOut(
        String verdict,
        String assumption,
        String first,
        String firstName,
        int open,
        List<Unknown> matters,
        List<Unknown> same,
        List<String> notTried,
        int evaluations,
        int budget) {

    /**
     * Something that is not known.
     *
     * @param pointer JSON pointer of the place in the task
     * @param what what a reader calls it
     * @param question the question as one would ask it on the shop floor
     * @param now what is known of it, in words
     * @param decides how many processes are expected to be decided by it, beyond what those before it in the order decide
     * @param firstShare share of the outcomes in which another process is first, 0 to 1
     * @param statusShare share of the outcomes in which some process has another status, 0 to 1
     * @param outcomes how it may turn out
     * @param worst number, from 0, of the outcome that loses most; empty when none loses anything
     * @param contradictory outcomes that contradict what is said elsewhere, in words; they count as impossible
     * @param left outcomes for which no evaluation was left, in words
     * @param text what hangs on it, in a sentence
     */
    public record Unknown(
            String pointer,
            String what,
            String question,
            String now,
            double decides,
            double firstShare,
            double statusShare,
            List<Turn> outcomes,
            Optional<Integer> worst,
            List<String> contradictory,
            List<String> left,
            String text) {

        /** True when its outcomes leave statuses and the first as they are. */
        public boolean isSame() {
            return firstShare == 0 && statusShare == 0;
        }
    }

    /**
     * One way it may turn out.
     *
     * @param way {@code set}, {@code add} or {@code close}
     * @param to what it turns out to be, in words
     * @param value as one would type it; empty for {@code close}
     * @param pointer where it is set
     * @param steps the same as steps {@code POINTER=VALUE} of a task tried otherwise
     * @param elsewhere what becomes otherwise
     * @param decided processes that stood under conditions and are decided
     */
    public record Turn(
            String way,
            String to,
            String value,
            String pointer,
            List<String> steps,
            Difference elsewhere,
            List<String> decided) {}
}
