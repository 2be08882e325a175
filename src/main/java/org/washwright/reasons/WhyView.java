package org.washwright.reasons;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.washwright.explain.why.Explanation;
import org.washwright.explain.why.Thing;

/**
 * An explanation as a page shows it.
 *
 * @param root what is explained, with its reasons below
 * @param drawing the nearest reasons drawn
 * @param rows the reasons as a table
 * @param more rows that are not shown
 */
record WhyView(Branch root, ReasonDrawing drawing, List<Row> rows, int more) {

    private static final int DEPTH = 4;
    private static final int MOST_BELOW = 12;
    private static final int MOST_NAMED = 12;
    private static final int BRIEF = 40;
    private static final int MOST_ROWS = 120;

    /**
     * A thing with what it rests on.
     *
     * @param n its number in the table
     * @param lead how it is led in
     * @param href where its own reasons stand; empty for ground
     * @param again true when its reasons stand further up already
     * @param more how many of its reasons are not shown here
     */
    record Branch(int n, Thing thing, String lead, String href, boolean again, List<Branch> below, int more) {}

    /** A row of the table: a thing, the numbers of what it rests on, and how many of those are not shown. */
    record Row(int n, Thing thing, String href, List<Integer> on, int more) {}

    /** True when the table is short enough to stand open. */
    public boolean brief() {
        return rows.size() <= BRIEF;
    }

    static WhyView of(Explanation explanation, String url) {
        Map<String, Integer> numbers = new HashMap<>();
        for (Thing thing : explanation.things()) {
            numbers.put(thing.at(), numbers.size() + 1);
        }
        Unfolding unfolding = new Unfolding(explanation.byPlace(), numbers, url);
        List<Row> rows = explanation.things().stream()
                .limit(MOST_ROWS)
                .map(t -> row(t, numbers, url))
                .toList();
        return new WhyView(
                unfolding.branch(explanation.root(), 0),
                ReasonDrawing.of(explanation),
                rows,
                Math.max(0, explanation.things().size() - MOST_ROWS));
    }

    private static Row row(Thing thing, Map<String, Integer> numbers, String url) {
        List<Integer> on = thing.on().stream()
                .map(numbers::get)
                .filter(n -> n <= MOST_ROWS)
                .limit(MOST_NAMED)
                .toList();
        return new Row(
                numbers.get(thing.at()), thing, href(thing, url), on, thing.on().size() - on.size());
    }

    /** Where the reasons of a thing stand; empty when it has none. */
    static String href(Thing thing, String url) {
        return thing.on().isEmpty() ? "" : url + "?of=" + URLEncoder.encode(thing.at(), StandardCharsets.UTF_8);
    }

    /** Unfolds reasons from what is said down, each once. */
    private static final class Unfolding {
        private final Map<String, Thing> things;
        private final Map<String, Integer> numbers;
        private final String url;
        private final Set<String> said = new HashSet<>();

        Unfolding(Map<String, Thing> things, Map<String, Integer> numbers, String url) {
            this.things = things;
            this.numbers = numbers;
            this.url = url;
        }

        Branch branch(Thing thing, int depth) {
            boolean again = !said.add(thing.at());
            boolean open = !again && depth < DEPTH;
            List<Branch> below = new ArrayList<>();
            if (open) {
                thing.on().stream().limit(MOST_BELOW).forEach(at -> below.add(branch(things.get(at), depth + 1)));
            }
            int more = again ? 0 : thing.on().size() - below.size();
            return new Branch(numbers.get(thing.at()), thing, lead(thing, depth), href(thing, url), again, below, more);
        }

        private static String lead(Thing thing, int depth) {
            if (depth == 0) {
                return "";
            }
            return switch (thing.kind()) {
                case FINDING -> thing.detail().isEmpty() ? "because" : "perhaps because";
                case RULE -> "by the rule:";
                case OPEN_RULE -> "perhaps, by the rule:";
                case SOURCE -> "see";
                case CONCLUSION -> "as concluded,";
                case UNKNOWN -> "not known:";
                default -> "";
            };
        }
    }
}
