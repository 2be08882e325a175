package org.washwright.explain.exercise;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.washwright.assessment.Answer;

/**
 * What an answer says of one process.
 *
 * @param process process id
 * @param name what a reader calls it
 * @param status one of {@link Prediction#STATUSES}
 * @param reasons the rules that weigh most in it, at most {@value #MOST_REASONS}: what rules it out, what its status hangs on, or
 *     what moves its points most
 */
record Truth(String process, String name, String status, List<Reason> reasons) {

    static final int MOST_REASONS = 5;

    /** A rule with its firings that speak of the process, by number, and what they say. */
    record Reason(String rule, List<Integer> firings, String text) {}

    /** Empty when the answer judges no process of that id. */
    static Optional<Truth> of(Answer answer, String process) {
        Optional<Answer.RuledOut> out = answer.ruledOut().stream()
                .filter(r -> r.process().equals(process))
                .findFirst();
        if (out.isPresent()) {
            return Optional.of(new Truth(
                    process,
                    out.get().name(),
                    "ruled out",
                    reasons(answer, process, cited(out.get().reasons()))));
        }
        return answer.candidates().stream()
                .filter(c -> c.process().equals(process))
                .findFirst()
                .map(c -> new Truth(process, c.name(), c.status(), reasons(answer, process, standing(c))));
    }

    /** The processes of an answer: candidates in their order, then those ruled out. */
    static List<String> processes(Answer answer) {
        List<String> all = new ArrayList<>();
        answer.candidates().forEach(c -> all.add(c.process()));
        answer.ruledOut().forEach(r -> all.add(r.process()));
        return all;
    }

    private static List<Integer> cited(List<Answer.Sentence> sentences) {
        return sentences.stream().flatMap(s -> s.firings().stream()).toList();
    }

    /** What the status hangs on, then what moves points most, then what placed stages. */
    private static List<Integer> standing(Answer.Candidate c) {
        List<Integer> firings = new ArrayList<>(cited(c.conditions()));
        c.areas().stream()
                .flatMap(a -> a.criteria().stream())
                .flatMap(x -> x.points().stream())
                .filter(p -> p.counted() && p.firing() > 0)
                .sorted(Comparator.comparingDouble((Answer.Point p) -> -Math.abs(p.points()))
                        .thenComparingInt(Answer.Point::firing))
                .forEach(p -> firings.add(p.firing()));
        c.stages().forEach(s -> firings.addAll(s.firings()));
        return firings;
    }

    private static List<Reason> reasons(Answer answer, String process, List<Integer> firings) {
        Map<Integer, Answer.Firing> byNumber = new HashMap<>();
        answer.firings().forEach(f -> byNumber.put(f.n(), f));
        Map<String, List<Answer.Firing>> byRule = new LinkedHashMap<>();
        for (int n : new LinkedHashSet<>(firings)) {
            Answer.Firing f = byNumber.get(n);
            byRule.computeIfAbsent(f.rule(), k -> new ArrayList<>()).add(f);
        }
        return byRule.entrySet().stream()
                .limit(MOST_REASONS)
                .map(e -> new Reason(
                        e.getKey(), e.getValue().stream().map(Answer.Firing::n).toList(), text(e.getValue(), process)))
                .toList();
    }

    private static String text(List<Answer.Firing> firings, String process) {
        Set<String> texts = new LinkedHashSet<>();
        firings.forEach(f ->
                f.findings().stream().filter(x -> x.targets().contains(process)).forEach(x -> texts.add(x.text())));
        if (texts.isEmpty()) {
            firings.forEach(f -> f.findings().forEach(x -> texts.add(x.text())));
        }
        return String.join(" ", texts);
    }
}
