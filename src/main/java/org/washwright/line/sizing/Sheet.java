package org.washwright.line.sizing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.washwright.catalogue.Term;
import org.washwright.engine.Fact;
import org.washwright.engine.FactBase;
import org.washwright.engine.derive.Derivation;
import org.washwright.engine.derive.Numbers;
import org.washwright.quantity.Span;
import org.washwright.rule.Edition;
import org.washwright.task.Value;

/**
 * The calculation sheet of one line: hands out what figures are computed from, computes them and keeps what was computed.
 *
 * <p>A figure is bounded by its values at the corners of its inputs. A figure with an input that has no meaning here is left
 * out; one with an unknown input is kept as unknown, so that a reader sees what is missing.
 */
final class Sheet {

    private final Edition edition;
    private final FactBase facts;
    private final Map<String, Value> changed;
    private final boolean middle;
    private final List<Sized.Figure> figures = new ArrayList<>();
    private boolean ranges;

    /**
     * A sheet.
     *
     * @param changed assumptions changed for this request
     * @param middle true to take the middle of every range, which makes balances close
     */
    Sheet(Edition edition, FactBase facts, Map<String, Value> changed, boolean middle) {
        this.edition = edition;
        this.facts = facts;
        this.changed = changed;
        this.middle = middle;
    }

    /** An assumption; has no meaning when the edition has none such. */
    Cell assumption(String id) {
        Edition.Assumption assumption = edition.assumptions().get(id);
        return assumption == null ? Cell.NONE : leaf("assumption/" + id, changed.getOrDefault(id, assumption.value()));
    }

    /** A field of a fact that there is once. */
    Cell fact(String id, String field) {
        return facts.fact(id).map(f -> field(f, field)).orElse(Cell.NONE);
    }

    /** A field of a fact. */
    Cell field(Fact fact, String field) {
        return fact.type()
                .field(field)
                .map(f -> leaf(fact.ref(f), fact.value(f)))
                .orElse(Cell.NONE);
    }

    /** The facts of a group that surely exist. */
    List<Fact> sure(String prefix) {
        return facts.all().stream()
                .filter(f -> f.id().startsWith(prefix) && f.sure())
                .toList();
    }

    /** A property of a term of the catalogue. */
    Cell property(Term term, String property) {
        return leaf(term.kind() + "/" + term.id() + "/" + property, term.property(property));
    }

    /** A value that stands for itself under a reference. */
    Cell leaf(String ref, Value value) {
        if (value instanceof Value.Number n && !n.span().isPoint()) {
            ranges = true;
            Span span = n.span();
            boolean bounded = Double.isFinite(span.low()) && Double.isFinite(span.high());
            return new Cell(ref, middle && bounded ? Value.number((span.low() + span.high()) / 2) : value);
        }
        return new Cell(ref, value);
    }

    /** Computes a figure and keeps it. */
    Cell figure(FigureKind kind, int place, Numbers.Formula formula, Cell... inputs) {
        List<String> missing = new ArrayList<>();
        for (Cell c : inputs) {
            if (!c.applies()) {
                return Cell.NONE;
            }
            if (!c.isNumber()) {
                missing.add(c.ref());
            }
        }
        if (!missing.isEmpty()) {
            // What is known does not help as long as these are missing, so only they are named.
            return keep(kind, place, Value.UNKNOWN, missing, List.of());
        }
        Numbers numbers = new Numbers();
        for (Cell c : inputs) {
            numbers.with(c.value(), c.ref());
        }
        Derivation.Computed computed = numbers.compute(formula);
        return keep(kind, place, computed.value(), computed.inputs(), computed.warnings());
    }

    /** A quotient whose ends are exact, also where one of them is nothing. */
    Cell quotient(FigureKind kind, Cell a, Cell b) {
        if (!a.applies() || !b.applies()) {
            return Cell.NONE;
        }
        List<String> refs = a.isNumber() && b.isNumber()
                ? List.of(a.ref(), b.ref())
                : list(a, b).stream().filter(c -> !c.isNumber()).map(Cell::ref).toList();
        return keep(kind, 0, Derivation.quotient(a.value(), b.value()), refs, List.of());
    }

    /** A class that a number lies in: from what one function makes of its low end to what another makes of its high end. */
    Cell range(FigureKind kind, int place, DoubleUnaryOperator from, DoubleUnaryOperator to, Cell of) {
        if (!of.applies()) {
            return Cell.NONE;
        }
        Value value = of.value() instanceof Value.Number n
                ? new Value.Number(new Span(
                        from.applyAsDouble(n.span().low()),
                        to.applyAsDouble(n.span().high())))
                : Value.UNKNOWN;
        return keep(kind, place, value, List.of(of.ref()), List.of());
    }

    /** The sum of what applies; a part that may fall away counts from nothing. */
    Cell sum(FigureKind kind, int place, List<Cell> parts) {
        List<Cell> applying = parts.stream().filter(Cell::applies).toList();
        if (applying.isEmpty()) {
            return Cell.NONE;
        }
        double low = 0;
        double high = 0;
        boolean known = true;
        for (Cell part : applying) {
            if (part.value() instanceof Value.Number n) {
                low += n.span().low();
                high += n.span().high();
            } else {
                known = false;
            }
        }
        Value value = known ? new Value.Number(new Span(low, Math.max(low, high))) : Value.UNKNOWN;
        return keep(
                kind, place, value, applying.stream().map(Cell::ref).distinct().toList(), List.of());
    }

    /** A quotient that is no figure of its own; it is cited by what it was made from. */
    Cell over(Cell a, Cell b) {
        return a.applies() && b.applies() ? new Cell(refs(a, b), Derivation.quotient(a.value(), b.value())) : Cell.NONE;
    }

    /** A product that is no figure of its own; it is cited by what it was made from. */
    Cell times(Cell a, Cell b) {
        return a.applies() && b.applies() ? new Cell(refs(a, b), Derivation.product(a.value(), b.value())) : Cell.NONE;
    }

    /** A cell times a number. */
    Cell scaled(Cell a, double factor) {
        return times(a, new Cell("", Value.number(factor)));
    }

    /** A sum that is no figure of its own; it is cited by what it was made from. */
    Cell add(List<Cell> cells) {
        Cell sum = Cell.NONE;
        for (Cell c : cells) {
            if (!c.applies()) {
                continue;
            }
            if (!sum.applies()) {
                sum = c;
            } else if (sum.value() instanceof Value.Number a && c.value() instanceof Value.Number b) {
                sum = new Cell(
                        refs(sum, c),
                        new Value.Number(new Span(
                                a.span().low() + b.span().low(),
                                a.span().high() + b.span().high())));
            } else {
                sum = new Cell(refs(sum, c), Value.UNKNOWN);
            }
        }
        return sum;
    }

    /** What holds after a stage: what it makes, or what held before where it may fall away. */
    Cell after(Cell before, Cell now, boolean certain) {
        return certain ? now : hull(list(before, now));
    }

    /** The terms of a kind that an attribute may name: all of them while nobody knows. */
    List<Term> possible(Cell attribute, String kind) {
        Map<String, Term> all = edition.catalogue().ofKind(kind);
        if (attribute.value() instanceof Value.OneOf o) {
            return o.terms().stream().map(all::get).filter(t -> t != null).toList();
        }
        return attribute.value() instanceof Value.Unknown
                ? all.values().stream().filter(t -> !t.isWithdrawn()).toList()
                : List.of();
    }

    /** The facts of a group of which nobody knows whether they are there. */
    List<Fact> unsure(String prefix) {
        return facts.all().stream()
                .filter(f -> f.id().startsWith(prefix) && !f.sure())
                .toList();
    }

    /** References of both, as one text parted by blanks, which no reference holds. */
    private static String refs(Cell a, Cell b) {
        return (a.ref() + " " + b.ref()).strip();
    }

    /** The hull of what applies; unknown when one of them is. */
    Cell hull(List<Cell> cells) {
        Cell all = Cell.NONE;
        for (Cell c : cells) {
            if (!c.applies()) {
                continue;
            }
            if (!all.applies()) {
                all = c;
            } else if (all.value() instanceof Value.Number a && c.value() instanceof Value.Number b) {
                all = new Cell(cited(all, c), new Value.Number(a.span().hull(b.span())));
            } else {
                all = new Cell(cited(all, c), Value.UNKNOWN);
            }
        }
        return all.applies() ? leaf(all.ref(), all.value()) : all;
    }

    private static String cited(Cell a, Cell b) {
        return Arrays.asList(a.ref().split(" ")).contains(b.ref()) ? a.ref() : refs(a, b);
    }

    private Cell keep(FigureKind kind, int place, Value value, List<String> inputs, List<String> warnings) {
        String ref = "figure/" + kind.id() + "/" + place;
        TreeSet<String> cited = new TreeSet<>();
        inputs.forEach(i -> cited.addAll(Arrays.asList(i.split(" "))));
        cited.remove("");
        figures.add(new Sized.Figure(kind, place, value, List.copyOf(cited), warnings));
        return new Cell(ref, value);
    }

    /** A cell that may fall away: from nothing to itself. */
    static Cell perhaps(Cell cell, boolean certain) {
        if (certain || !(cell.value() instanceof Value.Number n)) {
            return cell;
        }
        return new Cell(cell.ref(), new Value.Number(Span.of(0).hull(n.span())));
    }

    /** The words of the edition. */
    Edition edition() {
        return edition;
    }

    /** True when something that was read was a range. */
    boolean ranges() {
        return ranges;
    }

    /** What was computed. */
    List<Sized.Figure> figures() {
        return figures;
    }

    /** Cells in one list, for sums. */
    static List<Cell> list(Cell... cells) {
        return Arrays.asList(cells);
    }
}
