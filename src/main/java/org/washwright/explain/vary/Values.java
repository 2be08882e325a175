package org.washwright.explain.vary;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.washwright.analysis.Choices;
import org.washwright.analysis.TaskEdit;
import org.washwright.document.Diagnostics;
import org.washwright.document.Place;
import org.washwright.engine.Readers;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.ExactText;
import org.washwright.quantity.Quantities;
import org.washwright.quantity.Span;
import org.washwright.rule.Edition;
import org.washwright.task.FieldType;
import org.washwright.task.Given;
import org.washwright.task.Group;
import org.washwright.task.Value;

/**
 * Values tried at a place: every term of the catalogue; of numbers those that rules tell apart and, where a formula or a curve
 * reads the number too, some multiples of what is said now. What a demand asks for may also be dropped.
 */
final class Values {

    /** Multiples of a number that formulas read; they meet most of what formulas tell apart, and not all. */
    private static final double[] MULTIPLES = {3, 1 / 3.0, 10, 0.1};

    private static final double[] USUAL = {1, 0.1, 10};

    private static final int FIGURES = 3;

    private final Edition edition;
    private final Readers readers;
    private final Choices choices;

    Values(Edition edition, Readers readers) {
        this.edition = edition;
        this.readers = readers;
        this.choices = new Choices(edition);
    }

    /** Values other than the present one, the nearest first. */
    List<Given> of(TaskEdit edit, Value now, boolean points) {
        String pointer = edit.pointer();
        List<Given> out = new ArrayList<>();
        if (edit.attribute().type() instanceof FieldType.TermType t) {
            terms(t).forEach(id -> out.add(Given.of(Value.term(id), pointer)));
        } else if (edit.attribute().type() instanceof FieldType.NumberType n) {
            numbers(edit, now, n.dimension(), points).forEach(v -> out.add(Given.of(Value.number(v), pointer)));
        } else {
            choices.of(edit).stream().filter(g -> !g.code().isEmpty()).forEach(out::add);
        }
        if (edit.group().filter(g -> g == Group.DEMAND).isPresent()) {
            out.add(Given.of(Value.NOT_APPLICABLE, pointer));
        }
        out.removeIf(g -> g.value().equals(now));
        return out;
    }

    /** What one more entry of a list may be: of each kind one. */
    List<Given> further(org.washwright.explain.vary.Place.More more) {
        FieldType type = more.list().attributes().get(0).type();
        return type instanceof FieldType.TermType t
                ? terms(t).stream()
                        .map(id -> Given.of(Value.term(id), more.pointer()))
                        .toList()
                : List.of();
    }

    /** True when a value is one that another one leaves possible. */
    static boolean within(Value value, Value wide) {
        if (wide instanceof Value.Unknown) {
            return true;
        }
        if (value instanceof Value.Number n && wide instanceof Value.Number w) {
            return w.span().contains(n.span());
        }
        return value instanceof Value.OneOf o
                && wide instanceof Value.OneOf w
                && w.terms().containsAll(o.terms());
    }

    private List<String> terms(FieldType.TermType type) {
        return type.isFlag()
                ? List.of(FieldType.NO, FieldType.YES)
                : List.copyOf(new TreeSet<>(edition.terms(type.kind())));
    }

    private List<Double> numbers(TaskEdit edit, Value now, Dimension dimension, boolean points) {
        Map<Double, Boolean> out = new LinkedHashMap<>();
        choices.between(edit).forEach(v -> out.put(v, true));
        Optional<Span> span = now instanceof Value.Number n ? Optional.of(n.span()) : Optional.empty();
        if (out.isEmpty() || points || isReadByFormula(edit)) {
            multiples(span, dimension).forEach(v -> out.put(v, true));
        }
        double middle = span.map(Values::middle).orElse(usual(dimension));
        return out.keySet().stream()
                .filter(v -> isWritable(v, dimension))
                .sorted(Comparator.comparingDouble((Double v) -> distance(v, middle))
                        .thenComparing(v -> v))
                .toList();
    }

    private static List<Double> multiples(Optional<Span> span, Dimension dimension) {
        List<Double> out = new ArrayList<>();
        if (span.filter(s -> !s.isPoint()).isPresent()) {
            Span s = span.get();
            List.of(s.low(), middle(s), s.high()).stream()
                    .filter(Double::isFinite)
                    .forEach(out::add);
        }
        boolean scale = Quantities.lowest(dimension) != 0;
        double from = span.map(Values::middle).orElse(usual(dimension));
        if (scale && span.isEmpty()) {
            out.add(from);
        }
        for (double m : scale ? new double[0] : span.isPresent() ? MULTIPLES : USUAL) {
            out.add(rounded(from * m, dimension));
        }
        return out;
    }

    private static double middle(Span span) {
        return Double.isInfinite(span.low())
                ? span.high()
                : Double.isInfinite(span.high()) ? span.low() : (span.low() + span.high()) / 2;
    }

    private static double distance(double a, double b) {
        return a > 0 && b > 0 ? Math.abs(StrictMath.log(a / b)) : Math.abs(a - b);
    }

    private static double usual(Dimension dimension) {
        return read(dimension.example(), dimension).orElseThrow();
    }

    private static double rounded(double si, Dimension dimension) {
        double amount = Quantities.fromSi(si, dimension.defaultUnit(), dimension);
        String text = new java.math.BigDecimal(amount)
                .round(new java.math.MathContext(FIGURES))
                .toPlainString();
        return Quantities.toSi(text, dimension.defaultUnit(), dimension) + 0.0;
    }

    private static boolean isWritable(double si, Dimension dimension) {
        return read(ExactText.of(si, dimension), dimension).filter(v -> v == si).isPresent();
    }

    private static Optional<Double> read(String text, Dimension dimension) {
        return Quantities.read(text, dimension, Place.ofFile("-"), new Diagnostics());
    }

    /** True when some rule reads the number only through what is computed from it. */
    private boolean isReadByFormula(TaskEdit edit) {
        String type = Places.type(edit);
        String field = Places.field(edit);
        return readers.of(type, field).stream()
                .anyMatch(r -> r.patterns().stream()
                        .noneMatch(p -> p.type().name().equals(type)
                                && p.condition()
                                        .tests()
                                        .anyMatch(t -> t.field().name().equals(field))));
    }
}
