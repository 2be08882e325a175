package org.washwright.rule;

import java.util.Arrays;
import java.util.Optional;

/** Where a rule comes from. */
public enum Basis {
    STANDARD("standard"),
    HANDBOOK("handbook"),
    REGULATION("regulation"),
    PHYSICS("physics"),
    TRIAL("trial"),
    COMMON_PRACTICE("common practice");

    private final String word;

    Basis(String word) {
        this.word = word;
    }

    /** As written in rules. */
    public String word() {
        return word;
    }

    /** The basis that this word names. */
    public static Optional<Basis> of(String word) {
        return Arrays.stream(values()).filter(b -> b.word.equals(word)).findFirst();
    }
}
