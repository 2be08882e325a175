package org.washwright.casework;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.rule.Edition;
import org.washwright.rule.QuestionTree;
import org.washwright.task.Group;
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

    /**
     * Where a button leads.
     *
     * @param fields the form as it stands then
     * @param walk the question to ask next; empty when the form comes back
     */
    record Step(FormFields fields, Optional<TreeWalk> walk) {

        private static Step form(FormFields fields) {
            return new Step(fields, Optional.empty());
        }

        private static Step ask(QuestionTree tree, String field, FormFields fields) {
            return new Step(fields, Optional.of(of(tree, field, fields)));
        }
    }

    /** The first question of the tree that proposes a value for this field. */
    static Step start(Edition edition, FormFields fields, String field) {
        FormFields fresh = fields.without(field + ".answers");
        return edition.trees().values().stream()
                .filter(tree -> field.endsWith("." + tree.attribute())
                        && Group.byFactType(tree.type())
                                .filter(g -> field.startsWith(g.key() + "."))
                                .isPresent())
                .findFirst()
                .map(tree -> Step.ask(tree, field, fresh.with(field + ".tree", List.of(tree.id()))))
                .orElseGet(() -> Step.form(fresh));
    }

    /** An answer, given as field, colon, answer. A wrong one asks the same question again. */
    static Step answer(Edition edition, FormFields fields, String about) {
        int colon = about.indexOf(':');
        String field = colon < 0 ? about : about.substring(0, colon);
        QuestionTree tree = edition.trees().get(fields.first(field + ".tree"));
        if (tree == null || colon < 0) {
            return Step.form(fields);
        }
        String given = fields.first(field + ".answers");
        String said = about.substring(colon + 1);
        FormFields next = fields.with(field + ".answers", List.of(given.isEmpty() ? said : given + "," + said));
        Vocabulary.Played played = tree.play(FormDocument.answers(next, field));
        if (!played.badAnswer().isEmpty()) {
            return Step.ask(tree, field, fields);
        }
        return played.proposal().isPresent() ? Step.form(next) : Step.ask(tree, field, next);
    }

    /** One question back, or from the first one to the form. */
    static Step back(Edition edition, FormFields fields, String field) {
        List<String> given = FormDocument.answers(fields, field);
        QuestionTree tree = edition.trees().get(fields.first(field + ".tree"));
        if (tree == null || given.isEmpty()) {
            return Step.form(fields.without(field + ".tree", field + ".answers"));
        }
        String fewer = String.join(",", given.subList(0, given.size() - 1));
        return Step.ask(tree, field, fields.with(field + ".answers", List.of(fewer)));
    }

    private static TreeWalk of(QuestionTree tree, String field, FormFields fields) {
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
