package org.washwright.explain.exercise;

import java.util.ArrayList;
import java.util.List;
import org.washwright.assessment.Answer;

/**
 * What an answer was told of its task, and nothing that it made of it.
 *
 * @param parts the things that were described
 */
public record TaskInWords(List<Part> parts) {

    /** Something described, such as a material. */
    public record Part(String name, List<Line> lines) {}

    /** One attribute; {@code known} is false where nobody knows it. */
    public record Line(String label, String value, boolean known) {}

    /** Keeps a copy. */
    public TaskInWords {
        parts = List.copyOf(parts);
    }

    /** The task of an answer. What does not apply is left out, as is what nobody was asked. */
    public static TaskInWords of(Answer answer) {
        List<Part> parts = new ArrayList<>();
        for (Answer.Fact fact : answer.facts()) {
            List<Line> lines = fact.attributes().stream()
                    .filter(a -> a.origin().kind().equals("given")
                            || a.origin().kind().equals("question tree"))
                    .filter(a -> !a.knowledge().equals("not applicable"))
                    .map(a -> new Line(
                            a.label(),
                            a.knowledge().equals("unknown") ? "not known" : a.value(),
                            !a.knowledge().equals("unknown")))
                    .toList();
            if (!lines.isEmpty()) {
                parts.add(new Part(fact.name(), lines));
            }
        }
        return new TaskInWords(parts);
    }
}
