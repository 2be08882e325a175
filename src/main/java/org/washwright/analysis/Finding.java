package org.washwright.analysis;

import java.util.List;
import java.util.Optional;
import org.washwright.document.Place;
import org.washwright.task.CleaningTask;

/**
 * Something wrong, or worth a look, with rules.
 *
 * @param kind what
 * @param rules ids of the rules; the first one is the one to look at
 * @param place where the first one stands
 * @param words what is wrong, in a sentence
 * @param witness a task that shows it, evaluated; empty for a proof and for what was not decided
 * @param asOf date for which law is read on the witness, ISO 8601
 * @param accepted why the edition's authors live with it; empty when they have not said
 */
public record Finding(
        Kind kind,
        List<String> rules,
        Place place,
        String words,
        Optional<CleaningTask> witness,
        String asOf,
        Optional<String> accepted) {

    /** Kinds of findings. */
    public enum Kind {
        /** It can never fire; proved. */
        DEAD("never fires"),
        /** It says what another rule says, on the same conditions. */
        DUPLICATE("duplicate"),
        /** Another rule fires wherever it does, and says at least as much. */
        SUBSUMED("adds nothing"),
        /** The same within one table. */
        SHADOWED("shadowed row"),
        /** Wherever it fires, another rule says the opposite. */
        CONTRADICTORY("contradiction"),
        /** Both fire on one task, and no value is left for a parameter. */
        CONFLICT("conflict"),
        /** No task was found on which it fires, and nothing proves that there is none. */
        NOT_DECIDED("not decided");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** As shown and as written in {@code known-findings.yaml}. */
        public String word() {
            return word;
        }
    }

    /** Keeps a copy. */
    public Finding {
        rules = List.copyOf(rules);
    }

    Finding accepted(String why) {
        return new Finding(kind, rules, place, words, witness, asOf, Optional.of(why));
    }
}
