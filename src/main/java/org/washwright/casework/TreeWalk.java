package org.washwright.casework;

import java.util.List;
import java.util.Map;
import org.washwright.rule.QuestionTree;
import org.washwright.task.Vocabulary;

/**
 * One question of a tree, asked between two sights of the form.
 *
 * @param title what the tree answers
 * @param field the field it is played for
 * @param path questions answered so far, in words
 * @param question the question now
 * @param help what helps to answer it
 * @param answers the answers
 * @param depth number of answers given
 * @param carried everything typed in the form, handed on
 */
record TreeWalk(
        String title,
        String field,
        String path,
        String question,
        String help,
        List<QuestionTree.Answer> answers,
        int depth,
        Map<String, List<String>> carried) {

    static TreeWalk of(QuestionTree tree, String field, FormFields fields) {
        List<String> given = FormDocument.answers(fields, field);
        QuestionTree.Question question = tree.questions().get(tree.start());
        for (String answer : given) {
            String next = question.answers().stream()
                    .filter(a -> a.id().equals(answer))
                    .map(QuestionTree.Answer::next)
                    .findFirst()
                    .orElse("");
            if (!next.isEmpty()) {
                question = tree.questions().get(next);
            }
        }
        Vocabulary.Played played = tree.play(given);
        return new TreeWalk(
                tree.title(),
                field,
                given.isEmpty() ? "" : played.path(),
                question.ask(),
                question.help(),
                question.answers(),
                given.size(),
                fields.without("do", "csrf-token").values());
    }
}
