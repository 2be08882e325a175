package org.washwright.explain.exercise;

import java.util.List;
import java.util.Optional;

/**
 * What somebody thinks an answer says.
 *
 * @param first process that comes first of those asked, {@link #NONE} when none of them stands, empty when nothing is said
 * @param guesses what is thought of single processes; those left out are not judged
 */
public record Prediction(String first, List<Guess> guesses) {

    /** Stands for "none of these stands". */
    public static final String NONE = "none";

    /** What may become of a process. */
    public static final List<String> STATUSES = List.of("recommended", "conditional", "ruled out");

    /** Keeps a copy. */
    public Prediction {
        guesses = List.copyOf(guesses);
    }

    /**
     * What is thought of one process.
     *
     * @param process process id
     * @param status one of {@link #STATUSES}; empty when nothing is said
     * @param reasons rules picked as reasons
     * @param words reasons in one's own words; may be empty, and is compared with nothing
     */
    public record Guess(String process, String status, List<String> reasons, String words) {

        /** Keeps a copy. */
        public Guess {
            reasons = List.copyOf(reasons);
        }

        /** Nothing thought of a process. */
        public static Guess nothing(String process) {
            return new Guess(process, "", List.of(), "");
        }
    }

    /** What is thought of a process. */
    public Optional<Guess> guess(String process) {
        return guesses.stream().filter(g -> g.process().equals(process)).findFirst();
    }
}
