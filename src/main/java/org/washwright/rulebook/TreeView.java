package org.washwright.rulebook;

import java.util.ArrayList;
import java.util.List;
import org.washwright.rule.Edition;
import org.washwright.rule.QuestionTree;
import org.washwright.task.Group;
import org.washwright.task.Attribute;

/** A question tree for display: its questions numbered, each answer with where it leads. */
record TreeView(
        String id, String title, String proposes, String basis, List<RuleView.Cited> sources, List<Asked> questions) {

    /** A question with its number. */
    record Asked(int number, String ask, String help, List<Reply> answers) {}

    /**
     * An answer.
     *
     * @param next number of the next question, 0 when it ends
     * @param proposal what it proposes in words, when it ends
     */
    record Reply(String say, int next, String proposal) {}

    static List<TreeView> all(Edition edition) {
        return edition.trees().values().stream().map(tree -> of(edition, tree)).toList();
    }

    private static TreeView of(Edition edition, QuestionTree tree) {
        List<String> order = new ArrayList<>(tree.questions().keySet());
        order.remove(tree.start());
        order.add(0, tree.start());
        Attribute attribute =
                Group.byFactType(tree.type()).flatMap(g -> g.attribute(tree.attribute())).orElseThrow();
        List<Asked> questions = new ArrayList<>();
        for (String id : order) {
            QuestionTree.Question q = tree.questions().get(id);
            questions.add(new Asked(
                    order.indexOf(id) + 1,
                    q.ask(),
                    q.help(),
                    q.answers().stream()
                            .map(a -> new Reply(
                                    a.say(),
                                    a.next().isEmpty() ? 0 : order.indexOf(a.next()) + 1,
                                    a.proposal()
                                            .map(v -> ValueText.of(edition.catalogue(), v, attribute.type()))
                                            .orElse("")))
                            .toList()));
        }
        return new TreeView(
                tree.id(),
                tree.title(),
                Group.byFactType(tree.type()).map(Group::label).orElse("") + ", " + attribute.label()
                       ,
                tree.basis().word(),
                tree.sources().stream().map(c -> RuleView.cited(edition, c)).toList(),
                questions);
    }
}
