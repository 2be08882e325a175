package org.washwright.assessment;

import java.util.List;
import java.util.Optional;

/**
 * What becomes of the process that somebody has in mind.
 *
 * @param verdict {@code fits}, {@code fits if}, {@code does not fit} or {@code not judged}
 * @param text the verdict as a sentence; it ends with a colon when reasons follow
 * @param intended name of what is intended, a process, a group or several; empty when it is not known
 * @param process id of the process judged, the best one of a group or of several; empty when none can be named
 * @param name what a reader calls that process; empty when none can be named
 * @param reasons what it hangs on when it fits only if, why it is out when it does not fit; else empty
 * @param settings what was said of temperature, time and so on beside the windows of the main stage
 * @param rank place of the process among those that stand; empty when it does not
 * @param first the process that stands first, when the intended one does not fit or has clearly less points
 */
public record IntendedVerdict(
        String verdict,
        String text,
        String intended,
        String process,
        String name,
        List<Answer.Sentence> reasons,
        List<Setting> settings,
        Optional<Rank> rank,
        Optional<First> first) {

    /** Keeps copies. */
    public IntendedVerdict {
        reasons = List.copyOf(reasons);
        settings = List.copyOf(settings);
    }

    /** How a process fits, the best first. */
    enum Verdict {
        FITS("fits"),
        FITS_IF("fits if"),
        DOES_NOT_FIT("does not fit"),
        NOT_JUDGED("not judged");

        private final String word;

        Verdict(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    /**
     * One thing to set at the main stage.
     *
     * @param attribute name of the attribute of the group {@code intended}
     * @param name what a reader calls it
     * @param given what was said, with unit; {@code not known} when nothing was
     * @param state {@code within}, {@code partly outside}, {@code outside}, {@code not given}, or {@code no window} when the
     *     process has nothing of the kind to set
     * @param window allowed range of the main stage with unit; empty when there is none
     * @param firings firings that narrowed the window
     */
    public record Setting(
            String attribute, String name, String given, String state, String window, List<Integer> firings) {}

    /**
     * Place among the candidates.
     *
     * @param place from 1
     * @param of number of candidates
     * @param low points when the undecided goes against it
     * @param high points when the undecided goes its way
     */
    public record Rank(int place, int of, double low, double high) {}

    /** The candidate that stands first, with its points. */
    public record First(String process, String name, double low, double high) {}
}
