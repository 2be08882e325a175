package org.washwright.science;

import java.util.List;
import java.util.TreeSet;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;

/**
 * A value of a correlation with what has to be minded when it is used.
 *
 * @param value in SI
 * @param warnings where the correlation was used beyond what it holds for, in words; empty when it holds
 */
public record Estimate(double value, List<String> warnings) {

    /** Keeps a copy. */
    public Estimate {
        warnings = List.copyOf(warnings);
    }

    /** A value that holds. */
    public static Estimate of(double value) {
        return new Estimate(value, List.of());
    }

    /** The same value with a further warning. */
    public Estimate warn(String warning) {
        TreeSet<String> all = new TreeSet<>(warnings);
        all.add(warning);
        return new Estimate(value, List.copyOf(all));
    }

    /** What follows from this value; the warnings go with it. */
    public Estimate map(DoubleUnaryOperator f) {
        return new Estimate(f.applyAsDouble(value), warnings);
    }

    /** What follows from this value and another; the warnings of both go with it. */
    public Estimate with(Estimate other, DoubleBinaryOperator f) {
        TreeSet<String> all = new TreeSet<>(warnings);
        all.addAll(other.warnings);
        return new Estimate(f.applyAsDouble(value, other.value), List.copyOf(all));
    }
}
