package org.washwright.reasons;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.washwright.explain.asking.FindOut;
import org.washwright.explain.vary.Difference;
import org.washwright.quantity.Quantities;

/** What to find out next, as its page shows it. */
record FindOutView(FindOut found, List<Item> items, List<FindOut.Unknown> same) {

    private static final int NAMED = 3;

    /** Width of the strip of outcomes. */
    private static final double WIDTH = 100;

    /**
     * One thing to find out.
     *
     * @param cells the strip of its outcomes: first changes, then statuses, then nothing
     * @param strip the strip in words
     * @param expected what it is expected to decide, in a sentence; empty when that is nothing
     */
    record Item(FindOut.Unknown unknown, List<Cell> cells, String strip, String expected, List<Row> rows) {}

    /** A piece of the strip: its class, where it starts and how long it is, of 100. */
    record Cell(String kind, String from, String length) {}

    /** One outcome. */
    record Row(String to, String first, boolean firstChanges, String in, String out, String moved, String tryUrl) {}

    static FindOutView of(FindOut found, String url) {
        return new FindOutView(
                found, found.matters().stream().map(u -> item(u, url)).toList(), found.same());
    }

    private static Item item(FindOut.Unknown u, String url) {
        long first = u.outcomes().stream().filter(FindOutView::firstChanges).count();
        long status = u.outcomes().stream()
                .filter(t -> !firstChanges(t) && t.elsewhere().count() > 0)
                .count();
        long all = u.outcomes().size();
        List<Cell> cells = new ArrayList<>();
        double at = cell(cells, "first", 0, first, all);
        at = cell(cells, "status", at, status, all);
        cell(cells, "same", at, all - first - status, all);
        String strip = "Of " + all + (all == 1 ? " outcome " : " outcomes ") + first + " change the first, " + status
                + " only the status of some process, " + (all - first - status) + " nothing.";
        return new Item(
                u,
                cells,
                strip,
                expected(u.decides()),
                u.outcomes().stream().map(t -> row(t, url)).toList());
    }

    private static String expected(double decides) {
        if (decides == 0) {
            return "";
        }
        String number = Quantities.number(decides, 2);
        return "On average it decides on " + number + (number.equals("1") ? " process" : " processes")
                + " that what stands above leaves open.";
    }

    private static double cell(List<Cell> cells, String kind, double from, long count, long all) {
        double length = WIDTH * count / all;
        if (count > 0) {
            cells.add(new Cell(kind, number(from), number(length)));
        }
        return from + length;
    }

    private static String number(double value) {
        return java.math.BigDecimal.valueOf(Math.round(value * 100), 2)
                .stripTrailingZeros()
                .toPlainString();
    }

    private static boolean firstChanges(FindOut.Turn turn) {
        return turn.elsewhere().first().filter(Difference.First::changes).isPresent();
    }

    private static Row row(FindOut.Turn turn, String url) {
        Difference d = turn.elsewhere();
        return new Row(
                turn.to(),
                d.first().map(Difference.First::nameAfter).orElse(""),
                firstChanges(turn),
                names(d.gained(), false),
                names(d.lost(), false),
                names(d.moved(), true),
                url + "/what-if?"
                        + turn.steps().stream()
                                .map(s -> "set=" + URLEncoder.encode(s, StandardCharsets.UTF_8))
                                .collect(Collectors.joining("&")));
    }

    private static String names(List<Difference.Turn> turns, boolean status) {
        if (turns.isEmpty()) {
            return "none";
        }
        List<String> some = turns.stream()
                .limit(NAMED)
                .map(t -> t.name() + (status ? " (" + t.after() + ")" : ""))
                .toList();
        return String.join(", ", some) + (turns.size() > NAMED ? " and " + (turns.size() - NAMED) + " more" : "");
    }
}
