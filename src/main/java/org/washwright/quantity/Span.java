package org.washwright.quantity;

/**
 * All values from {@code low} to {@code high}, both included, in SI; either end may be infinite. A single value has equal
 * ends.
 */
public record Span(double low, double high) {

    /** Everything. */
    public static final Span ALL = new Span(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

    /** Checks the order of the ends; minus zero becomes zero, so that equal spans have equal bits. */
    public Span {
        if (!(low <= high)) {
            throw new IllegalArgumentException("a span runs from low to high, not from " + low + " to " + high);
        }
        low = low + 0.0;
        high = high + 0.0;
    }

    /** A single value. */
    public static Span of(double value) {
        return new Span(value, value);
    }

    /** True when it is one value. */
    public boolean isPoint() {
        return low == high;
    }

    /** The smallest span that holds both. */
    public Span hull(Span other) {
        return new Span(Math.min(low, other.low), Math.max(high, other.high));
    }

    /** True when every value of {@code other} is in this one. */
    public boolean contains(Span other) {
        return low <= other.low && other.high <= high;
    }

    /** Product of two spans of numbers that are not negative. */
    public Span times(Span other) {
        return new Span(product(low, other.low), product(high, other.high));
    }

    /** Quotient of two spans of numbers that are not negative. */
    public Span over(Span other) {
        return new Span(quotient(low, other.high), quotient(high, other.low));
    }

    private static double product(double a, double b) {
        return a == 0 || b == 0 ? 0 : a * b;
    }

    private static double quotient(double a, double b) {
        if (a == 0) {
            return 0;
        }
        return b == 0 ? Double.POSITIVE_INFINITY : Double.isInfinite(b) ? 0 : a / b;
    }
}
