package org.washwright.line.sizing;

import java.util.List;
import java.util.Optional;
import org.washwright.task.Value;

/**
 * The figures of one line.
 *
 * @param figures figures in the order in which they were computed
 * @param balances what goes in and out at the middle of every range
 */
public record Sized(List<Figure> figures, List<Balance> balances) {

    /** Nothing was sized. */
    public static final Sized NOTHING = new Sized(List.of(), List.of());

    /**
     * One figure.
     *
     * @param kind what it is
     * @param place place of the stage in the line from 1; 0 for the whole line
     * @param value number in SI, or unknown
     * @param inputs references of what it was computed from
     * @param warnings what stands against trusting it
     */
    public record Figure(FigureKind kind, int place, Value value, List<String> inputs, List<String> warnings) {}

    /** What goes into a line and comes out of it, in SI; the sums of both sides are equal. */
    public record Balance(String id, String name, FigureKind kind, List<Flow> in, List<Flow> out) {

        /** Sum of one side, in the order of its flows. */
        public static double sum(List<Flow> side) {
            double sum = 0;
            for (Flow flow : side) {
                sum += flow.amount();
            }
            return sum;
        }
    }

    /** One flow of a balance in SI, for a stage or, at 0, the line. */
    public record Flow(String name, int place, double amount) {}

    /** Keeps copies. */
    public Sized {
        figures = List.copyOf(figures);
        balances = List.copyOf(balances);
    }

    /** A figure of the line as a whole, by the id of its kind. */
    public Optional<Value> ofLine(String kind) {
        return figures.stream()
                .filter(f -> f.place() == 0 && f.kind().id().equals(kind))
                .map(Figure::value)
                .findFirst();
    }
}
