package org.washwright.explain.exercise;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.washwright.assessment.Answer;
import org.washwright.document.Hashes;
import org.washwright.explain.exercise.Exercise.Asked;
import org.washwright.explain.exercise.Exercise.Choice;
import org.washwright.rule.Edition;
import org.washwright.rule.Effect;
import org.washwright.rule.Rule;

/** Makes exercises out of answers. The same answer, processes and seed make the same exercise. */
public final class ExerciseMaker {

    /** Fewest wrong reasons beside the true ones. */
    private static final int FEWEST_WRONG = 3;

    private final Answer answer;
    private final Edition edition;

    /** Exercises on this answer, with wrong reasons from the edition that gave it. */
    public ExerciseMaker(Answer answer, Edition edition) {
        this.answer = answer;
        this.edition = edition;
    }

    /**
     * An exercise.
     *
     * @param processes ids of processes that the answer judges, at most {@value Exercise#MOST_PROCESSES}; none takes a mix
     */
    public Exercise make(String title, String instruction, long seed, List<String> processes) {
        List<String> chosen = processes.isEmpty() ? mix() : processes;
        List<Asked> asked = chosen.stream()
                .distinct()
                .flatMap(p -> Truth.of(answer, p).stream())
                .sorted(Comparator.comparing(Truth::name))
                .map(t -> new Asked(t.process(), t.name(), choices(t, seed)))
                .toList();
        return new Exercise(title, instruction, seed, asked);
    }

    /** The process that comes first, then in turn some that are recommended, conditional and ruled out, far from each other. */
    public List<String> mix() {
        List<List<String>> groups = List.of(
                spread(standing("recommended")),
                spread(standing("conditional")),
                spread(answer.ruledOut().stream().map(Answer.RuledOut::process).toList()));
        Set<String> mix = new LinkedHashSet<>();
        answer.candidates().stream().findFirst().ifPresent(c -> mix.add(c.process()));
        for (int i = 0; i < Exercise.MOST_PROCESSES; i++) {
            for (List<String> group : groups) {
                if (i < group.size() && mix.size() < Exercise.MOST_PROCESSES) {
                    mix.add(group.get(i));
                }
            }
        }
        return List.copyOf(mix);
    }

    private List<String> standing(String status) {
        return answer.candidates().stream()
                .filter(c -> c.status().equals(status))
                .map(Answer.Candidate::process)
                .toList();
    }

    /** At most as many as an exercise holds, at even distances from the first to the last. */
    private static List<String> spread(List<String> all) {
        int wanted = Math.min(all.size(), Exercise.MOST_PROCESSES / 2);
        List<String> out = new ArrayList<>();
        for (int i = 0; i < wanted; i++) {
            out.add(all.get(wanted == 1 ? 0 : i * (all.size() - 1) / (wanted - 1)));
        }
        return out;
    }

    private List<Choice> choices(Truth truth, long seed) {
        List<Choice> choices = new ArrayList<>();
        truth.reasons().forEach(r -> choices.add(new Choice(r.rule(), title(r.rule()))));
        Set<String> titles = choices.stream().map(Choice::title).collect(Collectors.toCollection(HashSet::new));
        int wrong = Math.max(FEWEST_WRONG, choices.size());
        silent(truth.process()).stream()
                .sorted(Comparator.comparing(r -> drawn(seed, truth.process(), r.id())))
                .filter(r -> titles.add(RuleName.of(edition, r)))
                .limit(wrong)
                .forEach(r -> choices.add(new Choice(r.id(), RuleName.of(edition, r))));
        choices.sort(Comparator.comparing(c -> drawn(seed, truth.process(), "order " + c.rule())));
        return choices;
    }

    private String title(String rule) {
        return edition.rule(rule).map(r -> RuleName.of(edition, r)).orElse(rule);
    }

    /** Rules that say something of processes, could mean this one, and neither fired nor may fire. */
    private List<Rule> silent(String process) {
        Set<String> fired = answer.firings().stream().map(Answer.Firing::rule).collect(Collectors.toSet());
        return edition.taskRules().stream()
                .filter(r -> !fired.contains(r.id()))
                .filter(r -> r.effects().stream()
                        .anyMatch(e -> target(e).map(t -> couldMean(t, process)).orElse(false)))
                .toList();
    }

    private static Optional<Effect.Target> target(Effect effect) {
        if (effect instanceof Effect.RuleOut r) {
            return Optional.of(r.target());
        }
        if (effect instanceof Effect.Score s) {
            return Optional.of(s.target());
        }
        return effect instanceof Effect.Require r ? Optional.of(r.target()) : Optional.empty();
    }

    private boolean couldMean(Effect.Target target, String process) {
        return !(target instanceof Effect.Target.Node node)
                || edition.catalogue().members(node.id()).contains(process);
    }

    /** A number drawn for a word, the same on every machine. */
    private static String drawn(long seed, String process, String word) {
        return Hashes.sha256(seed + "/" + process + "/" + word);
    }
}
