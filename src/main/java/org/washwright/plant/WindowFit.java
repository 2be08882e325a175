package org.washwright.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.Parameter;
import org.washwright.line.PlacedStage;
import org.washwright.line.ProcessLine;
import org.washwright.line.Window;
import org.washwright.quantity.Quantities;
import org.washwright.quantity.Span;
import org.washwright.task.Value;

/**
 * Holds the windows of a task's line against what the plant can be set to. What the plant does not say of a setting matters
 * only where the task narrows the usual range of the stage, because a plant of that stage runs somewhere within it.
 */
final class WindowFit {

    private static final int FIGURES = 4;

    /** An end that went from unit to unit and back still is that end. */
    private static final double ROUNDING = 1e-9;

    private final Plant plant;
    private final Catalogue catalogue;
    private final ProcessLine line;
    private final StageFit stages;
    private final Grounds grounds;

    WindowFit(Plant plant, Catalogue catalogue, ProcessLine line, StageFit stages, Grounds grounds) {
        this.plant = plant;
        this.catalogue = catalogue;
        this.line = line;
        this.stages = stages;
        this.grounds = grounds;
    }

    void judge() {
        for (PlacedStage step : line.steps()) {
            // A stage that stands in for another has windows of its own, which no rule of this task has looked at.
            if (stages.servedBy(step).equals(Optional.of(StageFit.id(step)))) {
                step.windows().forEach((parameter, window) -> judge(step, parameter, window));
            }
        }
    }

    private void judge(PlacedStage step, String id, Window window) {
        if (window.isClosed()) {
            return;
        }
        Parameter parameter = catalogue.parameters().get(id);
        String what = parameter.term().name() + " of " + name(step);
        Span asked = new Span(window.low(), window.high());
        if (!(plant.setting(StageFit.id(step), id) instanceof Value.Number can)) {
            if (!window.by().isEmpty()) {
                grounds.condition(
                        what + ": the task needs " + ends(window, parameter) + "; what the plant runs is not known.",
                        window.by());
            }
            return;
        }
        double low = Math.max(asked.low(), can.span().low());
        double high = Math.min(asked.high(), can.span().high());
        if (low - high > ROUNDING * Math.max(1, Math.abs(low))) {
            grounds.blockIf(
                    step.certain(),
                    (step.certain() ? "" : "It may need the stage " + name(step) + ". ") + what + ": the task needs "
                            + ends(window, parameter) + "; the plant runs " + text(can.span(), parameter) + ".",
                    window.by());
        } else if (!asked.contains(can.span())) {
            grounds.set(what + ": " + text(new Span(low, Math.max(low, high)), parameter), window.by());
        }
    }

    private String ends(Window window, Parameter parameter) {
        String low = "at least " + Quantities.write(window.low(), parameter.dimension(), FIGURES) + " ("
                + grounds.whyEnds(window.lowBy()) + ")";
        String high = "at most " + Quantities.write(window.high(), parameter.dimension(), FIGURES) + " ("
                + grounds.whyEnds(window.highBy()) + ")";
        List<String> ends = new ArrayList<>();
        if (Double.isFinite(window.low())) {
            ends.add(low);
        }
        if (Double.isFinite(window.high())) {
            ends.add(high);
        }
        return String.join(" and ", ends);
    }

    private static String text(Span span, Parameter parameter) {
        return Quantities.write(span, parameter.dimension(), FIGURES);
    }

    private String name(PlacedStage step) {
        return step.stage()
                .map(s -> s.term().name())
                .orElse(line.process().term().name());
    }
}
