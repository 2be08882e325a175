package org.washwright.explain.whynot;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.assessment.Outcome;
import org.washwright.engine.Fact;
import org.washwright.engine.Inference;
import org.washwright.engine.Match;
import org.washwright.line.ProcessLine;
import org.washwright.rule.Edition;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Rule;

/** Holds what is said of rules that fired, failed or are undecided against the matches of compiled rules. */
final class Agreeing {

    private final Edition edition;
    private final Inference lineRules;

    Agreeing(Edition edition, Inference lineRules) {
        this.edition = edition;
        this.lineRules = lineRules;
    }

    /** Where the two differ over all rules; rules over lines on the line of every process. */
    List<String> differences(Outcome byEngine) {
        List<String> out = new ArrayList<>();
        Map<String, State> fired = new TreeMap<>();
        byEngine.firings().stream().filter(f -> f.line().isEmpty()).forEach(f -> see(fired, f.rule(), f.certain()));
        WhyNot whyNot = new WhyNot(byEngine);
        edition.taskRules().forEach(rule -> {
            State engine = fired.getOrDefault(rule.id(), State.FAILED);
            if (engine != whyNot.state(rule)) {
                out.add(rule.id() + ": " + engine + " by the engine, " + whyNot.state(rule) + " looked at");
            }
        });
        byEngine.lines().stream().filter(l -> !l.facts().isEmpty()).forEach(l -> line(l, byEngine, whyNot, out));
        return out;
    }

    private void line(ProcessLine line, Outcome outcome, WhyNot whyNot, List<String> out) {
        String process = line.process().id();
        List<Fact> facts = new ArrayList<>(outcome.facts().all());
        facts.removeIf(f -> f.type().name().equals(FactTypes.PROCESS) && !f.id().equals("process/" + process));
        facts.addAll(line.facts());
        Map<String, State> fired = new TreeMap<>();
        for (Match m : lineRules.run(facts).matches()) {
            see(fired, m.rule(), m.certain());
        }
        edition.lineRules().forEach(rule -> {
            State engine = fired.getOrDefault(rule.id(), State.FAILED);
            State looked = whyNot.rule(rule, process).state();
            if (engine != looked) {
                out.add(rule.id() + " on " + process + ": " + engine + " by the engine, " + looked + " looked at");
            }
        });
    }

    private static void see(Map<String, State> fired, Rule rule, boolean certain) {
        fired.merge(rule.id(), certain ? State.FIRED : State.UNDECIDED, (a, b) -> a == State.FIRED ? a : b);
    }

    /** Outlooks whose conditions do not say why they are what they are. */
    static List<String> untold(List<Outlook> outlooks) {
        List<String> out = new ArrayList<>();
        for (Outlook o : outlooks) {
            boolean told = switch (o.state()) {
                case FIRED -> o.failing().isEmpty() && o.open().isEmpty();
                case UNDECIDED -> o.failing().isEmpty() && !o.open().isEmpty();
                case FAILED -> !o.failing().isEmpty() || !o.note().isEmpty();
            };
            boolean worded = o.near().stream()
                    .flatMap(n -> n.conditions().stream())
                    .noneMatch(c -> c.asks().isBlank() || c.found().isBlank());
            if (!told || !worded) {
                out.add(o.rule() + " is " + o.state() + ", and its conditions say otherwise: " + o.near());
            }
        }
        return out;
    }
}
