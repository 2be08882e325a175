package org.washwright.rule;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.task.Value;
import org.washwright.task.Vocabulary;

/**
 * Questions whose answers lead to a proposal for one attribute.
 *
 * @param id unique in the edition
 * @param title what it answers
 * @param type fact type it proposes a value for
 * @param attribute attribute it proposes a value for
 * @param basis where it comes from
 * @param sources what it cites
 * @param start id of the first question
 * @param questions by id, in the order of the file
 */
public record QuestionTree(
        String id,
        String title,
        String type,
        String attribute,
        Basis basis,
        List<Rule.Cite> sources,
        String start,
        Map<String, Question> questions)
        implements Vocabulary.Questions {

    /** A question and its answers. */
    public record Question(String id, String ask, String help, List<Answer> answers) {}

    /**
     * An answer.
     *
     * @param id unique in its question
     * @param say in words
     * @param next id of the next question; empty when it ends in a proposal
     * @param proposal proposed value when there is no next question
     */
    public record Answer(String id, String say, String next, Optional<Value> proposal) {}

    /** Keeps copies. */
    public QuestionTree {
        sources = List.copyOf(sources);
        questions = Collections.unmodifiableMap(new LinkedHashMap<>(questions));
    }

    @Override
    public String proposes() {
        return type + "." + attribute;
    }

    @Override
    public Vocabulary.Played play(List<String> answers) {
        List<String> path = new ArrayList<>();
        Question question = questions.get(start);
        for (String given : answers) {
            List<String> possible = question.answers().stream().map(Answer::id).toList();
            Optional<Answer> chosen = question.answers().stream()
                    .filter(a -> a.id().equals(given))
                    .findFirst();
            if (chosen.isEmpty()) {
                return new Vocabulary.Played(Optional.empty(), words(path), question.ask(), given, possible);
            }
            path.add(question.ask() + " " + chosen.get().say());
            if (chosen.get().next().isEmpty()) {
                return new Vocabulary.Played(chosen.get().proposal(), words(path), "", "", List.of());
            }
            question = questions.get(chosen.get().next());
        }
        return new Vocabulary.Played(
                Optional.empty(),
                words(path),
                question.ask(),
                "",
                question.answers().stream().map(Answer::id).toList());
    }

    private String words(List<String> path) {
        return title + ": " + String.join("; ", path);
    }
}
