package org.washwright.explain.why;

/** Something was asked for that the answer does not hold. */
public final class NothingThere extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** The pointer or name that leads nowhere. */
    private final String asked;

    NothingThere(String asked) {
        super("This answer holds nothing at \"" + asked + "\".");
        this.asked = asked;
    }

    /** The pointer or name that leads nowhere. */
    public String asked() {
        return asked;
    }
}
