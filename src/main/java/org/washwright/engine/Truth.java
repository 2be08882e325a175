package org.washwright.engine;

/** Kleene's three truth values. */
public enum Truth {
    FALSE,
    UNDECIDED,
    TRUE;

    /** True only when both are; false when either is. */
    public Truth and(Truth other) {
        return ordinal() <= other.ordinal() ? this : other;
    }

    /** True when either is; false only when both are. */
    public Truth or(Truth other) {
        return ordinal() >= other.ordinal() ? this : other;
    }

    /** The opposite; undecided stays. */
    public Truth not() {
        return this == TRUE ? FALSE : this == FALSE ? TRUE : UNDECIDED;
    }

    static Truth of(boolean value) {
        return value ? TRUE : FALSE;
    }

    static Truth of(boolean certain, boolean possible) {
        return certain ? TRUE : possible ? UNDECIDED : FALSE;
    }
}
