package org.washwright.rulebook;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import org.washwright.engine.Words;
import org.washwright.problem.NotFound;
import org.washwright.rule.Edition;
import org.washwright.rule.QuestionTree;
import org.washwright.task.Attribute;
import org.washwright.task.FieldType;
import org.washwright.task.Group;
import org.washwright.task.Value;

/**
 * A question tree for display, unrolled: a question stands below the answer that leads to it; where a second answer leads
 * to the same question, it only points there.
 *
 * @param id its id
 * @param title what it answers
 * @param proposes what it proposes a value for, in words
 * @param basis where it comes from
 * @param sources what it cites
 * @param questions number of its questions
 * @param start the first question
 */
record TreeView(
        String id,
        String title,
        String proposes,
        String basis,
        List<RuleView.Cited> sources,
        int questions,
        Asked start) {

    /** A question with its number. */
    record Asked(int number, String ask, String help, List<Reply> answers) {}

    /**
     * An answer.
     *
     * @param next the next question, when it stands here
     * @param again number of the next question, when it stands elsewhere; else 0
     * @param proposals what it proposes, when it ends
     */
    record Reply(String say, Optional<Asked> next, int again, List<Proposal> proposals) {}

    /** A proposed term, with the kind and id that its glossary entry goes by; no kind when nothing is proposed. */
    record Proposal(String kind, String id, String name) {}

    static List<TreeView> all(Edition edition) {
        return edition.trees().values().stream()
                .map(tree -> new Unroll(edition, tree, new HashMap<>()).view())
                .toList();
    }

    static TreeView of(Edition edition, String id) {
        return Optional.ofNullable(edition.trees().get(id))
                .map(tree -> new Unroll(edition, tree, new HashMap<>()).view())
                .orElseThrow(() -> NotFound.of("question tree", id));
    }

    private record Unroll(Edition edition, QuestionTree tree, Map<String, Integer> numbers) {

        TreeView view() {
            Asked first = asked(tree.start());
            return new TreeView(
                    tree.id(),
                    tree.title(),
                    Group.byFactType(tree.type())
                            .map(g -> g.label().equals(attribute().label())
                                    ? g.label()
                                    : g.label() + ", " + attribute().label())
                            .orElse(""),
                    tree.basis().word(),
                    tree.sources().stream().map(c -> RuleView.cited(edition, c)).toList(),
                    tree.questions().size(),
                    first);
        }

        private Attribute attribute() {
            return Group.byFactType(tree.type())
                    .flatMap(g -> g.attribute(tree.attribute()))
                    .orElseThrow();
        }

        private Asked asked(String id) {
            QuestionTree.Question question = tree.questions().get(id);
            int number = numbers.size() + 1;
            numbers.put(id, number);
            return new Asked(
                    number,
                    question.ask(),
                    question.help(),
                    question.answers().stream().map(this::reply).toList());
        }

        private Reply reply(QuestionTree.Answer answer) {
            if (answer.next().isEmpty()) {
                return new Reply(
                        answer.say(),
                        Optional.empty(),
                        0,
                        answer.proposal().map(this::proposals).orElse(List.of()));
            }
            Integer known = numbers.get(answer.next());
            return known == null
                    ? new Reply(answer.say(), Optional.of(asked(answer.next())), 0, List.of())
                    : new Reply(answer.say(), Optional.empty(), known, List.of());
        }

        private List<Proposal> proposals(Value value) {
            FieldType type = attribute().type();
            SortedSet<String> terms = value instanceof Value.OneOf o
                    ? o.terms()
                    : value instanceof Value.AllOf a ? a.terms() : new TreeSet<>();
            if (terms.isEmpty() || !(type instanceof FieldType.TermType t) || t.isFlag()) {
                return List.of(new Proposal("", "", new Words(edition.catalogue()).value(value, type, Words.COMPUTED)));
            }
            return terms.stream()
                    .map(id -> new Proposal(t.kind(), id, edition.catalogue().name(t.kind(), id)))
                    .toList();
        }
    }
}
