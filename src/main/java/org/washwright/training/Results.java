package org.washwright.training;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.washwright.explain.exercise.Feedback;

/**
 * What became of an exercise over all its tries.
 *
 * @param tries number of tries
 * @param people everybody who tried, with the latest try
 * @param missed true reasons by how often they were missed, the most often first
 * @param statuses processes by how often their status was wrong, the most often first
 */
record Results(int tries, List<Of> people, List<Missed> missed, List<Wrong> statuses) {

    private static final int MOST = 12;

    /** What one person made of it; {@code best} has the most statuses and then the most reasons right. */
    record Of(String person, int tries, TryView last, TryView best) {}

    /** A true reason, and in how many of the tries it was missed. */
    record Missed(String name, Feedback.Reason reason, int missed, int of) {}

    /** A process, and in how many of the tries its status was wrong. */
    record Wrong(String name, String actual, int wrong, int of) {}

    /** The results of these tries, the latest first. */
    static Results of(List<TryView> tries) {
        Map<String, List<TryView>> byPerson = new LinkedHashMap<>();
        Map<String, Missed> missed = new LinkedHashMap<>();
        Map<String, Wrong> wrong = new LinkedHashMap<>();
        for (TryView one : tries) {
            byPerson.computeIfAbsent(one.by(), k -> new ArrayList<>()).add(one);
            for (Feedback.Judged p : one.feedback().processes()) {
                p.right().forEach(r -> count(missed, p, r, 0));
                p.missed().forEach(r -> count(missed, p, r, 1));
                wrong.merge(
                        p.process(),
                        new Wrong(p.name(), p.actual(), p.isStatusRight() ? 0 : 1, 1),
                        (a, b) -> new Wrong(a.name(), a.actual(), a.wrong() + b.wrong(), a.of() + b.of()));
            }
        }
        return new Results(
                tries.size(),
                byPerson.entrySet().stream()
                        .map(e -> new Of(
                                e.getKey(),
                                e.getValue().size(),
                                e.getValue().get(0),
                                e.getValue().stream().max(BETTER).orElseThrow()))
                        .toList(),
                missed.values().stream()
                        .filter(m -> m.missed() > 0)
                        .sorted(Comparator.comparingInt((Missed m) -> -m.missed())
                                .thenComparing(Missed::name)
                                .thenComparing(m -> m.reason().rule()))
                        .limit(MOST)
                        .toList(),
                wrong.values().stream()
                        .filter(w -> w.wrong() > 0)
                        .sorted(Comparator.comparingInt((Wrong w) -> -w.wrong()).thenComparing(Wrong::name))
                        .toList());
    }

    private static final Comparator<TryView> BETTER = Comparator.comparingInt(
                    (TryView t) -> t.feedback().statuses())
            .thenComparingInt(t -> t.feedback().reasons())
            .thenComparingInt(t -> -t.feedback().inVain());

    private static void count(Map<String, Missed> into, Feedback.Judged p, Feedback.Reason reason, int missed) {
        into.merge(
                p.process() + " " + reason.rule(),
                new Missed(p.name(), reason, missed, 1),
                (a, b) -> new Missed(a.name(), a.reason(), a.missed() + b.missed(), a.of() + b.of()));
    }
}
