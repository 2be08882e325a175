package org.washwright.reasons;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.washwright.assessment.Answer;
import org.washwright.casework.KeptAnswer;
import org.washwright.explain.compare.Comparison;
import org.washwright.explain.compare.Comparison.Cause;
import org.washwright.explain.compare.Comparison.ProcessChange;
import org.washwright.explain.compare.Comparison.Said;
import org.washwright.explain.compare.Comparison.Standing;
import org.washwright.pages.Figures;
import org.washwright.pages.Slope;

/**
 * A comparison as a page shows it.
 *
 * @param it the comparison
 * @param before the earlier answer
 * @param after the later one
 * @param slope the picture of both rankings
 */
public record ComparisonView(Comparison it, Panel before, Panel after, Slope slope) {

    private static final int FIRST = 3;

    /**
     * One of the answers.
     *
     * @param heading what it is, in two or three words
     * @param title the task
     * @param note who asked when, or that it is not kept
     * @param url where it stands; empty when it is not kept
     * @param rules where the rules of its edition stand
     * @param edition name of the edition
     */
    public record Panel(String heading, String title, String note, String url, String rules, String edition) {

        static Panel of(String heading, KeptAnswer kept) {
            return new Panel(
                    heading,
                    kept.task().title(),
                    kept.crumb(),
                    kept.url(),
                    rules(kept.view().editionId()),
                    kept.answer().request().edition());
        }

        /** An answer that nobody kept. */
        static Panel tried(String heading, KeptAnswer base) {
            return new Panel(
                    heading,
                    base.task().title(),
                    "tried, not kept",
                    "",
                    rules(base.view().editionId()),
                    base.answer().request().edition());
        }

        private static String rules(UUID edition) {
            return "/rulebooks/" + edition + "/rules";
        }
    }

    /** Findings of one rule. */
    public record ByRule(String title, String href, List<Said> said, int more) {}

    static ComparisonView of(Comparison comparison, Panel before, Panel after, Answer earlier, Answer later) {
        return new ComparisonView(comparison, before, after, Slope.of(earlier, later));
    }

    /** Where a cause can be read: the firing in a kept answer, else the rule in its edition; empty when it is no rule. */
    public String href(Cause cause) {
        if (!cause.kind().equals("rule")) {
            return "";
        }
        return rule(cause.side().equals("before") ? before : after, cause.id(), cause.firing());
    }

    private static String rule(Panel panel, String id, int firing) {
        return panel.url().isEmpty() ? panel.rules() + "#" + id : panel.url() + "/trace#firing-" + firing;
    }

    /** Findings of the later answer alone, by rule. */
    public List<ByRule> gained() {
        return byRule(it.gained(), after);
    }

    /** Findings of the earlier answer alone, by rule. */
    public List<ByRule> lost() {
        return byRule(it.lost(), before);
    }

    private static List<ByRule> byRule(List<Said> said, Panel panel) {
        Map<String, List<Said>> rules = new LinkedHashMap<>();
        said.forEach(
                s -> rules.computeIfAbsent(s.rule(), r -> new ArrayList<>()).add(s));
        return rules.values().stream()
                .map(list -> new ByRule(
                        list.get(0).title(),
                        rule(panel, list.get(0).rule(), list.get(0).firing()),
                        list.stream().limit(FIRST).toList(),
                        Math.max(0, list.size() - FIRST)))
                .toList();
    }

    /** Processes whose status, place or points differ. */
    public List<ProcessChange> moved() {
        return it.processes().stream()
                .filter(p -> !p.before().equals(p.after()))
                .toList();
    }

    /** Processes of both answers whose line, windows or figures differ. */
    public List<ProcessChange> lines() {
        return it.processes().stream()
                .filter(p -> !p.stages().isEmpty()
                        || !p.windows().isEmpty()
                        || !p.figures().isEmpty())
                .toList();
    }

    /** A place in words; a dash when it does not stand. */
    public String place(Standing s) {
        return s.stands() ? String.valueOf(s.place()) : "–";
    }

    /** Points as a table shows them; a dash when it does not stand. */
    public String points(Standing s) {
        return s.stands() ? Figures.span(s.low(), s.high()) : "–";
    }

    /** A status as people say it. */
    public String status(Standing s) {
        return s.status().equals("none") ? "not in this edition" : s.status();
    }

    /** The first causes, as many as the eye takes. */
    public List<Cause> first(List<Cause> causes) {
        return causes.stream().limit(FIRST).toList();
    }

    /** The causes behind the first ones. */
    public List<Cause> rest(List<Cause> causes) {
        return causes.subList(Math.min(FIRST, causes.size()), causes.size());
    }

    /** What stands before the name of a cause: on which side it holds, and what it is where it is no rule. */
    public String lead(Cause cause) {
        boolean gone = cause.side().equals("before");
        return switch (cause.kind()) {
            case "rule" -> gone ? "no longer: " : "";
            case "process" -> gone ? "no longer ahead: " : "now ahead: ";
            case "wish" -> "asked: ";
            case "edition" -> "other ";
            default -> gone ? "no longer: " : "";
        };
    }

    /** A value; a dash when there is none. */
    public String shown(String value) {
        return value.isEmpty() ? "–" : value;
    }

    /** How much of a line differs, in words. */
    public String tally(ProcessChange p) {
        List<String> parts = new ArrayList<>();
        count(parts, p.stages().size(), "stage");
        count(parts, p.windows().size(), "window");
        count(parts, p.figures().size(), "figure");
        return String.join(", ", parts);
    }

    private static void count(List<String> parts, int n, String what) {
        if (n > 0) {
            parts.add(n + " " + what + (n == 1 ? "" : "s"));
        }
    }

    /** What came of a stage, in words. */
    public String stage(Comparison.StageChange s) {
        return switch (s.kind()) {
            case "gained" -> "added as stage " + s.placeAfter();
            case "lost" -> "left out, was stage " + s.placeBefore();
            case "moved" -> "moved from stage " + s.placeBefore() + " to " + s.placeAfter();
            case "decided" -> "now decided otherwise";
            default ->
                String.join(
                        "; ",
                        s.factors().stream()
                                .map(f -> f.factor() + " " + f.after() + " instead of " + f.before())
                                .toList());
        };
    }
}
