package org.washwright.explain.replay;

import java.util.List;
import java.util.Optional;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Design;
import org.washwright.explain.AnswerIndex;
import org.washwright.explain.replay.Step.Read;
import org.washwright.task.Group;

/** The answer that is told, by its references, with the names by which steps call things. */
final class ToldAnswer {

    static final String CONCLUSIONS = "conclusions/";
    static final String LINES = "line/";

    private final AnswerIndex index;

    ToldAnswer(Answer answer) {
        this.index = new AnswerIndex(answer);
    }

    Answer answer() {
        return index.answer();
    }

    Optional<Answer.Fact> fact(String id) {
        return index.fact(id);
    }

    Optional<Answer.Attribute> attribute(String ref) {
        return index.attribute(ref);
    }

    /** The fact that an attribute of the answer belongs to. */
    Answer.Fact owner(String ref) {
        return index.owner(ref).orElseThrow();
    }

    Answer.Firing firing(int n) {
        return index.firing(n);
    }

    /** Processes in the order of the answer: candidates first, then those ruled out. */
    List<String> processes() {
        return index.processes();
    }

    String processName(String id) {
        return index.process(id);
    }

    /** Title of a rule; that of its table for a row, which is told apart by what it says. */
    String ruleTitle(String rule) {
        return index.rule(rule).map(r -> r.title().replace(": " + rule, "")).orElse(rule);
    }

    /** What a reader calls a kind of figure. */
    String figureName(String kind) {
        return index.kind(kind).map(Design.Kind::label).orElse(kind);
    }

    Optional<Answer.Candidate> candidate(String process) {
        return index.candidate(process);
    }

    static boolean isConclusion(Answer.Fact fact) {
        return fact.id().startsWith(CONCLUSIONS);
    }

    static boolean isOfLine(Answer.Fact fact) {
        return fact.id().startsWith(LINES);
    }

    /** True for processes and what they meet, which are there for every task. */
    static boolean isOfEdition(Answer.Fact fact) {
        return !isConclusion(fact) && (isOfLine(fact) || fact.id().contains("process/"));
    }

    /** What a reader calls a fact, an attribute with the fact it is of, or a list of the task. */
    String name(String ref) {
        Answer.Attribute attribute = index.attribute(ref).orElse(null);
        if (attribute != null) {
            return attribute.label() + " of " + owner(ref).name();
        }
        return fact(ref)
                .map(Answer.Fact::name)
                .or(() -> Group.byKey(ref).map(Group::heading))
                .orElse(ref);
    }

    /** Something that was read, with its value. */
    Read read(String ref) {
        Answer.Attribute attribute = index.attribute(ref).orElse(null);
        return new Read(ref, name(ref), attribute == null ? "" : attribute.value(), true);
    }

    /** A firing that was read, by the rule that fired; its reference is the id of its step. */
    Read read(Answer.Firing firing, String value) {
        return new Read(FiringSteps.id(firing), ruleTitle(firing.rule()), value, firing.certain());
    }
}
