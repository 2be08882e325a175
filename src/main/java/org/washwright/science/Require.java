package org.washwright.science;

/** Refuses numbers that no quantity can be. */
final class Require {

    private Require() {}

    /** A number above zero; throws with the value and what it should be. */
    static double positive(double value, String what) {
        if (!(value > 0)) {
            throw new IllegalArgumentException(what + " must be above zero, not " + value);
        }
        return value;
    }

    /** A number from zero on; throws with the value and what it should be. */
    static double notNegative(double value, String what) {
        if (!(value >= 0)) {
            throw new IllegalArgumentException(what + " must not be negative, but is " + value);
        }
        return value;
    }
}
