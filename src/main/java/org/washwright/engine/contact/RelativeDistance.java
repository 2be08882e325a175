package org.washwright.engine.contact;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.washwright.catalogue.Term;
import org.washwright.engine.derive.Derivation.Computed;
import org.washwright.quantity.Span;
import org.washwright.science.Estimate;
import org.washwright.science.HansenDistance;
import org.washwright.science.HansenParameters;
import org.washwright.science.RefusedInput;
import org.washwright.task.Value;

/**
 * Distance of a medium from what it meets in the space of solubility parameters, over the radius within which it dissolves.
 * Every published set of the one is put against every set of the other: where the sets disagree, the result is a range and a
 * rule that lies within it is undecided.
 */
final class RelativeDistance implements ContactFormula {

    private static final String KIND = "hansen-set";

    private final String field;
    private final String property;

    /**
     * The distance from a soil or a material.
     *
     * @param field field of what is met that names its term
     * @param property property of a set that names what it is about
     */
    RelativeDistance(String field, String property) {
        this.field = field;
        this.property = property;
    }

    @Override
    public String attribute() {
        return "relativeDistance";
    }

    @Override
    public String formula() {
        return "√(4 ΔD² + ΔP² + ΔH²) ÷ radius, over all published sets of both";
    }

    @Override
    public String source() {
        return "Hansen, Solubility Parameters, 2nd ed. (2007), chapter 1";
    }

    @Override
    public Computed compute(Meeting meeting) {
        Value medium = meeting.process("medium");
        Value other = meeting.other(field);
        String[] refs = {meeting.processRef("medium"), meeting.otherRef(field)};
        if (!(medium instanceof Value.OneOf m) || !(other instanceof Value.OneOf o)) {
            boolean none = medium instanceof Value.NotApplicable || other instanceof Value.NotApplicable;
            return computed(none ? Value.NOT_APPLICABLE : Value.UNKNOWN, refs);
        }
        // Of an unknown soil nothing is known; of a known one without data the distance has no meaning.
        List<Value> each = new ArrayList<>();
        TreeSet<String> warnings = new TreeSet<>();
        try {
            for (String liquid : m.terms()) {
                for (String met : o.terms()) {
                    each.add(between(sets(meeting, "medium", liquid), sets(meeting, property, met), warnings));
                }
            }
        } catch (RefusedInput refused) {
            return computed(Value.UNKNOWN, List.of(refused.getMessage()), refs);
        }
        return computed(together(each), List.copyOf(warnings), refs);
    }

    private static Computed computed(Value value, String... refs) {
        return computed(value, List.of(), refs);
    }

    private static Computed computed(Value value, List<String> warnings, String... refs) {
        return new Computed(value, List.of(refs), List.of(), Optional.empty(), warnings);
    }

    private static List<Term> sets(Meeting meeting, String property, String term) {
        return meeting.terms(KIND).stream()
                .filter(t -> !t.isWithdrawn())
                .filter(t -> t.property(property) instanceof Value.OneOf x && isOnly(x.terms(), term))
                .toList();
    }

    private static boolean isOnly(SortedSet<String> terms, String term) {
        return terms.size() == 1 && terms.first().equals(term);
    }

    private static Value between(List<Term> liquids, List<Term> others, Set<String> warnings) {
        Optional<Span> all = Optional.empty();
        for (Term liquid : liquids) {
            for (Term other : others) {
                Optional<HansenParameters> a = parameters(liquid);
                Optional<HansenParameters> b = parameters(other);
                Optional<Double> radius = number(other, "radius");
                if (a.isEmpty() || b.isEmpty() || radius.isEmpty()) {
                    return Value.UNKNOWN;
                }
                Estimate distance = HansenDistance.relative(a.get(), b.get(), radius.get());
                warnings.addAll(distance.warnings());
                Span one = Span.of(distance.value());
                all = Optional.of(all.map(one::hull).orElse(one));
            }
        }
        return all.<Value>map(Value.Number::new).orElse(Value.NOT_APPLICABLE);
    }

    /** What holds whichever it is: a span of all distances, unknown where only some are known. */
    private static Value together(List<Value> each) {
        if (each.stream().allMatch(Value.NotApplicable.class::isInstance)) {
            return Value.NOT_APPLICABLE;
        }
        Span all = null;
        for (Value v : each) {
            if (!(v instanceof Value.Number n)) {
                return Value.UNKNOWN;
            }
            all = all == null ? n.span() : all.hull(n.span());
        }
        return new Value.Number(all);
    }

    private static Optional<HansenParameters> parameters(Term set) {
        Optional<Double> d = number(set, "dispersion");
        Optional<Double> p = number(set, "polar");
        Optional<Double> h = number(set, "hydrogen");
        return d.isEmpty() || p.isEmpty() || h.isEmpty()
                ? Optional.empty()
                : Optional.of(new HansenParameters(d.get(), p.get(), h.get()));
    }

    private static Optional<Double> number(Term set, String property) {
        return set.property(property) instanceof Value.Number n && n.span().isPoint()
                ? Optional.of(n.span().low())
                : Optional.empty();
    }
}
