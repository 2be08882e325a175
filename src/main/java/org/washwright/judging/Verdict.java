package org.washwright.judging;

import com.fasterxml.jackson.annotation.JsonValue;
import java.util.Arrays;
import java.util.Optional;

/** What a person makes of an answer that changed. */
enum Verdict {
    MEANT("meant"),
    NOT_MEANT("not meant");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    @JsonValue
    String word() {
        return word;
    }

    static Optional<Verdict> of(String word) {
        return Arrays.stream(values()).filter(v -> v.word.equals(word)).findFirst();
    }
}
