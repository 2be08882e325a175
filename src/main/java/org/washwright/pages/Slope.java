package org.washwright.pages;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.washwright.assessment.Answer;

/**
 * The ranking of two answers side by side: a list on each side and a line for every process from its place before to its place
 * after. Rows are 10 high and the drawing 100 wide, so that it can be stretched between two lists whose rows are all as high.
 *
 * @param left rows of the earlier answer from the top
 * @param right rows of the later answer
 * @param lines processes by their places
 * @param height height of the drawing
 */
public record Slope(List<Row> left, List<Row> right, List<Line> lines, int height) {

    /** Most places drawn; what stands further down is one row. */
    static final int MOST = 12;

    private static final int ROW = 10;

    /**
     * One row.
     *
     * @param place place from 1; 0 for a row that is none
     * @param process process id; empty for a row that is none
     * @param name what stands there; empty for a row that only keeps its height
     * @param status status whose mark stands before it; empty when there is none
     */
    public record Row(int place, String process, String name, String status) {}

    /**
     * One process, or several between the same rows.
     *
     * @param kind {@code up}, {@code down}, {@code level}, {@code in} or {@code out}
     * @param from height at the left
     * @param to height at the right
     */
    public record Line(String kind, int from, int to) {}

    /** The drawing for two answers. */
    public static Slope of(Answer before, Answer after) {
        Map<String, Integer> old = places(before);
        Map<String, Integer> now = places(after);
        boolean more = old.size() > MOST || now.size() > MOST;
        int ranked = Math.min(MOST, Math.max(old.size(), now.size()));
        int rows = ranked + (more ? 1 : 0) + 1;
        Set<Line> lines = new LinkedHashSet<>();
        Set<String> all = new LinkedHashSet<>(now.keySet());
        all.addAll(old.keySet());
        for (String id : all) {
            int was = old.getOrDefault(id, 0);
            int is = now.getOrDefault(id, 0);
            if (was > MOST && is > MOST) {
                continue;
            }
            String kind = was == 0 ? "in" : is == 0 ? "out" : is < was ? "up" : is > was ? "down" : "level";
            // Of several that go the same way between rows that hold many, one line is enough.
            lines.add(new Line(kind, height(was, ranked, rows), height(is, ranked, rows)));
        }
        return new Slope(side(before, ranked, more), side(after, ranked, more), List.copyOf(lines), rows * ROW);
    }

    private static Map<String, Integer> places(Answer answer) {
        Map<String, Integer> out = new LinkedHashMap<>();
        answer.candidates().forEach(c -> out.put(c.process(), out.size() + 1));
        return out;
    }

    private static int height(int place, int ranked, int rows) {
        int row = place == 0 ? rows - 1 : Math.min(place - 1, ranked);
        return row * ROW + ROW / 2;
    }

    private static List<Row> side(Answer answer, int ranked, boolean more) {
        List<Answer.Candidate> candidates = answer.candidates();
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < ranked; i++) {
            rows.add(
                    i < candidates.size()
                            ? new Row(
                                    i + 1,
                                    candidates.get(i).process(),
                                    candidates.get(i).name(),
                                    candidates.get(i).status())
                            : new Row(0, "", "", ""));
        }
        if (more) {
            int rest = candidates.size() - ranked;
            rows.add(new Row(0, "", rest > 0 ? rest + " further down" : "", ""));
        }
        rows.add(new Row(0, "", answer.ruledOut().size() + " ruled out", "ruled out"));
        return List.copyOf(rows);
    }
}
