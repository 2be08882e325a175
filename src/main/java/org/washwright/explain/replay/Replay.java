package org.washwright.explain.replay;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.washwright.assessment.Answer;

/**
 * How an answer came about: what was given, what the catalogue and formulas add, every firing in order, then line by line what
 * follows, and the order of the processes. What is known is a set of references to facts and attributes; every step adds to it,
 * and after the last one it is what the answer holds.
 *
 * @param process id of the process that this walk is about; empty for the whole answer
 * @param name what a reader calls that process; empty for the whole answer
 * @param steps the steps, in order
 * @param chapters runs of steps
 */
public record Replay(String process, String name, List<Step> steps, List<Chapter> chapters) {

    /** Keeps copies. */
    public Replay {
        steps = List.copyOf(steps);
        chapters = List.copyOf(chapters);
    }

    /** The whole walk. */
    public static Replay of(Answer answer) {
        ToldAnswer index = new ToldAnswer(answer);
        return walk(index, Scope.all(), "");
    }

    /**
     * Only what concerns one process: firings that speak of it, and all that those rest on.
     *
     * @return empty when the answer judges no process of that id
     */
    public static Optional<Replay> of(Answer answer, String process) {
        ToldAnswer index = new ToldAnswer(answer);
        return index.processes().contains(process)
                ? Optional.of(walk(index, Scope.of(index, process), process))
                : Optional.empty();
    }

    private static Replay walk(ToldAnswer index, Scope scope, String process) {
        List<Step> steps = new ArrayList<>(new KnownSteps(index, scope).steps());
        FiringSteps firings = new FiringSteps(index, scope);
        index.answer().firings().stream()
                .filter(f -> f.line().isEmpty() && scope.firing(f.n()))
                .forEach(f -> steps.add(firings.of(f, List.of())));
        LineSteps lines = new LineSteps(index, firings);
        index.processes().stream().filter(scope::process).forEach(p -> steps.addAll(lines.of(p)));
        steps.add(lines.ranking(process));
        return new Replay(
                process,
                process.isEmpty() ? "" : index.processName(process),
                steps,
                new Chapters(index, process).of(steps));
    }

    /** Number of steps. */
    public int size() {
        return steps.size();
    }

    /** What is known once the first {@code count} steps are done: references of facts and attributes, in order. */
    public Set<String> known(int count) {
        Set<String> known = new LinkedHashSet<>();
        steps.subList(0, count).forEach(s -> known.addAll(s.learned()));
        return known;
    }

    /** Position of the next step after this one that draws a conclusion, from 1. */
    public OptionalInt nextConclusion(int after) {
        return IntStream.rangeClosed(after + 1, size())
                .filter(i -> steps.get(i - 1).isConclusion())
                .findFirst();
    }

    /** Position of the step with this id, from 1. */
    public OptionalInt position(String id) {
        return IntStream.rangeClosed(1, size())
                .filter(i -> steps.get(i - 1).id().equals(id))
                .findFirst();
    }
}
