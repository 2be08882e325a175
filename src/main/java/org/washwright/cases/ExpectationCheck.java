package org.washwright.cases;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Outcome;
import org.washwright.engine.Finding;
import org.washwright.engine.Firing;
import org.washwright.engine.Words;
import org.washwright.line.PlacedStage;
import org.washwright.line.ProcessLine;
import org.washwright.line.Window;
import org.washwright.quantity.Quantities;
import org.washwright.quantity.Span;
import org.washwright.rule.Effect;

/** Holds expectations against an outcome. */
final class ExpectationCheck {

    /** Ends of a window agree when they differ by no more than the rounding of a unit. */
    private static final double CLOSE = 1e-9;

    private final Outcome outcome;

    ExpectationCheck(Outcome outcome) {
        this.outcome = outcome;
    }

    /** What was found instead and why; empty when the expectation is met. */
    String against(Expectation e) {
        if (e instanceof Expectation.Stands s) {
            ProcessLine line = line(s.process());
            return line.status() == s.status() ? "" : standing(line);
        }
        if (e instanceof Expectation.RulesOut r) {
            return ruledOut(r);
        }
        if (e instanceof Expectation.Cautions c) {
            return cautions(c);
        }
        if (e instanceof Expectation.Asks a) {
            List<String> asked =
                    outcome.questions().stream().map(Answer.Question::attribute).toList();
            return asked.contains(a.attribute()) ? "" : "asked for: " + listed(asked);
        }
        if (e instanceof Expectation.Verifies v) {
            List<String> methods = said(Effect.Verify.class).stream()
                    .map(f -> ((Effect.Verify) f.effect()).method())
                    .distinct()
                    .toList();
            return methods.contains(v.method()) ? "" : "proven by: " + listed(methods);
        }
        if (e instanceof Expectation.WindowIs w) {
            return window(w);
        }
        if (e instanceof Expectation.StageOrder o) {
            return order(o);
        }
        return e instanceof Expectation.Reacts r ? reacts(r) : says((Expectation.Says) e);
    }

    private ProcessLine line(String process) {
        return outcome.line(process).orElseThrow();
    }

    private String standing(ProcessLine line) {
        List<ProcessLine.Verdict> why =
                line.status() == ProcessLine.Status.RULED_OUT ? line.refusals() : line.conditions();
        List<String> reasons =
                why.stream().map(v -> v.text() + rules(v.firings())).toList();
        return line.status().word() + (reasons.isEmpty() ? "" : ": " + String.join(" ", reasons));
    }

    private String rules(List<Integer> firings) {
        List<String> ids = new ArrayList<>(new TreeSet<>(outcome.firings().stream()
                .filter(f -> firings.contains(f.n()))
                .map(f -> f.rule().id())
                .toList()));
        return ids.isEmpty() ? "" : " [" + String.join(", ", ids) + "]";
    }

    private String ruledOut(Expectation.RulesOut r) {
        ProcessLine line = line(r.process());
        boolean out = line.status() == ProcessLine.Status.RULED_OUT;
        boolean byRule = r.by().isEmpty()
                || line.refusals().stream()
                        .flatMap(v -> v.firings().stream())
                        .anyMatch(n -> outcome.firings().stream()
                                .anyMatch(f -> f.n() == n && f.rule().id().equals(r.by().get())));
        return out && byRule ? "" : standing(line) + r.by().map(this::whyNot).orElse("");
    }

    private String whyNot(String rule) {
        return "; " + state(rule);
    }

    /** How a rule took to the task, in words. */
    private String state(String rule) {
        List<Firing> firings = outcome.of(rule);
        if (firings.stream().anyMatch(Firing::certain)) {
            return rule + " fires";
        }
        TreeSet<String> held = new TreeSet<>();
        firings.forEach(f -> held.addAll(f.held()));
        return firings.isEmpty() ? rule + " does not fire" : rule + " is undecided, held by " + listed(held);
    }

    private List<Finding> said(Class<? extends Effect> kind) {
        return outcome.firings().stream()
                .filter(Firing::certain)
                .flatMap(f -> f.findings().stream())
                .filter(f -> kind.isInstance(f.effect()))
                .toList();
    }

    private String cautions(Expectation.Cautions c) {
        List<String> shown = new ArrayList<>();
        for (Firing firing : outcome.firings()) {
            for (Finding f : firing.findings()) {
                if (firing.certain() && f.effect() instanceof Effect.Caution caution && isShown(f, c.process())) {
                    if (caution.hazard().equals(c.hazard())
                            && c.by().map(firing.rule().id()::equals).orElse(true)) {
                        return "";
                    }
                    shown.add(caution.hazard() + " by " + firing.rule().id());
                }
            }
        }
        return "cautions: " + listed(new TreeSet<>(shown))
                + c.by().map(this::whyNot).orElse("");
    }

    /** A caution for processes is shown with those that stand. */
    private boolean isShown(Finding finding, Optional<String> process) {
        if (finding.targets().isEmpty()) {
            return process.isEmpty();
        }
        return outcome.standing().stream()
                .map(l -> l.process().id())
                .anyMatch(id -> finding.targets().contains(id)
                        && process.map(id::equals).orElse(true));
    }

    private Optional<PlacedStage> stage(ProcessLine line, String id) {
        return line.steps().stream().filter(s -> id(s).equals(id)).findFirst();
    }

    private static String id(PlacedStage stage) {
        return stage.stage().map(t -> t.id()).orElse(Effect.StageRef.MAIN);
    }

    private String window(Expectation.WindowIs w) {
        ProcessLine line = line(w.process());
        Optional<PlacedStage> stage = stage(line, w.stage());
        Window window = stage.map(s -> s.windows().get(w.parameter())).orElse(null);
        if (window == null) {
            return stage.isEmpty() ? stages(line) : "the stage has no such parameter";
        }
        boolean fits = w.min().stream().allMatch(v -> close(v, window.low()))
                && w.max().stream().allMatch(v -> close(v, window.high()))
                && w.within()
                        .map(s ->
                                s.low() <= window.low() + slack(s.low()) && window.high() <= s.high() + slack(s.high()))
                        .orElse(true);
        var dimension =
                outcome.edition().catalogue().parameters().get(w.parameter()).dimension();
        return fits
                ? ""
                : window.isClosed()
                        ? "the window is closed" + rules(window.by())
                        : Quantities.write(new Span(window.low(), window.high()), dimension, Words.GIVEN)
                                + rules(window.by());
    }

    private static double slack(double x) {
        return CLOSE * Math.max(1, Math.abs(x));
    }

    private static boolean close(double a, double b) {
        return a == b || Math.abs(a - b) <= slack(a);
    }

    private String order(Expectation.StageOrder o) {
        ProcessLine line = line(o.process());
        int next = 0;
        for (PlacedStage s : line.steps()) {
            if (next < o.stages().size() && id(s).equals(o.stages().get(next))) {
                next++;
            }
        }
        return next == o.stages().size() ? "" : stages(line);
    }

    private String stages(ProcessLine line) {
        return line.steps().isEmpty()
                ? standing(line)
                : "the line is: "
                        + listed(line.steps().stream().map(ExpectationCheck::id).toList());
    }

    private String reacts(Expectation.Reacts r) {
        List<Firing> firings = outcome.of(r.rule());
        boolean certain = firings.stream().anyMatch(Firing::certain);
        Expectation.Reaction found = certain
                ? Expectation.Reaction.FIRES
                : firings.isEmpty() ? Expectation.Reaction.SILENT : Expectation.Reaction.UNDECIDED;
        if (found != r.reaction()) {
            return state(r.rule());
        }
        List<Firing> counted =
                firings.stream().filter(f -> f.certain() == certain).toList();
        SortedSet<String> about = RuleReach.about(counted);
        if (!r.about().map(about::equals).orElse(true)) {
            return "it speaks of: " + listed(about);
        }
        SortedSet<String> on = RuleReach.on(counted);
        return r.on().map(on::equals).orElse(true) ? "" : "it matches: " + listed(on);
    }

    private String says(Expectation.Says s) {
        TreeSet<String> found = new TreeSet<>();
        TreeSet<String> about = new TreeSet<>();
        boolean said = false;
        for (Firing firing : outcome.of(s.rule())) {
            for (Answer.Finding f : firing.certain() ? outcome.said(firing) : List.<Answer.Finding>of()) {
                found.add(f.verb() + ": " + f.detail());
                if (f.verb().equals(s.verb()) && f.detail().equals(s.detail())) {
                    said = true;
                    about.addAll(f.targets());
                }
            }
        }
        if (!said) {
            return found.isEmpty() ? state(s.rule()) : "it says " + String.join("; ", found);
        }
        return s.about().map(about::equals).orElse(true) ? "" : "it says so of: " + listed(about);
    }

    private static String listed(Collection<String> words) {
        return words.isEmpty() ? "nothing" : String.join(", ", words);
    }
}
