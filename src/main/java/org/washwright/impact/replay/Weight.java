package org.washwright.impact.replay;

import com.fasterxml.jackson.annotation.JsonValue;

/** How much of an answer differs, the most first. */
public enum Weight {
    LEADER("another process stands first"),
    STATUS("a process comes in, falls out or changes its status"),
    PLACE("places or points differ"),
    LINE("stages, windows or figures of lines differ"),
    SAID("findings, cautions or questions differ"),
    WORDING("only words differ");

    private final String words;

    Weight(String words) {
        this.words = words;
    }

    /** In words. */
    @JsonValue
    public String words() {
        return words;
    }
}
