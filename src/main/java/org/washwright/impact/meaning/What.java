package org.washwright.impact.meaning;

import com.fasterxml.jackson.annotation.JsonValue;

/** What became of a part of an edition. */
public enum What {
    /** Only the later edition has it. */
    ADDED("added"),
    /** Only the earlier edition has it. */
    REMOVED("taken out"),
    /** It says something else. */
    CHANGED("changed"),
    /** It says the same under another id. */
    RENAMED("renamed"),
    /** Only words for readers differ: titles, reasons, notes, sources. */
    REWORDED("reworded"),
    /** It says the same and stands elsewhere. */
    MOVED("moved");

    private final String word;

    What(String word) {
        this.word = word;
    }

    /** In words. */
    @JsonValue
    public String word() {
        return word;
    }
}
