package org.washwright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.assessment.Answer;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.assessment.IntendedVerdict;
import org.washwright.assessment.Ranking;

/** Writes an answer as plain text, with the rules behind every sentence in square brackets. */
final class AnswerText {

    private static final String SAFETY =
            "Figures are for planning. Safety data sheets, local codes and a competent person decide.";

    private static final int MOST_SHARES = 5;

    private final Answer answer;
    private final String hash;
    private final String title;
    private final PrintWriter out;
    private final Map<Integer, Answer.Firing> firings = new TreeMap<>();

    AnswerText(FrozenAnswer frozen, String title, PrintWriter out) {
        this.answer = frozen.answer();
        this.hash = frozen.hash();
        this.title = title;
        this.out = out;
        answer.firings().forEach(f -> firings.put(f.n(), f));
    }

    void write(boolean trace, boolean figures) {
        out.println(title);
        out.println();
        out.println(answer.headline().sentence());
        out.println(answer.headline().summary());
        answer.intended().ifPresent(this::intended);
        // Questions and cautions come before the processes: they stand where the eye is.
        sentences("Look at this again", answer.doubts());
        sentences(
                "Find out first",
                answer.questions().stream()
                        .map(q -> new Answer.Sentence(q.question() + " " + q.consequence(), q.firings()))
                        .toList());
        sentences("Take care", answer.cautions());
        answer.ranking().ifPresent(this::ranking);
        answer.candidates().forEach(this::candidate);
        if (figures) {
            new DesignText(answer, out).write();
        }
        if (!answer.ruledOut().isEmpty()) {
            out.println();
            out.println("Ruled out");
            answer.ruledOut()
                    .forEach(r -> r.reasons()
                            .forEach(s -> out.println("  " + r.name() + ": " + s.text() + rules(s.firings()))));
        }
        sentences("Prove it", answer.verifications());
        if (trace) {
            trace();
        }
        out.println();
        out.println(SAFETY);
        out.println("edition " + answer.request().edition() + ", meaning "
                + answer.request().meaningHash());
        out.println("answer  " + hash + " (" + answer.request().program() + ", as of "
                + answer.request().asOf() + ")");
    }

    private void intended(IntendedVerdict verdict) {
        out.println();
        out.println("The intended process");
        out.println("  " + verdict.text());
        verdict.reasons().forEach(s -> out.println("  - " + s.text() + rules(s.firings())));
        verdict.rank()
                .ifPresent(r -> out.println("  " + verdict.name() + ": place " + r.place() + " of " + r.of() + ", "
                        + span(r.low(), r.high()) + " points"));
        verdict.first()
                .ifPresent(f -> out.println(
                        "  " + (verdict.rank().isPresent() ? "clearly better: " : "first of those that may clean it: ")
                                + f.name() + ", " + span(f.low(), f.high()) + " points"));
        for (IntendedVerdict.Setting s : verdict.settings()) {
            String given = s.state().equals("not given") ? "" : " " + s.given();
            String allowed = s.window().isEmpty() ? "" : ", allowed " + s.window();
            out.println("  " + s.name() + given + ": " + s.state() + allowed + rules(s.firings()));
        }
    }

    private void ranking(Ranking ranking) {
        out.println();
        out.println("How firm the order is");
        if (!ranking.reason().isEmpty()) {
            out.println("  " + ranking.reason());
        }
        ranking.notes().forEach(n -> out.println("  mind: " + n));
        out.println("  points by " + ranking.weighing()
                + (ranking.consistency() == null
                        ? ""
                        : String.format(Locale.ROOT, ", consistency ratio %.3f", ranking.consistency())));
        ranking.shares().stream()
                .limit(MOST_SHARES)
                .forEach(s -> out.println("  first in "
                        + String.format(Locale.ROOT, "%.0f", s.share() * 100)
                        + " % of all weightings: " + s.name()));
    }

    private void candidate(Answer.Candidate c) {
        out.println();
        out.println(c.name() + ": " + c.status() + ", " + span(c.low(), c.high()) + " points");
        StringBuilder areas = new StringBuilder("  ");
        for (Answer.Area a : c.areas()) {
            areas.append(areas.length() > 2 ? ", " : "")
                    .append(a.name())
                    .append(' ')
                    .append(span(a.low(), a.high()));
        }
        out.println(areas);
        int n = 1;
        for (Answer.Stage s : c.stages()) {
            out.println("  " + n++ + ". " + s.name() + (s.certain() ? "" : " (if needed)") + rules(s.firings()));
            StringBuilder factors = new StringBuilder("     ");
            for (Answer.Factor f : s.factors()) {
                if (!f.words().equals("as usual")) {
                    factors.append(factors.length() > 5 ? "; " : "")
                            .append(f.factor())
                            .append(' ')
                            .append(f.words());
                }
            }
            out.println(factors);
        }
        DesignText.key(c, answer).forEach(line -> out.println("  = " + line));
        c.conditions().forEach(s -> out.println("  ~ " + s.text() + rules(s.firings())));
        c.cautions().forEach(s -> out.println("  ! " + s.text() + rules(s.firings())));
    }

    private void sentences(String heading, List<Answer.Sentence> list) {
        if (!list.isEmpty()) {
            out.println();
            out.println(heading);
            list.forEach(s -> out.println("  " + s.text() + rules(s.firings())));
        }
    }

    private String rules(List<Integer> numbers) {
        List<String> ids = numbers.stream()
                .map(firings::get)
                .map(Answer.Firing::rule)
                .distinct()
                .toList();
        return ids.isEmpty() ? "" : " [" + String.join(", ", ids) + "]";
    }

    private static String span(double low, double high) {
        String a = String.format(Locale.ROOT, "%.0f", low);
        String b = String.format(Locale.ROOT, "%.0f", high);
        return a.equals(b) ? a : a + " to " + b;
    }

    private void trace() {
        Map<String, Answer.Rule> rules = new TreeMap<>();
        answer.rules().forEach(r -> rules.put(r.id(), r));
        Map<String, Answer.Attribute> attributes = new TreeMap<>();
        answer.facts().forEach(f -> f.attributes().forEach(a -> attributes.put(a.ref(), a)));
        out.println();
        out.println("Trace");
        for (Answer.Firing f : answer.firings()) {
            Answer.Rule rule = rules.get(f.rule());
            out.println("  " + f.n() + ". " + rule.id() + " " + rule.title() + " (" + basis(rule) + ")"
                    + (f.certain() ? "" : ", undecided") + (f.line().isEmpty() ? "" : ", on the line of " + f.line()));
            f.uses().forEach(ref -> out.println("       " + read(ref, attributes)));
            f.held().forEach(ref -> out.println("       not known: " + ref));
            f.findings()
                    .forEach(x -> out.println("     -> " + x.verb() + " " + x.detail()
                            + (x.targets().isEmpty() ? "" : " for " + String.join(", ", x.targets())) + ": "
                            + x.text()));
        }
    }

    private String basis(Answer.Rule rule) {
        StringBuilder text = new StringBuilder(rule.basis());
        rule.sources()
                .forEach(c -> text.append("; ")
                        .append(c.source())
                        .append(c.locator().isEmpty() ? "" : ", " + c.locator())
                        .append(fromMemory(c) ? ", cited from memory" : ""));
        return text.append(rule.note().isEmpty() ? "" : "; note: " + rule.note())
                .toString();
    }

    private boolean fromMemory(Answer.Cite cite) {
        return answer.sources().stream().anyMatch(s -> s.id().equals(cite.source()) && !s.seen());
    }

    private static String read(String ref, Map<String, Answer.Attribute> attributes) {
        Answer.Attribute a = attributes.get(ref);
        if (a == null) {
            return ref;
        }
        Answer.Origin o = a.origin();
        String source = o.source().isEmpty() ? "" : ", " + o.source();
        String warnings = o.warnings().isEmpty() ? "" : "; mind: " + String.join("; ", o.warnings());
        return ref + " = " + a.value() + " (" + o.kind() + (o.detail().isEmpty() ? "" : ": " + o.detail()) + source
                + warnings + ")";
    }
}
