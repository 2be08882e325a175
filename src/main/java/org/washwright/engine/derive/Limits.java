package org.washwright.engine.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.washwright.engine.derive.Derivation.Computed;
import org.washwright.quantity.Span;
import org.washwright.task.Value;

/** Several limits on the same thing, of which the lowest binds. */
final class Limits {

    private final List<String> read = new ArrayList<>();
    private final List<String> none = new ArrayList<>();
    private final List<String> open = new ArrayList<>();
    private Optional<Span> lowest = Optional.empty();

    /** A limit that was given, or that is open, or that does not apply. */
    Limits with(Value value, String reference) {
        if (value instanceof Value.Number n) {
            read.add(reference);
            lowest = Optional.of(lowest.map(l -> lower(l, n.span())).orElse(n.span()));
        } else if (value instanceof Value.Unknown) {
            open.add(reference);
        } else {
            none.add(reference);
        }
        return this;
    }

    /** A limit that a code sets; a code without it sets none. */
    Limits with(String code, OptionalDouble limit, Value given, String reference) {
        if (code.isEmpty()) {
            return with(given instanceof Value.NotApplicable ? given : Value.UNKNOWN, reference);
        }
        return with(limit.isPresent() ? Value.number(limit.getAsDouble()) : Value.NOT_APPLICABLE, reference);
    }

    /**
     * The lowest limit. What is open could only lower it: then it is the range up to the lowest that is known, unless nobody
     * gives more than one, which is the rule; so a known limit is taken as it is and what is open is named as what would
     * narrow it.
     */
    Computed lowest() {
        if (lowest.isEmpty()) {
            List<String> all = new ArrayList<>(read);
            all.addAll(open);
            all.addAll(none);
            return new Computed(
                    open.isEmpty() ? Value.NOT_APPLICABLE : Value.UNKNOWN, all, List.of(), Optional.empty());
        }
        Span known = lowest.get();
        return new Computed(
                new Value.Number(open.isEmpty() ? known : new Span(0, known.high())), read, open, Optional.empty());
    }

    private static Span lower(Span a, Span b) {
        return new Span(Math.min(a.low(), b.low()), Math.min(a.high(), b.high()));
    }
}
