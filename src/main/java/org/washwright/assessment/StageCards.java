package org.washwright.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.Parameter;
import org.washwright.line.PlacedStage;
import org.washwright.line.ProcessLine;
import org.washwright.line.Window;
import org.washwright.quantity.Quantities;
import org.washwright.quantity.Span;

/** Shows the stages of a line with their four cleaning factors and their windows. */
final class StageCards {

    private static final int FIGURES = 3;

    private final Catalogue catalogue;

    StageCards(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    List<Answer.Stage> of(ProcessLine line) {
        return line.steps().stream().map(s -> stage(line, s)).toList();
    }

    private Answer.Stage stage(ProcessLine line, PlacedStage s) {
        List<Answer.Factor> factors =
                Catalogue.FACTORS.stream().map(f -> factor(f, s)).toList();
        List<Answer.Window> windows = new ArrayList<>();
        s.windows().forEach((id, w) -> windows.add(window(catalogue.parameters().get(id), w)));
        return new Answer.Stage(
                s.stage().map(x -> x.id()).orElse(line.process().id()),
                s.stage().map(x -> x.term().name()).orElse(line.process().term().name()),
                s.stage().isEmpty(),
                s.certain(),
                factors,
                windows,
                s.owedTo());
    }

    private Answer.Factor factor(String factor, PlacedStage s) {
        List<String> words = new ArrayList<>();
        if (s.setting().factors().containsKey(factor)) {
            words.add(s.setting().factors().get(factor));
        }
        double share = -1;
        for (Map.Entry<String, Window> e : s.windows().entrySet()) {
            Parameter parameter = catalogue.parameters().get(e.getKey());
            if (parameter.factor().equals(factor)) {
                boolean named = factor.equals("temperature") || factor.equals("time");
                String text = text(parameter, e.getValue());
                words.add(named ? text : parameter.term().name() + " " + text);
                share = share < 0 ? share(parameter, e.getValue()) : share;
            }
        }
        return new Answer.Factor(factor, words.isEmpty() ? "as usual" : String.join(", ", words), share);
    }

    /** Place of the middle of the window within the parameter's scale, 0 to 1. */
    private static double share(Parameter parameter, Window w) {
        Span scale = parameter.scale();
        double low = Math.max(w.low(), scale.low());
        double high = Math.min(w.high(), scale.high());
        double width = scale.high() - scale.low();
        if (!(width > 0) || Double.isInfinite(width)) {
            return -1;
        }
        return Math.max(0, Math.min(1, ((low + high) / 2 - scale.low()) / width));
    }

    private Answer.Window window(Parameter parameter, Window w) {
        return new Answer.Window(
                parameter.id(),
                parameter.term().name(),
                text(parameter, w),
                end(w.low(), parameter),
                end(w.high(), parameter),
                parameter.dimension().defaultUnit(),
                w.by(),
                w.undecided());
    }

    private static String text(Parameter parameter, Window w) {
        return w.isClosed() ? "none" : Quantities.write(new Span(w.low(), w.high()), parameter.dimension(), FIGURES);
    }

    private static Double end(double si, Parameter parameter) {
        return Double.isInfinite(si)
                ? null
                : (Double) Quantities.fromSi(si, parameter.dimension().defaultUnit(), parameter.dimension());
    }
}
