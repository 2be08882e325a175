package org.washwright.rule;

/** How a pattern takes part in a rule. */
public enum Sign {
    POSITIVE(""),
    NOT("not "),
    EXISTS("exists ");

    private final String word;

    Sign(String word) {
        this.word = word;
    }

    /** The word before the pattern, with a blank behind it. */
    public String word() {
        return word;
    }
}
