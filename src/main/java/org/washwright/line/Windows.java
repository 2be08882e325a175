package org.washwright.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.Parameter;
import org.washwright.catalogue.ProcessTerm;
import org.washwright.catalogue.Setting;
import org.washwright.catalogue.StageTerm;
import org.washwright.engine.Fact;
import org.washwright.line.ProcessLine.Verdict;
import org.washwright.quantity.Quantities;
import org.washwright.quantity.Span;
import org.washwright.rule.Effect;
import org.washwright.task.Value;

/** Narrows the windows of a line's stages by limits, tries alternatives where one closes, and says who closed it. */
final class Windows {

    private static final int FIGURES = 4;

    private final Catalogue catalogue;
    private final ProcessTerm process;
    private final List<Evidence<Effect.Limit>> limits;
    private final List<Verdict> refusals = new ArrayList<>();
    private final List<Verdict> conditions = new ArrayList<>();

    Windows(Catalogue catalogue, ProcessTerm process, List<Evidence<Effect.Limit>> limits) {
        this.catalogue = catalogue;
        this.process = process;
        this.limits = limits;
    }

    /** Places a step with its windows. */
    PlacedStage place(Step step, String factId) {
        Setting own = step.stage().map(StageTerm::setting).orElse(process.setting());
        Map<String, Window> windows =
                windows(step, step.stage().map(StageTerm::id).orElse(""), own, factId);
        Optional<Map.Entry<String, Window>> closed = closed(windows);
        if (closed.isPresent() && step.stage().isPresent()) {
            for (String alternative : step.stage().get().alternatives()) {
                StageTerm other = catalogue.stages().get(alternative);
                Map<String, Window> tried = windows(step, other.id(), other.setting(), factId);
                if (closed(tried).isEmpty()) {
                    return placed(
                            step,
                            Optional.of(other),
                            other.setting(),
                            tried,
                            factId,
                            step.stage().get().id(),
                            closed.get().getValue().by());
                }
            }
        }
        PlacedStage placed = placed(step, step.stage(), own, windows, factId, "", List.of());
        closed.ifPresent(c -> {
            Verdict verdict = closedVerdict(placed, c.getKey(), c.getValue());
            (step.certain() ? refusals : conditions).add(verdict);
        });
        windows.forEach((parameter, window) -> window.undecided()
                .forEach(n -> conditions.add(new Verdict(
                        "May narrow " + parameterName(parameter) + " of " + name(placed) + ": " + reason(n),
                        List.of(n)))));
        return placed;
    }

    private static PlacedStage placed(
            Step step,
            Optional<StageTerm> stage,
            Setting setting,
            Map<String, Window> windows,
            String factId,
            String insteadOf,
            List<Integer> closers) {
        return new PlacedStage(
                step.key(),
                factId,
                stage,
                setting,
                step.certain(),
                windows,
                step.reasons().stream().map(Evidence::n).distinct().sorted().toList(),
                closers,
                insteadOf);
    }

    private Map<String, Window> windows(Step step, String stageId, Setting setting, String factId) {
        Map<String, Window> windows = new TreeMap<>();
        setting.windows().forEach((parameter, span) -> windows.put(parameter, Window.own(span)));
        for (Evidence<Effect.Limit> limit : limits) {
            // A limit says nothing of a stage that does not have the parameter.
            Window window = windows.get(limit.effect().parameter());
            if (window != null && concerns(limit, step, stageId, factId)) {
                windows.put(limit.effect().parameter(), narrowed(window, limit));
            }
        }
        return windows;
    }

    private static boolean concerns(Evidence<Effect.Limit> limit, Step step, String stageId, String factId) {
        if (limit.effect().stage() instanceof Effect.StageRef.Matched m) {
            return limit.firing()
                    .facts()
                    .get(m.pattern())
                    .map(Fact::id)
                    .orElse("")
                    .equals(factId);
        }
        String named = ((Effect.StageRef.Named) limit.effect().stage()).id();
        return step.isMain() ? named.equals(Effect.StageRef.MAIN) : named.equals(stageId);
    }

    private static Window narrowed(Window window, Evidence<Effect.Limit> limit) {
        boolean max = limit.effect().max();
        Optional<Span> bound = bound(limit);
        if (bound.isEmpty()) {
            return window;
        }
        // Whatever an uncertain bound turns out to be, its weaker end holds; its stronger end may.
        double surely = max ? bound.get().high() : bound.get().low();
        double perhaps = max ? bound.get().low() : bound.get().high();
        Window out = window;
        if (limit.certain() && Double.isFinite(surely)) {
            out = max ? out.atMost(surely, limit.n()) : out.atLeast(surely, limit.n());
        }
        boolean couldNarrow = max ? perhaps < out.high() : perhaps > out.low();
        return couldNarrow ? out.maybe(limit.n()) : out;
    }

    /** The bound's value; everything when it is unknown, empty when it does not apply. */
    private static Optional<Span> bound(Evidence<Effect.Limit> limit) {
        if (limit.effect().bound() instanceof Effect.Bound.Literal literal) {
            return Optional.of(Span.of(literal.si()));
        }
        Effect.Bound.FieldOf of = (Effect.Bound.FieldOf) limit.effect().bound();
        Value value = limit.firing().facts().get(of.pattern()).orElseThrow().value(of.field());
        if (value instanceof Value.NotApplicable) {
            return Optional.empty();
        }
        return Optional.of(value instanceof Value.Number n ? n.span() : Span.ALL);
    }

    private static Optional<Map.Entry<String, Window>> closed(Map<String, Window> windows) {
        return windows.entrySet().stream().filter(e -> e.getValue().isClosed()).findFirst();
    }

    private Verdict closedVerdict(PlacedStage placed, String parameter, Window w) {
        Parameter p = catalogue.parameters().get(parameter);
        String low = Quantities.write(w.low(), p.dimension(), FIGURES);
        String high = Quantities.write(w.high(), p.dimension(), FIGURES);
        String lowWhy = w.lowBy().isEmpty()
                ? "it works from " + low + " only"
                : reason(w.lowBy().get(0));
        String highWhy = w.highBy().isEmpty()
                ? "it works up to " + high + " only"
                : reason(w.highBy().get(0));
        String text = "No " + parameterName(parameter) + " is left for " + name(placed) + ": it needs at least " + low
                + " (" + plain(lowWhy) + ") and at most " + high + " (" + plain(highWhy) + ").";
        return new Verdict(text, w.by());
    }

    private static String plain(String sentence) {
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }

    private String reason(int firing) {
        return limits.stream()
                .filter(l -> l.n() == firing)
                .findFirst()
                .map(l -> l.finding().text())
                .orElse("");
    }

    private String parameterName(String id) {
        return catalogue.parameters().get(id).term().name();
    }

    private String name(PlacedStage placed) {
        return placed.stage().map(s -> s.term().name()).orElse(process.term().name());
    }

    List<Verdict> refusals() {
        return refusals;
    }

    List<Verdict> conditions() {
        return conditions;
    }
}
