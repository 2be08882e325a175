package org.washwright.reasons;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.washwright.explain.change.Changes;
import org.washwright.explain.vary.Difference;
import org.washwright.explain.vary.Effort;
import org.washwright.quantity.Quantities;

/**
 * What a search for changes came to, as its page shows it.
 *
 * @param ladder how many proposals ask for each effort, the least first
 * @param steps proposals by effort; efforts without any are left out
 */
record ChangesView(Changes found, List<Rung> ladder, List<Step> steps, List<Row> sizes) {

    private static final int WHOLE = 12;
    private static final int FIGURES = 2;
    private static final int OTHERS = 8;

    /** One effort with the number of its proposals and the share of the longest bar, 0 to 100. */
    record Rung(String words, String anchor, int count, long length) {}

    /** The proposals of one effort. */
    record Step(String words, String meaning, String anchor, List<Card> cards) {}

    /** One proposal. */
    record Card(List<Line> lines, String first, List<Turns> turns, String tryUrl) {}

    /** One change with a few of the other values that would do. */
    record Line(String sentence, String others) {}

    /** What becomes of processes: a word and their names. */
    record Turns(String word, String status, List<String> names) {}

    /** The sets of one size. */
    record Row(String words, String sets, String passedOver, String tried, int reached, String left) {}

    static ChangesView of(Changes found, String url) {
        List<Rung> ladder = new ArrayList<>();
        List<Step> steps = new ArrayList<>();
        int longest = 0;
        for (Effort e : Effort.values()) {
            longest = Math.max(longest, count(found, e));
        }
        for (Effort e : Effort.values()) {
            int count = count(found, e);
            String anchor =
                    "effort-" + e.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
            ladder.add(new Rung(e.words(), anchor, count, longest == 0 ? 0 : Math.round(100.0 * count / longest)));
            if (count > 0) {
                steps.add(new Step(
                        e.words(),
                        e.meaning(),
                        anchor,
                        found.proposals().stream()
                                .filter(p -> p.effort().equals(e.name()))
                                .map(p -> card(p, url))
                                .toList()));
            }
        }
        return new ChangesView(
                found,
                ladder,
                steps,
                found.search().sizes().stream().map(ChangesView::row).toList());
    }

    private static int count(Changes found, Effort effort) {
        return (int) found.proposals().stream()
                .filter(p -> p.effort().equals(effort.name()))
                .count();
    }

    private static Card card(Changes.Proposal p, String url) {
        Difference d = p.elsewhere();
        List<Turns> turns = new ArrayList<>();
        for (String status : List.of("recommended", "conditional")) {
            turns(turns, "comes in", "come in", status, d.gained());
        }
        turns(turns, "falls out", "fall out", "ruled out", d.lost());
        for (String status : List.of("recommended", "conditional")) {
            turns(turns, "becomes " + status, "become " + status, status, d.moved());
        }
        String first = d.first()
                .map(f -> f.changes()
                        ? "First is then " + f.nameAfter() + " instead of " + f.nameBefore() + "."
                        : "First stays " + f.nameAfter() + ".")
                .orElse("Who is then first was not looked at.");
        return new Card(
                p.changes().stream().map(c -> new Line(c.sentence(), others(c))).toList(),
                first,
                turns,
                url + "/what-if?" + query(p));
    }

    private static String others(Changes.Change c) {
        List<String> all = c.others().stream().map(Changes.Other::to).toList();
        return String.join("; ", all.stream().limit(OTHERS).toList())
                + (all.size() > OTHERS ? "; and " + (all.size() - OTHERS) + " more" : "");
    }

    private static String query(Changes.Proposal p) {
        return p.changes().stream()
                .flatMap(c -> c.steps().stream())
                .map(s -> "set=" + URLEncoder.encode(s, StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }

    private static void turns(List<Turns> out, String one, String many, String status, List<Difference.Turn> all) {
        List<String> names = all.stream()
                .filter(t -> t.after().equals(status))
                .map(Difference.Turn::name)
                .toList();
        if (!names.isEmpty()) {
            out.add(new Turns(names.size() == 1 ? one : many, status, names));
        }
    }

    private static Row row(Changes.Size s) {
        return new Row(
                List.of("one change", "two changes", "three changes").get(s.changes() - 1),
                Quantities.number(s.sets(), WHOLE),
                Quantities.number(s.passedOver(), WHOLE),
                Quantities.number(s.tried(), WHOLE),
                s.reached(),
                s.left() == 0
                        ? "none"
                        : Quantities.number(s.left(), WHOLE) + " (about " + Quantities.number(s.combinations(), FIGURES)
                                + " combinations)");
    }
}
