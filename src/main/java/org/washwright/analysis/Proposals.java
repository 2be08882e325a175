package org.washwright.analysis;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.Outcome;
import org.washwright.assessment.RefusedTask;
import org.washwright.assessment.Wishes;
import org.washwright.cases.RuleReach;
import org.washwright.engine.Firing;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.rule.Basis;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;
import org.washwright.task.CleaningTask;
import org.washwright.task.TaskWriter;

/**
 * Writes examples of rules as case documents, ready to be reviewed. They say what the edition makes of a task today; whether
 * that is right is for the reviewer to say.
 */
public final class Proposals {

    private static final int LONGEST_ID = 44;
    private static final int LONGEST_TITLE = 180;

    private final Edition edition;
    private final Assessor assessor;
    private final Set<String> ids = new TreeSet<>();

    /** Proposals for an edition. */
    public Proposals(Edition edition) {
        this.edition = edition;
        this.assessor = Assessor.of(edition, SweepInference.factory());
    }

    /** A document of cases, one for each example. */
    public String yaml(Map<String, List<Example>> examples) {
        StringBuilder out = new StringBuilder("# Proposed from the rules of ")
                .append(edition.name())
                .append(". Each says what the edition does now: look at it before it counts.\ncases:\n");
        int start = out.length();
        examples.forEach((id, list) -> {
            Rule rule = edition.rule(id).orElseThrow();
            list.forEach(e -> one(rule, e, out));
        });
        if (out.length() == start) {
            out.replace(start - 1, start, " []\n");
        }
        return out.toString();
    }

    private void one(Rule rule, Example example, StringBuilder out) {
        Outcome outcome;
        try {
            outcome = assessor.outcome(example.task(), Wishes.on(example.asOf()));
        } catch (RefusedTask e) {
            throw new IllegalStateException("an example was evaluated before, and is refused now", e);
        }
        List<Firing> firings = outcome.of(rule.id());
        boolean fires = firings.stream().anyMatch(Firing::certain);
        if (fires != example.fires() || !fires && !firings.isEmpty()) {
            // Another rule of the whole edition keeps this one from showing what it does alone.
            return;
        }
        String title = title(rule, example);
        CleaningTask task = example.titled(title).task();
        out.append("  - id: ").append(id(rule)).append('\n');
        out.append("    title: ").append(TaskWriter.flow(title)).append('\n');
        Basis basis = rule.sources().isEmpty() ? Basis.COMMON_PRACTICE : rule.basis();
        out.append("    basis: ").append(basis.word()).append('\n');
        if (!rule.sources().isEmpty()) {
            List<String> cites = rule.sources().stream()
                    .map(c -> c.locator().isEmpty() ? c.source() : c.source() + ", " + c.locator())
                    .toList();
            out.append("    source: ")
                    .append(TaskWriter.flow(String.join("; ", cites)))
                    .append('\n');
        }
        out.append("    asOf: ").append(example.asOf()).append('\n');
        out.append("    task:\n").append(TaskWriter.yaml(task, edition, "      "));
        out.append("    expect:\n");
        expect(rule, fires, outcome, out);
    }

    private static void expect(Rule rule, boolean fires, Outcome outcome, StringBuilder out) {
        if (!fires) {
            out.append("      doesNotFire: [")
                    .append(TaskWriter.flow(rule.id()))
                    .append("]\n");
            return;
        }
        List<Firing> certain =
                outcome.of(rule.id()).stream().filter(Firing::certain).toList();
        Map<String, Object> reach = new LinkedHashMap<>();
        reach.put("rule", rule.id());
        reach.put("for", List.copyOf(RuleReach.about(certain)));
        reach.put("on", List.copyOf(RuleReach.on(certain)));
        out.append("      fires:\n        - ").append(TaskWriter.flow(reach)).append('\n');
        Map<List<String>, Set<String>> said = new LinkedHashMap<>();
        certain.forEach(f -> outcome.said(f)
                .forEach((Answer.Finding x) -> said.computeIfAbsent(List.of(x.verb(), x.detail()), k -> new TreeSet<>())
                        .addAll(x.targets())));
        out.append("      says:\n");
        said.forEach((what, targets) -> {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("rule", rule.id());
            one.put("verb", what.get(0));
            one.put("detail", what.get(1));
            one.put("for", List.copyOf(targets));
            out.append("        - ").append(TaskWriter.flow(one)).append('\n');
        });
    }

    private String title(Rule rule, Example example) {
        String about =
                example.test().map(t -> " (" + TestWords.of(t, edition) + ")").orElse("");
        String title = rule.id() + ", " + rule.title() + ": " + (example.fires() ? "fires, " : "does not fire, ")
                + example.words() + about;
        return title.length() > LONGEST_TITLE ? title.substring(0, LONGEST_TITLE) : title;
    }

    private String id(Rule rule) {
        String plain = rule.id().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
        String start = "rule-" + plain.substring(0, Math.min(LONGEST_ID, plain.length()));
        int n = 1;
        while (!ids.add(start + "-" + n)) {
            n++;
        }
        return start + "-" + n;
    }
}
