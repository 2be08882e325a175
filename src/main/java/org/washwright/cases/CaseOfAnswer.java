package org.washwright.cases;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Asked;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;
import org.washwright.task.TaskWriter;

/**
 * Writes an answer down as a reference case: its task, and which processes stand, hang on what is not known or fall out by which
 * rule. It says what the edition made of the task then; whether that is right is for whoever keeps it to say.
 */
public final class CaseOfAnswer {
    private static final int LONGEST_ID = 50;

    private final Answer answer;
    private final Asked asked;
    private final Edition edition;
    private final String title;

    private CaseOfAnswer(Answer answer, Asked asked, Edition edition, String title) {
        this.answer = answer;
        this.asked = asked;
        this.edition = edition;
        this.title = title;
    }

    /**
     * The case as a file below {@code cases/}.
     *
     * @param asked the task and wishes of the answer
     * @param edition the edition that answered
     * @param title what the case shows
     */
    public static String yaml(Answer answer, Asked asked, Edition edition, String title) {
        return new CaseOfAnswer(answer, asked, edition, title).yaml();
    }

    /** An id of a case, and a name of its file, made from a title. */
    public static String id(String title) {
        String plain =
                title.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^[^a-z]+|-+$", "");
        String id = plain.length() <= LONGEST_ID
                ? plain
                : plain.substring(0, Math.max(plain.lastIndexOf('-', LONGEST_ID), 1));
        return id.isEmpty() ? "kept-case" : id;
    }

    private String yaml() {
        StringBuilder out = new StringBuilder("# Kept from an answer of the rulebook ")
                .append(edition.name())
                .append(
                        ". It says what was answered then: look at it before it counts, and say where it is known from.\n");
        if (!answer.request().assumptions().isEmpty()) {
            out.append(
                    "# The answer was asked for with other assumptions than the rulebook's; a case knows only those.\n");
        }
        out.append("cases:\n  - id: ").append(id(title)).append('\n');
        out.append("    title: ").append(TaskWriter.flow(title)).append('\n');
        out.append("    basis: common practice\n");
        out.append("    asOf: ").append(answer.request().asOf()).append('\n');
        CleaningTask task = new CleaningTask(
                title, asked.task().notes(), asked.task().lists(), asked.task().declared());
        out.append("    task:\n").append(TaskWriter.yaml(task, edition, "      "));
        out.append("    expect:\n");
        processes("proposes", "recommended", out);
        processes("conditional", "conditional", out);
        ruledOut(out);
        return out.toString();
    }

    private void processes(String key, String status, StringBuilder out) {
        List<String> processes = answer.candidates().stream()
                .filter(candidate -> candidate.status().equals(status))
                .map(Answer.Candidate::process)
                .sorted()
                .toList();
        if (!processes.isEmpty()) {
            out.append("      ")
                    .append(key)
                    .append(": ")
                    .append(TaskWriter.flow(processes))
                    .append('\n');
        }
    }

    private void ruledOut(StringBuilder out) {
        if (answer.ruledOut().isEmpty()) {
            return;
        }
        out.append("      rulesOut:\n");
        answer.ruledOut().stream()
                .sorted(Comparator.comparing(Answer.RuledOut::process))
                .forEach(fallen -> {
                    Map<String, Object> line = new LinkedHashMap<>();
                    line.put("process", fallen.process());
                    by(fallen).ifPresent(rule -> line.put("by", rule));
                    out.append("        - ").append(TaskWriter.flow(line)).append('\n');
                });
    }

    /** The rule of the first reason; empty when the reason rests on no rule. */
    private Optional<String> by(Answer.RuledOut fallen) {
        return fallen.reasons().stream()
                .flatMap(reason -> reason.firings().stream())
                .findFirst()
                .flatMap(n -> answer.firings().stream()
                        .filter(firing -> firing.n() == n)
                        .map(Answer.Firing::rule)
                        .findFirst());
    }
}
