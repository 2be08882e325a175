package org.washwright.assessment;

import java.util.ArrayList;
import java.util.List;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.Term;
import org.washwright.line.PlacedStage;
import org.washwright.line.ProcessLine;
import org.washwright.line.Window;
import org.washwright.line.sizing.Sized;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;
import org.washwright.quantity.Span;
import org.washwright.rule.Edition;
import org.washwright.task.FieldType;
import org.washwright.task.Value;

/** What to measure in which bath of a line, how often, within which limits, and what to do outside them. */
final class BathControl {

    private static final String KIND = "bath-check";
    private static final int FIGURES = 3;

    private final Edition edition;
    private final Catalogue catalogue;

    BathControl(Edition edition) {
        this.edition = edition;
        this.catalogue = edition.catalogue();
    }

    /** The plan of a line, stage by stage. */
    List<Design.Control> of(ProcessLine line, Sized sized) {
        List<Design.Control> plan = new ArrayList<>();
        int place = 1;
        for (PlacedStage stage : line.steps()) {
            for (Term check : catalogue.ofKind(KIND).values()) {
                String limits = limits(check, stage, line, sized, place);
                if (!limits.isEmpty() && !check.isWithdrawn()) {
                    plan.add(new Design.Control(place, check.name(), check.definition(), every(check), limits));
                }
            }
            place++;
        }
        return plan;
    }

    /** Within what the value has to stay; empty when the check does not belong to the stage. */
    private String limits(Term check, PlacedStage stage, ProcessLine line, Sized sized, int place) {
        if (check.property("parameter") instanceof Value.OneOf parameter) {
            return window(stage, parameter.terms().first(), has(sized, "bath-volume", place));
        }
        if (yes(check, "ofRinse") && has(sized, "rinse-water", place)) {
            return stage.stage().map(s -> conductivity(s.term())).orElse("");
        }
        if (yes(check, "ofOil") && has(sized, "bath-life", place)) {
            return assumption("bath-oil-limit");
        }
        if (yes(check, "ofSolvent") && has(sized, "still-feed", place)) {
            if (check.property("ofClass") instanceof Value.OneOf wanted) {
                return wanted.equals(ofMedium(line, "solventClass")) ? "as the supplier of the solvent says" : "";
            }
            return assumption("solvent-oil-limit");
        }
        return "";
    }

    private String window(PlacedStage stage, String parameter, boolean bath) {
        Window window = stage.windows().get(parameter);
        if (!bath || window == null) {
            return "";
        }
        return Quantities.write(
                new Span(window.low(), window.high()),
                catalogue.parameters().get(parameter).dimension(),
                FIGURES);
    }

    private String conductivity(Term stage) {
        if (stage.property("water") instanceof Value.OneOf water) {
            Term quality = catalogue.term("water", water.terms().first()).orElseThrow();
            return quality.property("conductivity") instanceof Value.Number n
                    ? "at most " + Quantities.write(n.span(), Dimension.CONDUCTIVITY, FIGURES)
                    : "at most twice that of the supply, until a trial sets a limit";
        }
        return "";
    }

    private String assumption(String id) {
        Edition.Assumption a = edition.assumptions().get(id);
        return a == null || !(a.value() instanceof Value.Number n)
                ? ""
                : "at most " + Quantities.write(n.span().high(), a.dimension(), FIGURES);
    }

    private Value ofMedium(ProcessLine line, String property) {
        if (line.process().term().property("medium") instanceof Value.OneOf medium) {
            return catalogue
                    .term("medium", medium.terms().first())
                    .map(m -> m.property(property))
                    .orElse(Value.NOT_APPLICABLE);
        }
        return Value.NOT_APPLICABLE;
    }

    private static boolean yes(Term term, String flag) {
        return term.property(flag) instanceof Value.OneOf o && o.terms().contains(FieldType.YES);
    }

    private static boolean has(Sized sized, String kind, int place) {
        return sized.figures().stream()
                .anyMatch(f -> f.place() == place && f.kind().id().equals(kind));
    }

    private static String every(Term check) {
        return check.property("every") instanceof Value.Number n
                ? Intervals.words(n.span().low())
                : "as agreed";
    }
}
