package org.washwright.assessment;

import org.washwright.quantity.Quantities;

/** Puts intervals of checking into the words of a shop floor. */
final class Intervals {

    private static final double HOUR = 3600;
    private static final int FIGURES = 2;

    private Intervals() {}

    /** An interval in seconds in words. */
    static String words(double seconds) {
        double hours = seconds / HOUR;
        if (hours <= 1) {
            return "each hour";
        }
        if (hours <= 8) {
            return "each shift";
        }
        if (hours <= 24) {
            return "each day";
        }
        if (hours <= 168) {
            return "each week";
        }
        return hours <= 744 ? "each month" : "every " + Quantities.number(hours / 744, FIGURES) + " months";
    }
}
