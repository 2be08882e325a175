package org.washwright.explain.compare;

import java.util.List;
import java.util.Optional;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Design;
import org.washwright.explain.AnswerIndex;

/** One of the two answers that are compared. */
final class Side {

    /** How a rule is told from another firing of it: without numbers. */
    record FiringKey(String rule, boolean certain, String line, List<String> matched) {}

    private final AnswerIndex index;

    Side(Answer answer) {
        this.index = new AnswerIndex(answer);
    }

    Answer answer() {
        return index.answer();
    }

    Answer.Firing firing(int n) {
        return index.firing(n);
    }

    FiringKey key(int n) {
        Answer.Firing f = firing(n);
        return new FiringKey(f.rule(), f.certain(), f.line(), f.matched());
    }

    Optional<Answer.Rule> rule(String id) {
        return index.rule(id);
    }

    /** Title of a rule; its id when the answer does not cite it. */
    String title(String rule) {
        return rule(rule).map(Answer.Rule::title).orElse(rule);
    }

    Optional<Answer.Attribute> attribute(String ref) {
        return index.attribute(ref);
    }

    Optional<Design.Input> input(String ref) {
        return index.input(ref);
    }

    Optional<Design.Kind> kind(String id) {
        return index.kind(id);
    }

    Optional<Answer.Candidate> candidate(String process) {
        return index.candidate(process);
    }

    Optional<Answer.RuledOut> ruledOut(String process) {
        return index.ruledOut(process);
    }

    /** Every process, those that stand first and in order. */
    List<String> processes() {
        return index.processes();
    }

    /** Processes that stand, the first first. */
    List<String> standing() {
        return index.standing();
    }

    Optional<String> name(String process) {
        return candidate(process)
                .map(Answer.Candidate::name)
                .or(() -> ruledOut(process).map(Answer.RuledOut::name));
    }

    Comparison.Standing standing(String process) {
        return candidate(process)
                .map(c -> new Comparison.Standing(c.status(), standing().indexOf(process) + 1, c.low(), c.high()))
                .orElseGet(() ->
                        new Comparison.Standing(ruledOut(process).isPresent() ? "ruled out" : "none", 0, null, null));
    }

    /** How a source is cited: title, year and place. */
    String cited(Answer.Cite cite) {
        String title = index.source(cite.source())
                .map(s -> s.title() + " (" + s.year() + ")")
                .orElse(cite.source());
        return title + (cite.locator().isEmpty() ? "" : ", " + cite.locator());
    }
}
