package org.washwright.explain.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.washwright.assessment.Answer;
import org.washwright.engine.FactBase;
import org.washwright.engine.Unmet;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;
import org.washwright.rule.RuleSentence;

/** Holds predictions against an answer, reason by reason. */
public final class Comparison {

    private final Exercise exercise;
    private final Answer answer;
    private final Edition edition;
    private final FactBase facts;

    /**
     * Comparisons for one exercise.
     *
     * @param answer the answer that the exercise was made from
     * @param edition the edition that gave it
     * @param facts all facts of the task, conclusions included: what says why a rule did not fire
     */
    public Comparison(Exercise exercise, Answer answer, Edition edition, FactBase facts) {
        this.exercise = exercise;
        this.answer = answer;
        this.edition = edition;
        this.facts = facts;
    }

    /** What was right, what was missed, and what was thought in vain. */
    public Feedback of(Prediction prediction) {
        List<Feedback.Judged> judged = new ArrayList<>();
        for (Exercise.Asked asked : exercise.processes()) {
            Truth.of(answer, asked.process())
                    .ifPresent(t -> judged.add(judged(
                            t, prediction.guess(asked.process()).orElse(Prediction.Guess.nothing(asked.process())))));
        }
        String first = first();
        return new Feedback(
                (int) judged.stream().filter(Feedback.Judged::isStatusRight).count(),
                judged.size(),
                judged.stream().mapToInt(j -> j.right().size()).sum(),
                judged.stream()
                        .mapToInt(j -> j.right().size() + j.missed().size())
                        .sum(),
                judged.stream().mapToInt(j -> j.inVain().size()).sum(),
                first.equals(prediction.first()),
                name(prediction.first()),
                name(first),
                judged);
    }

    /** Everything right: what somebody would say who knows the answer. */
    public Prediction key() {
        List<Prediction.Guess> guesses = exercise.processes().stream()
                .flatMap(a -> Truth.of(answer, a.process()).stream())
                .map(t -> new Prediction.Guess(
                        t.process(),
                        t.status(),
                        t.reasons().stream().map(Truth.Reason::rule).toList(),
                        ""))
                .toList();
        return new Prediction(first(), guesses);
    }

    private String first() {
        return answer.candidates().stream()
                .map(Answer.Candidate::process)
                .filter(p -> exercise.asked(p).isPresent())
                .findFirst()
                .orElse(Prediction.NONE);
    }

    private String name(String process) {
        return process.equals(Prediction.NONE)
                ? "none of them"
                : exercise.asked(process).map(Exercise.Asked::name).orElse("");
    }

    private Feedback.Judged judged(Truth truth, Prediction.Guess guess) {
        List<Feedback.Reason> right = new ArrayList<>();
        List<Feedback.Reason> missed = new ArrayList<>();
        for (Truth.Reason reason : truth.reasons()) {
            (guess.reasons().contains(reason.rule()) ? right : missed)
                    .add(card(reason.rule(), reason.text(), reason.firings(), ""));
        }
        List<Feedback.Reason> inVain = guess.reasons().stream()
                .distinct()
                .filter(r -> truth.reasons().stream().noneMatch(t -> t.rule().equals(r)))
                .map(this::silent)
                .toList();
        return new Feedback.Judged(
                truth.process(), truth.name(), guess.status(), truth.status(), right, missed, inVain, guess.words());
    }

    private Feedback.Reason silent(String rule) {
        Optional<Rule> known = edition.rule(rule);
        String text = known.map(r -> RuleSentence.of(edition, r).words()).orElse("");
        return card(rule, text, List.of(), known.map(this::whyNot).orElse(""));
    }

    private String whyNot(Rule rule) {
        List<Unmet> unmet = Unmet.of(rule, facts);
        if (unmet.isEmpty()) {
            return "Each of its conditions can be met, but not all of them together.";
        }
        List<String> clauses = unmet.stream()
                .map(u -> RuleSentence.clause(edition, rule, u.pattern(), u.tests()))
                .toList();
        return "Not so here: " + String.join("; ", clauses) + ".";
    }

    private Feedback.Reason card(String rule, String text, List<Integer> firings, String whyNot) {
        Optional<Rule> known = edition.rule(rule);
        return new Feedback.Reason(
                rule,
                known.map(r -> RuleName.of(edition, r)).orElse(rule),
                text,
                known.map(r -> r.basis().word()).orElse(""),
                known.map(this::sources).orElse(List.of()),
                firings,
                whyNot);
    }

    private List<String> sources(Rule rule) {
        return rule.sources().stream()
                .map(c -> {
                    Edition.Source source = edition.sources().get(c.source());
                    String what = source == null ? c.source() : source.title() + " (" + source.year() + ")";
                    String seen = source != null && !source.seen() ? ", cited from memory" : "";
                    return what + (c.locator().isEmpty() ? "" : ", " + c.locator()) + seen;
                })
                .toList();
    }
}
