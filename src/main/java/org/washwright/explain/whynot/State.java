package org.washwright.explain.whynot;

import com.fasterxml.jackson.annotation.JsonValue;

/** What became of a rule or of one of its conditions on a task. */
public enum State {
    /** Every condition holds for some facts. */
    FIRED("fired"),
    /** Nothing speaks against it, and something is not known. */
    UNDECIDED("undecided"),
    /** Whatever the facts, a condition fails. */
    FAILED("did not fire");

    private final String word;

    State(String word) {
        this.word = word;
    }

    /** As readers see it. */
    @JsonValue
    public String word() {
        return word;
    }
}
