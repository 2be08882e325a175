package org.washwright.editing.tree;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.washwright.document.Diagnostic;
import org.washwright.document.edit.Pointers;
import org.washwright.exchange.TreeCheck;
import org.washwright.problem.ProblemErrors;
import org.washwright.rule.Basis;
import org.washwright.rule.Edition;
import org.washwright.task.FieldType;
import org.washwright.task.Group;

/**
 * A question tree as its page shows it.
 *
 * @param tree what the file says
 * @param bases what it may rest on
 * @param attributes what it may propose a value for
 * @param words what an answer may propose, where that is a term
 * @param holds what a proposal looks like, in words
 * @param wrong what is wrong with the tree as a whole
 * @param count how many things are wrong
 * @param played the way that was played, if any
 */
record TreeSight(
        TreeData tree,
        List<String> bases,
        List<Choice> attributes,
        List<Choice> words,
        String holds,
        List<String> wrong,
        List<Card> cards,
        int count,
        Played played) {

    /** What the tree proposes a value for, in words. */
    public String about() {
        return attributes.stream()
                .filter(a -> a.id().equals(tree.head("proposes")))
                .map(Choice::name)
                .findFirst()
                .orElse(tree.head("proposes"));
    }

    /** A proposal with the names of its words. */
    public String called(String proposal) {
        return java.util.stream.Stream.of(proposal.split("\\|"))
                .map(String::strip)
                .map(word -> words.stream()
                        .filter(w -> w.id().equals(word) && !w.name().isEmpty())
                        .map(Choice::name)
                        .findFirst()
                        .orElse(word))
                .collect(java.util.stream.Collectors.joining(" or "));
    }

    /** What a question asks; its id where there is none. */
    public String asks(String question) {
        return tree.question(question)
                .map(TreeData.Question::ask)
                .filter(a -> !a.isEmpty())
                .orElse(question);
    }

    /** Something that may be chosen, with what it is called. */
    record Choice(String id, String name) {}

    /** A question with what is wrong about it. */
    record Card(TreeData.Question question, List<String> wrong) {}

    /**
     * A tree played so far.
     *
     * @param steps what was asked and answered
     * @param now what is asked next, if anything
     * @param proposal what it proposes; empty while questions are left
     * @param path the answers so far, as part of an address
     */
    record Played(List<Step> steps, Optional<TreeData.Question> now, String proposal, String path) {
        /** The address of an answer. */
        public String then(TreeData.Answer answer) {
            return path.isEmpty() ? answer.id() : path + "." + answer.id();
        }
    }

    /** A question and its answer. */
    record Step(String ask, String say) {}

    static TreeSight of(TreeData tree, TreeCheck check, Optional<Edition> words, String play) {
        Optional<FieldType> type = type(tree.head("proposes"));
        List<Card> cards = tree.questions().stream()
                .map(q -> new Card(q, told(check, Pointers.child("/questions", q.id()))))
                .toList();
        List<String> wrong = check.found().stream()
                .filter(d -> !d.place().pointer().startsWith("/questions/"))
                .map(TreeSight::told)
                .toList();
        return new TreeSight(
                tree,
                Arrays.stream(Basis.values()).map(Basis::word).toList(),
                allAttributes(),
                type.map(t -> terms(t, words)).orElse(List.of()),
                type.map(TreeSight::likeThis).orElse("a value of what the tree proposes"),
                wrong,
                cards,
                check.found().size(),
                played(tree, play));
    }

    private static List<String> told(TreeCheck check, String pointer) {
        return check.found().stream()
                .filter(d -> d.place().pointer().equals(pointer)
                        || d.place().pointer().startsWith(pointer + "/"))
                .map(TreeSight::told)
                .toList();
    }

    private static String told(Diagnostic d) {
        return (ProblemErrors.sentence(d.text()) + " " + ProblemErrors.sentence(d.advice())).strip();
    }

    private static Optional<FieldType> type(String proposes) {
        int dot = proposes.indexOf('.');
        return dot < 0
                ? Optional.empty()
                : Group.byFactType(proposes.substring(0, dot))
                        .flatMap(g -> g.attribute(proposes.substring(dot + 1)))
                        .map(a -> a.type());
    }

    private static String likeThis(FieldType type) {
        return type instanceof FieldType.NumberType n
                ? "a range or a quantity, for instance " + n.dimension().example() + ", or unknown"
                : "a word, several joined by |, or unknown";
    }

    private static List<Choice> terms(FieldType type, Optional<Edition> words) {
        if (!(type instanceof FieldType.TermType t)) {
            return List.of(new Choice("unknown", ""));
        }
        List<Choice> out = new ArrayList<>(List.of(new Choice("unknown", "")));
        words.ifPresent(w -> w.catalogue().ofKind(t.kind()).values().stream()
                .filter(term -> !term.isWithdrawn())
                .forEach(term -> out.add(new Choice(term.id(), term.name()))));
        return out;
    }

    private static List<Choice> allAttributes() {
        List<Choice> out = new ArrayList<>();
        for (Group group : Group.values()) {
            group.attributes().stream()
                    .filter(a -> !a.computed())
                    .forEach(a ->
                            out.add(new Choice(group.factType() + "." + a.name(), group.label() + ": " + a.label())));
        }
        return out;
    }

    private static Played played(TreeData tree, String play) {
        List<Step> steps = new ArrayList<>();
        Optional<TreeData.Question> now = tree.question(tree.head("start"));
        String proposal = "";
        List<String> path = new ArrayList<>();
        for (String id : play.isEmpty() ? List.<String>of() : List.of(play.split("\\."))) {
            Optional<TreeData.Answer> answer = now.flatMap(q -> q.answer(id));
            // An answer that is gone meanwhile ends the way where it can still be followed; so does one that leads
            // round.
            if (answer.isEmpty() || steps.size() > tree.questions().size()) {
                break;
            }
            path.add(id);
            steps.add(new Step(now.orElseThrow().ask(), answer.get().say()));
            proposal = answer.get().propose();
            now = tree.question(answer.get().next());
        }
        return new Played(steps, now, proposal, String.join(".", path));
    }
}
