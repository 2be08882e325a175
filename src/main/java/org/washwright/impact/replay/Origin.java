package org.washwright.impact.replay;

import com.fasterxml.jackson.annotation.JsonValue;

/** Where a task that is tried comes from. */
public enum Origin {
    KEPT("kept task"),
    CASE("reference case"),
    FILE("file");

    private final String word;

    Origin(String word) {
        this.word = word;
    }

    /** In words. */
    @JsonValue
    public String word() {
        return word;
    }
}
