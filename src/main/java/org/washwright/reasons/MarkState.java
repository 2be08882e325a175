package org.washwright.reasons;

import java.util.Arrays;
import java.util.Optional;

/** What became of a mark. */
enum MarkState {
    /** Nobody has looked at it yet. */
    OPEN("open"),
    /** The consultant agrees, and the rule will be changed. */
    WILL_CHANGE("will change"),
    /** The consultant keeps the rule, and says why. */
    STANDS("stands");

    private final String word;

    MarkState(String word) {
        this.word = word;
    }

    String word() {
        return word;
    }

    static Optional<MarkState> of(String word) {
        return Arrays.stream(values()).filter(s -> s.word.equals(word)).findFirst();
    }
}
