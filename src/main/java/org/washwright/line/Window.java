package org.washwright.line;

import java.util.ArrayList;
import java.util.List;
import org.washwright.quantity.Span;

/**
 * The allowed range of one parameter of one stage, and who set its ends.
 *
 * @param low lowest value in SI
 * @param high highest value in SI; below {@code low} when the window is closed
 * @param lowBy firings that set the lowest value; empty when it is the stage's own
 * @param highBy firings that set the highest value; empty when it is the stage's own
 * @param undecided undecided firings that would narrow it
 */
public record Window(double low, double high, List<Integer> lowBy, List<Integer> highBy, List<Integer> undecided) {

    /** The stage's own range. */
    static Window own(Span span) {
        return new Window(span.low(), span.high(), List.of(), List.of(), List.of());
    }

    /** True when no value is left. */
    public boolean isClosed() {
        return low > high;
    }

    /** Firings that narrowed it. */
    public List<Integer> by() {
        List<Integer> both = new ArrayList<>(lowBy);
        highBy.stream().filter(n -> !both.contains(n)).forEach(both::add);
        return both.stream().sorted().toList();
    }

    Window atMost(double bound, int firing) {
        if (bound > high) {
            return this;
        }
        List<Integer> who = bound == high ? plus(highBy, firing) : List.of(firing);
        return new Window(low, bound, lowBy, bound == high && highBy.isEmpty() ? highBy : who, undecided);
    }

    Window atLeast(double bound, int firing) {
        if (bound < low) {
            return this;
        }
        List<Integer> who = bound == low ? plus(lowBy, firing) : List.of(firing);
        return new Window(bound, high, bound == low && lowBy.isEmpty() ? lowBy : who, highBy, undecided);
    }

    Window maybe(int firing) {
        return new Window(low, high, lowBy, highBy, plus(undecided, firing));
    }

    private static List<Integer> plus(List<Integer> list, int n) {
        if (list.contains(n)) {
            return list;
        }
        List<Integer> out = new ArrayList<>(list);
        out.add(n);
        return List.copyOf(out);
    }
}
