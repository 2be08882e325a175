package org.washwright.explain.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Design;

/** Look-ups in one answer, each made once. */
final class AnswerIndex {

    /** How a rule is told from another firing of it: without numbers. */
    record FiringKey(String rule, boolean certain, String line, List<String> matched) {}

    private final Answer answer;
    private final Map<Integer, Answer.Firing> firings = new HashMap<>();
    private final Map<String, Answer.Rule> rules = new HashMap<>();
    private final Map<String, Answer.Source> sources = new HashMap<>();
    private final Map<String, Answer.Attribute> attributes = new HashMap<>();
    private final Map<String, Design.Input> inputs = new HashMap<>();
    private final Map<String, Design.Kind> kinds = new HashMap<>();
    private final Map<String, String> names = new LinkedHashMap<>();
    private final Map<String, Answer.Candidate> candidates = new LinkedHashMap<>();
    private final Map<String, Answer.RuledOut> out = new LinkedHashMap<>();
    private final List<String> order = new ArrayList<>();

    AnswerIndex(Answer answer) {
        this.answer = answer;
        answer.firings().forEach(f -> firings.put(f.n(), f));
        answer.rules().forEach(r -> rules.put(r.id(), r));
        answer.sources().forEach(s -> sources.put(s.id(), s));
        answer.facts().forEach(f -> f.attributes().forEach(a -> attributes.put(a.ref(), a)));
        answer.inputs().forEach(i -> inputs.put(i.ref(), i));
        answer.figures().forEach(k -> kinds.put(k.id(), k));
        answer.candidates().forEach(c -> {
            candidates.put(c.process(), c);
            names.put(c.process(), c.name());
            order.add(c.process());
        });
        answer.ruledOut().forEach(r -> {
            out.put(r.process(), r);
            names.put(r.process(), r.name());
        });
    }

    Answer answer() {
        return answer;
    }

    Answer.Firing firing(int n) {
        Answer.Firing firing = firings.get(n);
        if (firing == null) {
            throw new IllegalArgumentException("the answer names a firing " + n + " that it does not hold");
        }
        return firing;
    }

    FiringKey key(int n) {
        Answer.Firing f = firing(n);
        return new FiringKey(f.rule(), f.certain(), f.line(), f.matched());
    }

    Optional<Answer.Rule> rule(String id) {
        return Optional.ofNullable(rules.get(id));
    }

    /** Title of a rule; its id when the answer does not cite it. */
    String title(String rule) {
        return rule(rule).map(Answer.Rule::title).orElse(rule);
    }

    Optional<Answer.Attribute> attribute(String ref) {
        return Optional.ofNullable(attributes.get(ref));
    }

    Optional<Design.Input> input(String ref) {
        return Optional.ofNullable(inputs.get(ref));
    }

    Optional<Design.Kind> kind(String id) {
        return Optional.ofNullable(kinds.get(id));
    }

    Optional<Answer.Candidate> candidate(String process) {
        return Optional.ofNullable(candidates.get(process));
    }

    Optional<Answer.RuledOut> ruledOut(String process) {
        return Optional.ofNullable(out.get(process));
    }

    /** Every process, those that stand first and in order. */
    List<String> processes() {
        return List.copyOf(names.keySet());
    }

    /** Processes that stand, the first first. */
    List<String> standing() {
        return order;
    }

    Optional<String> name(String process) {
        return Optional.ofNullable(names.get(process));
    }

    Comparison.Standing standing(String process) {
        return candidate(process)
                .map(c -> new Comparison.Standing(c.status(), order.indexOf(process) + 1, c.low(), c.high()))
                .orElseGet(
                        () -> new Comparison.Standing(out.containsKey(process) ? "ruled out" : "none", 0, null, null));
    }

    /** How a source is cited: title, year and place. */
    String cited(Answer.Cite cite) {
        Answer.Source source = sources.get(cite.source());
        String title = source == null ? cite.source() : source.title() + " (" + source.year() + ")";
        return title + (cite.locator().isEmpty() ? "" : ", " + cite.locator());
    }
}
