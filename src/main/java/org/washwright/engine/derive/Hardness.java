package org.washwright.engine.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.washwright.quantity.Span;
import org.washwright.task.Value;

/** Brings together what is given of a material's hardness and strength on different scales. */
final class Hardness {

    /** Scatter of a converted value, as a share of it. Assumption: hardness conversions hold within about 5 %. */
    static final double SCATTER = 0.05;

    /** How one of the given attributes speaks of the wanted one. */
    record Reading(String attribute, DoubleUnaryOperator convert, double lowest, double validLow, double validHigh) {}

    private Hardness() {}

    /** The span that all readings agree on; a contradiction when there is none. */
    static Derivation.Computed combine(Derivation.Inputs inputs, List<Reading> readings, String what) {
        List<String> read = new ArrayList<>();
        List<String> further = new ArrayList<>();
        Optional<Span> agreed = Optional.empty();
        boolean applicable = false;
        for (Reading r : readings) {
            Value value = inputs.own(r.attribute());
            (value instanceof Value.Number ? read : further).add(inputs.ref(r.attribute()));
            applicable |= !(value instanceof Value.NotApplicable);
            if (value instanceof Value.Number n) {
                Span span = converted(r, n.span());
                if (agreed.isPresent()
                        && (span.low() > agreed.get().high()
                                || span.high() < agreed.get().low())) {
                    return new Derivation.Computed(
                            Value.UNKNOWN, read, further, Optional.of("the " + what + " given on different scales"));
                }
                agreed = Optional.of(agreed.map(
                                a -> new Span(Math.max(a.low(), span.low()), Math.min(a.high(), span.high())))
                        .orElse(span));
            }
        }
        Value value = agreed.<Value>map(Value.Number::new).orElse(applicable ? Value.UNKNOWN : Value.NOT_APPLICABLE);
        // Where one scale is given the others add nothing; where none is, all of them are what is missing.
        return read.isEmpty()
                ? new Derivation.Computed(value, further, List.of(), Optional.empty())
                : new Derivation.Computed(value, read, further, Optional.empty());
    }

    private static Span converted(Reading r, Span span) {
        double low = span.low() < r.validLow() ? r.lowest() : at(r, Math.min(span.low(), r.validHigh()), 1 - SCATTER);
        double high = span.high() > r.validHigh()
                ? Double.POSITIVE_INFINITY
                : at(r, Math.max(span.high(), r.validLow()), 1 + SCATTER);
        return new Span(low, high);
    }

    private static double at(Reading r, double x, double scatter) {
        double y = r.convert().applyAsDouble(x);
        return r.convert() == DIRECT ? y : y * scatter;
    }

    /** The wanted attribute itself, without conversion. */
    static final DoubleUnaryOperator DIRECT = x -> x;
}
