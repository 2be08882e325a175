package org.washwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.washwright.assessment.Design;
import org.washwright.assessment.Design.Figure;
import org.washwright.assessment.Design.Kind;

/** The figures of the line by group, with formula, source and warnings; and where each came from. */
final class FiguresPart {

    static final String NOTHING_TO_SIZE_BY =
            "The edition gives nothing to size this line by, so there are no figures. It needs"
                    + " assumptions on loads, baths and rinsing, and data of the media; until it holds them, plant makers have only the"
                    + " task, the stages and their windows to quote on.";

    private final Page page;

    FiguresPart(Page page) {
        this.page = page;
    }

    /** Figures by kind, kinds by group, both in the order of the answer. */
    static Map<String, Map<Kind, List<Figure>>> grouped(Design design, Lookup lookup, List<Kind> order) {
        Map<String, Map<Kind, List<Figure>>> groups = new LinkedHashMap<>();
        order.forEach(k ->
                groups.computeIfAbsent(k.group(), g -> new LinkedHashMap<>()).put(k, new ArrayList<>()));
        for (Figure figure : design.figures()) {
            Kind kind = lookup.kind(figure.figure());
            groups.computeIfAbsent(kind.group(), g -> new LinkedHashMap<>())
                    .computeIfAbsent(kind, k -> new ArrayList<>())
                    .add(figure);
        }
        groups.values().forEach(kinds -> kinds.values().removeIf(List::isEmpty));
        groups.values().removeIf(Map::isEmpty);
        return groups;
    }

    void write() {
        page.section(Section.FIGURES);
        Optional<Design> design = page.report().design();
        if (design.isEmpty()
                || design.get().figures().isEmpty()
                || page.report().chosen().isEmpty()) {
            page.paragraph(
                    page.report().chosen().isEmpty()
                            ? "There is no line, so there are no figures."
                            : NOTHING_TO_SIZE_BY);
            page.end();
            return;
        }
        page.note(
                "For planning and for quotes. Where a range stands, both ends come from the ranges of what went in. The second"
                        + " line of each figure says how it is computed; every value that went in stands under \u201C"
                        + Section.FORMULAS.title() + "\u201D.");
        toBeKnown(design.get());
        glance(design.get());
        grouped(design.get(), page.lookup(), page.answer().figures()).forEach(this::group);
        page.end();
    }

    /** Figures that are not known are no gap to be found by chance: what they need stands before all others. */
    private void toBeKnown(Design design) {
        Missing missing = new Missing(design, page.lookup());
        Map<String, Set<String>> needs = new LinkedHashMap<>();
        Set<String> untold = new LinkedHashSet<>();
        for (Figure figure : design.figures()) {
            if (Missing.isUnknown(figure)) {
                String label = page.lookup().kind(figure.figure()).label();
                Set<String> names = missing.of(figure);
                names.forEach(n ->
                        needs.computeIfAbsent(n, k -> new LinkedHashSet<>()).add(label));
                if (names.isEmpty()) {
                    untold.add(label);
                }
            }
        }
        if (needs.isEmpty() && untold.isEmpty()) {
            return;
        }
        Markup m = page.markup();
        m.open("div", "class", "to-know");
        page.heading("some figures need what is not known yet");
        m.open("ul");
        needs.forEach((name, figures) -> m.open("li")
                .element("b", name)
                .text(" \u2013 without it: " + String.join(", ", figures))
                .close());
        if (!untold.isEmpty()) {
            m.element("li", "The edition or the task gives nothing to compute: " + String.join(", ", untold));
        }
        m.close().close();
    }

    /** What a plant maker reads first: the figures of the line as a whole, in two columns. */
    private void glance(Design design) {
        List<Figure> whole = design.figures().stream()
                .filter(f -> f.stage() == 0 && !Missing.isUnknown(f))
                .toList();
        if (whole.isEmpty()) {
            return;
        }
        page.heading("the whole line at a glance");
        Markup m = page.markup();
        m.open("table", "class", "whole").open("tbody");
        int half = (whole.size() + 1) / 2;
        for (int i = 0; i < half; i++) {
            m.open("tr");
            for (int at : new int[] {i, i + half}) {
                boolean there = at < whole.size();
                m.element(
                        "td", there ? page.lookup().kind(whole.get(at).figure()).label() : "", "class", "what");
                m.element("td", there ? whole.get(at).text() : "", "class", at < half ? "amount gap" : "amount");
            }
            m.close();
        }
        m.close().close();
    }

    private void group(String name, Map<Kind, List<Figure>> kinds) {
        page.heading(name.isEmpty() ? "other figures" : name);
        page.table("figures", "figure and how it is computed", "where and how much");
        kinds.forEach((kind, figures) -> {
            Markup m = page.markup();
            m.open("tr").open("th", "scope", "row").text(kind.label());
            m.element("div", "= " + kind.formula() + origin(kind), "class", "formula");
            m.close().open("td").open("table", "class", "values").open("tbody");
            figures.forEach(this::value);
            m.close().close().close().close();
        });
        page.endTable();
    }

    /** What stands behind the formula; a definition needs no more words. */
    private static String origin(Kind kind) {
        return (kind.source().isEmpty() ? "" : " (" + kind.source() + ")")
                + (kind.holds().isEmpty() ? "" : "; holds for " + kind.holds());
    }

    private void value(Figure figure) {
        Markup m = page.markup();
        m.open("tr").element("td", Lookup.stage(page.report().chosen(), figure.stage()), "class", "where");
        m.open("td", "class", Missing.isUnknown(figure) ? "unknown" : "amount").text(figure.text());
        m.close().close();
        for (String warning : figure.warnings()) {
            m.open("tr")
                    .element("td", "Mind: " + warning, "class", "warning", "colspan", "2")
                    .close();
        }
    }

    /** Every figure with the values that went into it: the way back for an auditor. */
    void writeFormulas() {
        Optional<Design> design = page.report().design();
        if (design.isEmpty()) {
            return;
        }
        page.section(Section.FORMULAS);
        page.table("audit", "figure", "value and what it was computed from");
        grouped(design.get(), page.lookup(), page.answer().figures())
                .values()
                .forEach(kinds -> kinds.forEach(this::audited));
        page.endTable();
        page.end();
    }

    private void audited(Kind kind, List<Figure> figures) {
        Markup m = page.markup();
        m.open("tr").open("th", "scope", "row").text(kind.label());
        m.element("div", "= " + kind.formula(), "class", "formula").close().open("td");
        for (Figure figure : figures) {
            m.open("div").text(Lookup.stage(page.report().chosen(), figure.stage()) + ": ");
            m.element("b", figure.text());
            List<String> from = figure.inputs().stream()
                    .map(ref -> page.lookup().input(ref, page.report().chosen()))
                    .toList();
            if (!from.isEmpty()) {
                m.text(" ").element("span", "from " + String.join("; ", from), "class", "input");
            }
            m.close();
        }
        m.close().close();
    }

    /** What figures were computed from besides facts and each other. */
    void writeInputs() {
        page.section(Section.INPUTS);
        List<Design.Input> inputs = ofLine();
        if (inputs.isEmpty()) {
            page.paragraph(
                    page.answer().request().assumptions().isEmpty()
                            ? "No figure rests on an assumption or on data of the catalogue."
                            : "Changed for this request:");
        } else {
            page.table("inputs", "what", "value", "source");
            for (Design.Input input : inputs) {
                Markup m = page.markup();
                m.open("tr").element("th", input.label(), "scope", "row");
                m.open("td").text(input.value());
                if (input.changed()) {
                    m.text(" ").element("span", "changed for this request", "class", "changed");
                }
                m.close().element("td", input.source()).close();
            }
            page.endTable();
        }
        int others = page.answer().inputs().size() - inputs.size();
        if (others > 0) {
            page.note("Figures of other lines rest on " + others + " more; the workbook lists them all.");
        }
        changedElsewhere();
        page.end();
    }

    /** What the figures of this line were computed from, and whatever was changed. */
    private List<Design.Input> ofLine() {
        Set<String> used = new LinkedHashSet<>();
        page.report().design().ifPresent(d -> d.figures().forEach(f -> used.addAll(f.inputs())));
        return page.answer().inputs().stream()
                .filter(i -> i.changed() || used.contains(i.ref()))
                .toList();
    }

    /** Assumptions that were changed and that no figure shown here rests on. */
    private void changedElsewhere() {
        List<String> rest = page.answer().request().assumptions().stream()
                .filter(a ->
                        page.answer().inputs().stream().noneMatch(i -> i.ref().equals("assumption/" + a.id())))
                .map(a -> a.id() + ": " + a.value())
                .toList();
        if (!rest.isEmpty()) {
            page.heading("changed for this request, and no figure here rests on it");
            Markup m = page.markup();
            m.open("ul");
            rest.forEach(text -> m.element("li", text));
            m.close();
        }
    }
}
