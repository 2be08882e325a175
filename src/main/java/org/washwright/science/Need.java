package org.washwright.science;

import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;

/** Refuses nonsense before it goes into a formula, and says in words when a formula is used outside its range. */
final class Need {

    private static final int FIGURES = 4;

    private Need() {}

    /** @throws RefusedInput unless the value is a finite number above zero */
    static double positive(double value, String what, String unit) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw refused(value, what, unit, "give a number above zero");
        }
        return value;
    }

    /** @throws RefusedInput unless the value is a finite number, zero or above */
    static double notNegative(double value, String what, String unit) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw refused(value, what, unit, "give zero or a number above it");
        }
        return value;
    }

    /** @throws RefusedInput unless the value is a finite number */
    static double finite(double value, String what, String unit) {
        if (!Double.isFinite(value)) {
            throw refused(value, what, unit, "give a number");
        }
        return value;
    }

    /** @throws RefusedInput unless low is at most the value and the value at most high */
    static double between(double value, double low, double high, String what, String unit) {
        if (!(value >= low && value <= high)) {
            throw refused(value, what, unit, "give a number from " + low + " to " + high);
        }
        return value;
    }

    /** @throws RefusedInput unless the angle lies from 0 to pi */
    static double contactAngle(double radians) {
        return between(radians, 0, StrictMath.PI, "contact angle", "rad");
    }

    /** The refusal of a value, with advice. */
    static RefusedInput refused(double value, String what, String unit, String advice) {
        return new RefusedInput(what + " is " + value + (unit.isEmpty() ? "" : " " + unit) + "; " + advice);
    }

    /** The estimate, with a warning when x lies outside the range in which what was said holds. */
    static Estimate within(
            Estimate estimate, double x, double low, double high, Dimension dimension, String whatHolds) {
        boolean inside = x >= low && x <= high;
        return estimate.warnIf(
                !inside,
                () -> whatHolds + " from " + text(low, dimension) + " to " + text(high, dimension) + ", not at "
                        + text(x, dimension));
    }

    /** A value as a reader expects it. */
    static String text(double si, Dimension dimension) {
        return Quantities.write(si, dimension, FIGURES);
    }

    /** A plain number as a reader expects it. */
    static String text(double number) {
        return Quantities.number(number, FIGURES);
    }
}
