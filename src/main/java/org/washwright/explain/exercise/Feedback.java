package org.washwright.explain.exercise;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;

/**
 * A prediction beside the answer. Everything is a plain count; nothing is weighed.
 *
 * @param statuses statuses that are right
 * @param statusesOf processes asked
 * @param reasons true reasons that were picked
 * @param reasonsOf true reasons there are
 * @param inVain reasons picked that are none
 * @param firstRight true when the process that comes first was named
 * @param firstPredicted name of the process thought to come first; empty when nothing was said
 * @param first name of the process that comes first of those asked; that none stands, when none does
 * @param processes every process asked
 */
public record Feedback(
        int statuses,
        int statusesOf,
        int reasons,
        int reasonsOf,
        int inVain,
        boolean firstRight,
        String firstPredicted,
        String first,
        List<Judged> processes) {

    /** Keeps a copy. */
    public Feedback {
        processes = List.copyOf(processes);
    }

    /**
     * One process, predicted and as answered.
     *
     * @param process process id
     * @param name what a reader calls it
     * @param predicted status predicted; empty when nothing was said
     * @param actual status of the answer
     * @param right true reasons that were picked
     * @param missed true reasons that were not
     * @param inVain reasons picked that are none
     * @param words what was said in one's own words
     */
    public record Judged(
            String process,
            String name,
            String predicted,
            String actual,
            List<Reason> right,
            List<Reason> missed,
            List<Reason> inVain,
            String words) {

        /** Keeps copies. */
        public Judged {
            right = List.copyOf(right);
            missed = List.copyOf(missed);
            inVain = List.copyOf(inVain);
        }

        /** True when the status is the predicted one. */
        @JsonIgnore
        public boolean isStatusRight() {
            return predicted.equals(actual);
        }

        /** Everything right: the status and all reasons, and none in vain. */
        @JsonIgnore
        public boolean isAllRight() {
            return isStatusRight() && missed.isEmpty() && inVain.isEmpty();
        }
    }

    /**
     * A rule as feedback.
     *
     * @param rule rule id
     * @param title its title
     * @param text what it says here; for one that did not fire, the whole rule as a sentence
     * @param basis where it comes from
     * @param sources what it cites, in words
     * @param firings its firings that speak of the process, by number; empty when it did not fire
     * @param whyNot for one that did not fire, what it lacks; else empty
     */
    public record Reason(
            String rule,
            String title,
            String text,
            String basis,
            List<String> sources,
            List<Integer> firings,
            String whyNot) {

        /** Keeps copies. */
        public Reason {
            sources = List.copyOf(sources);
            firings = List.copyOf(firings);
        }
    }

    /** The counts in words. */
    @JsonIgnore
    public String inWords() {
        return statuses + " of " + statusesOf + " statuses, " + reasons + " of " + reasonsOf + " reasons"
                + (inVain == 0 ? "" : ", " + inVain + " in vain") + (firstRight ? "; the first is right" : "");
    }
}
