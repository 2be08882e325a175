package org.washwright.assessment;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.Kind;
import org.washwright.catalogue.Property;
import org.washwright.engine.FactBase;
import org.washwright.engine.Firing;
import org.washwright.engine.Words;
import org.washwright.line.ProcessLine;
import org.washwright.line.sizing.FigureKind;
import org.washwright.line.sizing.LineSizer;
import org.washwright.line.sizing.Sized;
import org.washwright.quantity.Quantities;
import org.washwright.quantity.Span;
import org.washwright.rule.Edition;
import org.washwright.task.FieldType;
import org.washwright.task.Value;

/** Shows the figures and balances of lines, and what they were computed from. */
final class DesignCards {

    private static final int FIGURES = 3;

    private final Edition edition;
    private final FactBase facts;
    private final Map<String, Value> changed;
    private final Words words;
    private final Set<String> kinds = new HashSet<>();
    private final TreeMap<String, Design.Input> inputs = new TreeMap<>();
    private final Set<String> used;
    private final BathControl control;
    private final List<Design.Proof> proofs;
    private final Map<FigureKind, Double> units = new java.util.HashMap<>();

    /**
     * Cards.
     *
     * @param changed assumptions changed for this request
     * @param used takes the references of facts that figures were computed from
     */
    DesignCards(Edition edition, FactBase facts, List<Firing> firings, Map<String, Value> changed, Set<String> used) {
        this.edition = edition;
        this.facts = facts;
        this.changed = changed;
        this.words = new Words(edition.catalogue());
        this.used = used;
        this.control = new BathControl(edition);
        this.proofs = new ProofPlan(edition, facts, firings).proofs();
    }

    /** A line, sized, costed and planned. */
    Design of(ProcessLine line, Sized sized) {
        return new Design(figures(sized), balances(sized), control.of(line, sized), proofs);
    }

    private List<Design.Figure> figures(Sized sized) {
        Map<FigureKind, Integer> order = new java.util.HashMap<>();
        for (int i = 0; i < LineSizer.KINDS.size(); i++) {
            order.put(LineSizer.KINDS.get(i), i);
        }
        return sized.figures().stream()
                .sorted(java.util.Comparator.comparingInt((Sized.Figure f) -> order.get(f.kind()))
                        .thenComparingInt(Sized.Figure::place))
                .map(this::figure)
                .toList();
    }

    private Design.Figure figure(Sized.Figure f) {
        kinds.add(f.kind().id());
        f.inputs().forEach(this::input);
        Optional<Span> span = f.value() instanceof Value.Number n ? Optional.of(n.span()) : Optional.empty();
        return new Design.Figure(
                f.kind().id(),
                f.place(),
                span.map(s -> text(s, f.kind())).orElse("not known"),
                span.map(s -> end(s.low(), f.kind())).orElse(null),
                span.map(s -> end(s.high(), f.kind())).orElse(null),
                f.inputs(),
                f.warnings());
    }

    /** Amount in the unit of a kind; null without end. */
    private Double end(double si, FigureKind kind) {
        return Double.isInfinite(si) ? null : (Double) inUnit(si, kind);
    }

    private double inUnit(double si, FigureKind kind) {
        // Units of figures are plain factors, so reading each unit once is enough.
        return Double.isInfinite(si)
                ? si
                : si * units.computeIfAbsent(kind, k -> Quantities.fromSi(1, k.unit(), k.dimension()));
    }

    private String text(Span span, FigureKind kind) {
        String low = Quantities.number(inUnit(span.low(), kind), FIGURES);
        String high = Quantities.number(inUnit(span.high(), kind), FIGURES);
        String unit = kind.unit().isEmpty() ? "" : " " + kind.unit();
        return low.equals(high) ? low + unit : low + " to " + high + unit;
    }

    private List<Design.Balance> balances(Sized sized) {
        return sized.balances().stream()
                .map(b -> new Design.Balance(
                        b.id(), b.name(), b.kind().unit(), flows(b.in(), b.kind()), flows(b.out(), b.kind())))
                .toList();
    }

    private List<Design.Flow> flows(List<Sized.Flow> side, FigureKind kind) {
        return side.stream()
                .map(f -> new Design.Flow(f.name(), f.place(), inUnit(f.amount(), kind)))
                .toList();
    }

    private void input(String ref) {
        if (ref.startsWith("figure/") || ref.startsWith("window/") || inputs.containsKey(ref)) {
            return;
        }
        int slash = ref.lastIndexOf('/');
        String head = ref.substring(0, slash);
        String field = ref.substring(slash + 1);
        if (facts.fact(head).flatMap(f -> f.type().field(field)).isPresent()) {
            used.add(ref);
        } else if (head.equals("assumption")) {
            inputs.put(ref, assumption(ref, edition.assumptions().get(field)));
        } else {
            inputs.put(ref, property(ref, head, field));
        }
    }

    private Design.Input assumption(String ref, Edition.Assumption a) {
        Value value = changed.getOrDefault(a.id(), a.value());
        return new Design.Input(
                ref,
                a.label(),
                words.value(value, FieldType.number(a.dimension()), Words.GIVEN),
                a.source(),
                changed.containsKey(a.id()));
    }

    private Design.Input property(String ref, String head, String field) {
        Catalogue catalogue = edition.catalogue();
        String kind = head.substring(0, head.indexOf('/'));
        String id = head.substring(head.indexOf('/') + 1);
        var term = catalogue.term(kind, id).orElseThrow();
        Property property = Optional.ofNullable(catalogue.kinds().get(kind))
                .map(Kind::properties)
                .map(p -> p.get(field))
                .orElseThrow();
        return new Design.Input(
                ref,
                property.label() + ", " + term.name(),
                words.value(term.property(field), property.type(), Words.GIVEN),
                term.sources().getOrDefault(field, ""),
                false);
    }

    /** The kinds of figures that were shown, in order. */
    List<Design.Kind> kinds() {
        List<Design.Kind> out = new ArrayList<>();
        for (FigureKind k : LineSizer.KINDS) {
            if (kinds.contains(k.id())) {
                out.add(new Design.Kind(
                        k.id(), k.label(), k.group().word(), k.unit(), k.formula(), k.source(), k.holds()));
            }
        }
        return out;
    }

    /** What figures were computed from besides facts, windows and each other. */
    List<Design.Input> inputs() {
        return List.copyOf(inputs.values());
    }
}
