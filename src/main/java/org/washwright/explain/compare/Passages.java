package org.washwright.explain.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.washwright.assessment.Answer;
import org.washwright.explain.compare.Comparison.SentenceChange;

/** Sentences that only one of two answers holds. */
final class Passages {

    private Passages() {}

    static List<SentenceChange> between(Causes causes, List<Answer.Sentence> before, List<Answer.Sentence> after) {
        Map<String, List<Integer>> old = byText(before);
        Map<String, List<Integer>> now = byText(after);
        List<SentenceChange> out = new ArrayList<>();
        now.forEach((text, firings) -> {
            if (!old.containsKey(text)) {
                out.add(new SentenceChange(true, text, causes.orAsked(causes.of(Causes.AFTER, firings))));
            }
        });
        old.forEach((text, firings) -> {
            if (!now.containsKey(text)) {
                out.add(new SentenceChange(false, text, causes.orAsked(causes.of(Causes.BEFORE, firings))));
            }
        });
        return List.copyOf(out);
    }

    /** Questions by what they ask; what hangs on them may differ all the same. */
    static List<SentenceChange> questions(Causes causes) {
        return between(
                causes,
                asked(causes.before().answer().questions()),
                asked(causes.after().answer().questions()));
    }

    private static List<Answer.Sentence> asked(List<Answer.Question> questions) {
        return questions.stream()
                .map(q -> new Answer.Sentence(q.question(), q.firings()))
                .toList();
    }

    private static Map<String, List<Integer>> byText(List<Answer.Sentence> sentences) {
        Map<String, List<Integer>> out = new LinkedHashMap<>();
        sentences.forEach(
                s -> out.computeIfAbsent(s.text(), k -> new ArrayList<>()).addAll(s.firings()));
        return out;
    }
}
