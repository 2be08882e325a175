package org.washwright.explain.change;

import java.util.Arrays;
import java.util.Optional;

/**
 * What is wanted otherwise.
 *
 * @param kind what is wanted
 * @param process id of the process it is wanted of; empty for {@link Kind#DISPLACE_FIRST}
 */
public record Goal(Kind kind, String process) {

    /** What may be wanted. */
    public enum Kind {
        /** A process is to be recommended. */
        BRING_IN("bring-in"),
        /** A process is to stand, if only under conditions. */
        LET_STAND("let-stand"),
        /** A process is to be first. */
        PUT_FIRST("first"),
        /** Some other process is to be first, or none is to stand. */
        DISPLACE_FIRST("displace-first");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** As typed and as written in results. */
        public String word() {
            return word;
        }

        /** True when it is about one process. */
        public boolean needsProcess() {
            return this != DISPLACE_FIRST;
        }

        /** The kind with this word. */
        public static Optional<Kind> byWord(String word) {
            return Arrays.stream(values()).filter(k -> k.word.equals(word)).findFirst();
        }
    }
}
