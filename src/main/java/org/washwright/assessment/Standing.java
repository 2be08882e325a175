package org.washwright.assessment;

import java.util.Comparator;
import java.util.List;
import org.washwright.line.ProcessLine;
import org.washwright.quantity.Span;

/**
 * What stands of a task and in which order, before anything is put into words.
 *
 * @param outcome what the edition makes of the task
 * @param ranked processes that are not ruled out, in the order of an answer's candidates
 */
public record Standing(Outcome outcome, List<Ranked> ranked) {

    /** A process that is not ruled out, with its points from low to high. */
    public record Ranked(String process, ProcessLine.Status status, Span points) {

        private double middle() {
            return (points.low() + points.high()) / 2;
        }
    }

    /** Keeps a copy. */
    public Standing {
        ranked = List.copyOf(ranked);
    }

    static Standing of(Assessment.Designs designs) {
        List<Ranked> ranked = designs.outcome().standing().stream()
                .map(l -> new Ranked(
                        l.process().id(),
                        l.status(),
                        designs.grades().get(l.process().id()).total()))
                .sorted(Comparator.comparing(Ranked::status)
                        .thenComparingDouble(r -> -r.middle())
                        .thenComparing(Ranked::process))
                .toList();
        return new Standing(designs.outcome(), ranked);
    }
}
