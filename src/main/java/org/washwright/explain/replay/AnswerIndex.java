package org.washwright.explain.replay;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.assessment.Answer;
import org.washwright.explain.replay.Step.Read;
import org.washwright.task.Group;

/** An answer by its references: facts, attributes, firings, rules and processes. */
final class AnswerIndex {

    static final String CONCLUSIONS = "conclusions/";
    static final String LINES = "line/";

    private final Answer answer;
    private final Map<String, Answer.Fact> facts = new LinkedHashMap<>();
    private final Map<String, Answer.Fact> owners = new HashMap<>();
    private final Map<String, Answer.Attribute> attributes = new LinkedHashMap<>();
    private final Map<Integer, Answer.Firing> firings = new HashMap<>();
    private final Map<String, Answer.Rule> rules = new HashMap<>();
    private final Map<String, String> processes = new LinkedHashMap<>();

    AnswerIndex(Answer answer) {
        this.answer = answer;
        for (Answer.Fact fact : answer.facts()) {
            facts.put(fact.id(), fact);
            for (Answer.Attribute attribute : fact.attributes()) {
                attributes.put(attribute.ref(), attribute);
                owners.put(attribute.ref(), fact);
            }
        }
        answer.firings().forEach(f -> firings.put(f.n(), f));
        answer.rules().forEach(r -> rules.put(r.id(), r));
        answer.candidates().forEach(c -> processes.put(c.process(), c.name()));
        answer.ruledOut().forEach(r -> processes.put(r.process(), r.name()));
    }

    Answer answer() {
        return answer;
    }

    Optional<Answer.Fact> fact(String id) {
        return Optional.ofNullable(facts.get(id));
    }

    Optional<Answer.Attribute> attribute(String ref) {
        return Optional.ofNullable(attributes.get(ref));
    }

    /** The fact that an attribute of the answer belongs to. */
    Answer.Fact owner(String ref) {
        return owners.get(ref);
    }

    Answer.Firing firing(int n) {
        return firings.get(n);
    }

    /** Processes in the order of the answer: candidates first, then those ruled out. */
    List<String> processes() {
        return List.copyOf(processes.keySet());
    }

    String processName(String id) {
        return processes.getOrDefault(id, id);
    }

    /** Title of a rule; that of its table for a row, which is told apart by what it says. */
    String ruleTitle(String rule) {
        Answer.Rule known = rules.get(rule);
        return known == null ? rule : known.title().replace(": " + rule, "");
    }

    /** What a reader calls a kind of figure. */
    String figureName(String kind) {
        return answer.figures().stream()
                .filter(k -> k.id().equals(kind))
                .map(k -> k.label())
                .findFirst()
                .orElse(kind);
    }

    Optional<Answer.Candidate> candidate(String process) {
        return answer.candidates().stream()
                .filter(c -> c.process().equals(process))
                .findFirst();
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
        Answer.Attribute attribute = attributes.get(ref);
        if (attribute != null) {
            return attribute.label() + " of " + owners.get(ref).name();
        }
        if (facts.containsKey(ref)) {
            return facts.get(ref).name();
        }
        return Group.byKey(ref).map(Group::heading).orElse(ref);
    }

    /** Something that was read, with its value. */
    Read read(String ref) {
        Answer.Attribute attribute = attributes.get(ref);
        return new Read(ref, name(ref), attribute == null ? "" : attribute.value(), true);
    }

    /** A firing that was read, by the rule that fired; its reference is the id of its step. */
    Read read(Answer.Firing firing, String value) {
        return new Read(FiringSteps.id(firing), ruleTitle(firing.rule()), value, firing.certain());
    }
}
