package org.washwright.rule;

/** Comparison of a field with something. */
public enum Op {
    EQ("=="),
    NE("!="),
    LT("<"),
    LE("<="),
    GT(">"),
    GE(">="),
    IN("in"),
    NOT_IN("not in");

    private final String sign;

    Op(String sign) {
        this.sign = sign;
    }

    /** As written in rules. */
    public String sign() {
        return sign;
    }

    /** True for the four that need an order. */
    public boolean isOrder() {
        return this == LT || this == LE || this == GT || this == GE;
    }
}
