package org.washwright.engine.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.washwright.quantity.Span;
import org.washwright.science.Estimate;
import org.washwright.science.RefusedInput;
import org.washwright.task.Value;

/**
 * Values as numbers for a formula: brings them together, runs the formula at the corners of what is possible and keeps the
 * warnings. A formula that rises or falls in each of its numbers is bounded by its values at the corners.
 */
public final class Numbers {

    private static final double SMALLEST = 1e-15;
    private static final double LARGEST = 1e15;
    private static final double TINY = 1e-9;
    private static final double HUGE = 1e9;

    private final List<String> read = new ArrayList<>();
    private final List<Span> spans = new ArrayList<>();
    private final TreeSet<String> warnings = new TreeSet<>();
    private boolean unknown;
    private boolean notApplicable;

    /** Numbers at the corners, in the order in which they were read. */
    @FunctionalInterface
    public interface Formula {
        /** Value and warnings at these numbers. */
        Estimate at(double... numbers);
    }

    /** Reads a value that the formula needs. */
    public Numbers with(Value value, String reference) {
        if (!reference.isEmpty()) {
            read.add(reference);
        }
        if (value instanceof Value.Number n) {
            spans.add(n.span());
        } else if (value instanceof Value.NotApplicable) {
            notApplicable = true;
        } else {
            unknown = true;
        }
        return this;
    }

    /** An assumption that the formula needs; it is no fact and has no reference. */
    public Numbers with(Value assumption) {
        return with(assumption, "");
    }

    /** Reads what another formula computed; its references and warnings go on. */
    public Numbers with(Derivation.Computed computed) {
        with(computed.value(), "");
        read.addAll(computed.inputs());
        warnings.addAll(computed.warnings());
        return this;
    }

    /** Not applicable when a number is; unknown when one is; else the span of the formula over all corners. */
    public Derivation.Computed compute(Formula formula) {
        if (notApplicable) {
            return new Derivation.Computed(Value.NOT_APPLICABLE, read, List.of(), Optional.empty());
        }
        if (unknown) {
            return new Derivation.Computed(Value.UNKNOWN, read, List.of(), Optional.empty());
        }
        try {
            return computed(formula);
        } catch (RefusedInput refused) {
            // Values that no formula takes, such as a limit of zero: nothing follows from them, and the answer says so.
            return new Derivation.Computed(
                    Value.UNKNOWN, read, List.of(), Optional.empty(), List.of(refused.getMessage()));
        }
    }

    private Derivation.Computed computed(Formula formula) {
        double[] corner = new double[spans.size()];
        Span all = over(formula, corner, 0, warnings);
        return new Derivation.Computed(new Value.Number(all), read, List.of(), Optional.empty(), List.copyOf(warnings));
    }

    private Span over(Formula formula, double[] corner, int at, TreeSet<String> warnings) {
        if (at == corner.length) {
            Estimate estimate = formula.at(corner.clone());
            warnings.addAll(estimate.warnings());
            return Span.of(estimate.value());
        }
        Span span = spans.get(at);
        Span low = end(formula, corner, at, span.low(), warnings);
        return span.isPoint() ? low : low.hull(end(formula, corner, at, span.high(), warnings));
    }

    /** An end at zero or without end is looked at from just before it; whatever the formula tends to there is let go to its end. */
    private Span end(Formula formula, double[] corner, int at, double value, TreeSet<String> warnings) {
        double near = Math.copySign(Math.min(Math.max(Math.abs(value), SMALLEST), LARGEST), value);
        boolean beyond =
                value != 0 && near != value || value == 0 && spans.get(at).high() > 0;
        corner[at] = beyond ? near : value;
        Span found = over(formula, corner, at + 1, beyond ? new TreeSet<>() : warnings);
        return beyond ? new Span(atEnd(found.low()), atEnd(found.high())) : found;
    }

    private static double atEnd(double value) {
        double size = Math.abs(value);
        double limit = size > HUGE ? Double.POSITIVE_INFINITY : size < TINY ? 0 : size;
        return Math.copySign(limit, value);
    }
}
