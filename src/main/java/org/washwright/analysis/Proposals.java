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
import org.washwright.task.Value;

/**
 * Writes examples of rules as case documents, ready to be reviewed. They say what the edition makes of a task today; whether
 * that is right is for the reviewer to say.
 */
public final class Proposals {

    private static final int LONGEST_ID = 44;
    private static final int LONGEST_VALUE = 40;
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

    /** A document of what the cases at hand do not show yet. */
    public String yaml(MissingCases.Found found) {
        StringBuilder out = new StringBuilder("# Proposed from the rules of ")
                .append(edition.name())
                .append(
                        ": one thing is changed in a case at hand. Each says what the edition does now: look at it before it"
                                + " counts.\ncases:\n");
        int start = out.length();
        found.changes().forEach(c -> change(c, out));
        found.examples()
                .forEach((id, list) -> list.forEach(e -> one(edition.rule(id).orElseThrow(), e, out)));
        if (out.length() == start) {
            out.replace(start - 1, start, " []\n");
        }
        found.notFound()
                .forEach(id -> out.append("# Nothing was found for ").append(id).append(".\n"));
        return out.toString();
    }

    private void change(MissingCases.Change change, StringBuilder out) {
        Rule first = edition.rule(change.holdsBack().get(0)).orElseThrow();
        int more = change.holdsBack().size() - 1;
        Map<String, Object> set = set(change);
        String value = TaskWriter.flow(set.values().iterator().next());
        String title = first.id() + (more == 0 ? " stays silent" : " and " + more + " more stay silent") + " when "
                + words(change.pointer()) + " is " + (value.length() > LONGEST_VALUE ? "otherwise" : value);
        out.append("  - id: ").append(id(first)).append('\n');
        out.append("    title: ").append(TaskWriter.flow(title)).append('\n');
        basis(first, out);
        out.append("    change: {of: ")
                .append(change.of())
                .append(", set: ")
                .append(TaskWriter.flow(set))
                .append("}\n    expect:\n      doesNotFire: ")
                .append(TaskWriter.flow(change.holdsBack()))
                .append('\n');
    }

    private static String words(String pointer) {
        return pointer.substring(1).replaceAll("/[0-9]+/", " ").replace('/', ' ');
    }

    /** The one attribute, or the whole list where entries were taken away or the list is an open one. */
    private Map<String, Object> set(MissingCases.Change change) {
        Map<String, Object> data = TaskWriter.data(change.task(), edition);
        String[] steps = change.pointer().substring(1).split("/", -1);
        Object value = data.get(steps[0]);
        for (int i = 1; i < steps.length && value != null; i++) {
            if (value instanceof List<?> list && steps[i].matches("[0-9]+")) {
                value = list.get(Integer.parseInt(steps[i]));
            } else if (value instanceof Map<?, ?> map && (map.containsKey(steps[i]) || !map.containsKey("open"))) {
                value = map.containsKey(steps[i]) ? map.get(steps[i]) : Value.NOT_APPLICABLE.knowledge();
            } else {
                return Map.of("/" + steps[0], data.get(steps[0]));
            }
        }
        return Map.of(change.pointer(), value);
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
        basis(rule, out);
        out.append("    asOf: ").append(example.asOf()).append('\n');
        out.append("    task:\n").append(TaskWriter.yaml(task, edition, "      "));
        out.append("    expect:\n");
        expect(rule, fires, outcome, out);
    }

    private static void basis(Rule rule, StringBuilder out) {
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
        // Rows of a table carry their id in their title.
        String named = rule.title().contains(rule.id()) ? rule.title() : rule.id() + ", " + rule.title();
        String title = named + ": " + (example.fires() ? "fires, " : "does not fire, ") + example.words() + about;
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
