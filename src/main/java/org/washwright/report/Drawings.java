package org.washwright.report;

import java.util.List;
import java.util.Map;
import org.washwright.assessment.Answer.Factor;

/** The drawings of the report as SVG. Colours are attributes: a page may carry no inline style. */
final class Drawings {

    private static final String FIELD = "#e9ebe4";
    private static final String WATER = "#0d6a80";
    private static final Map<String, String> FACTORS =
            Map.of("medium", WATER, "agitation", "#5b4a8a", "temperature", "#b4541a", "time", "#5d6b1e");
    private static final List<String> CLOCKWISE = List.of("medium", "agitation", "temperature", "time");

    /** Stretches of a stacked bar; neighbours differ in lightness, so that they can be told apart without colour. */
    private static final List<String> STRETCHES =
            List.of("#093a47", "#5fa3b3", "#9a4a17", "#d9b48f", "#5b4a8a", "#a99fc6", "#5d6b1e", "#b3bd7d", "#4d6168");

    private static final double RADIUS = 37;
    private static final double CENTRE = 40;
    private static final double GAP = 1;

    private final Markup page;

    Drawings(Markup page) {
        this.page = page;
    }

    /**
     * The four-factor mark. Clockwise from the upper right: medium, agitation, temperature, time; filled from the centre by
     * area, so the radius goes with the square root of the share.
     */
    void disc(List<Factor> factors, String size) {
        svg("0 0 80 80", size, size, "disc");
        for (Factor factor : factors) {
            boolean scaled = factor.share() >= 0;
            if (scaled) {
                page.empty("path", "d", sector(factor.factor(), RADIUS), "fill", FIELD);
                double share = Math.min(1, factor.share());
                if (share > 0) {
                    page.empty(
                            "path",
                            "d",
                            sector(factor.factor(), Math.sqrt(share) * RADIUS),
                            "fill",
                            FACTORS.get(factor.factor()));
                }
            } else {
                // No scale: an outline alone, which can't be taken for a share of nothing.
                page.empty(
                        "path",
                        "d",
                        sector(factor.factor(), RADIUS - 0.5),
                        "fill",
                        "#ffffff",
                        "stroke",
                        "#b9beb4",
                        "stroke-width",
                        "1");
            }
        }
        page.close();
    }

    /** The quadrant of one factor as the key before its words. */
    void key(String factor) {
        svg("0 0 80 80", "9", "9", "key");
        page.empty("circle", "cx", "40", "cy", "40", "r", "37", "fill", FIELD);
        page.empty("path", "d", sector(factor, RADIUS), "fill", FACTORS.get(factor));
        page.close();
    }

    /** Film, broken film or beads, after the water-break test. */
    void status(String status) {
        svg("0 0 20 14", "17", "12", "status-mark");
        switch (status) {
            case "recommended" ->
                page.empty("rect", "x", "1", "y", "1", "width", "18", "height", "12", "rx", "3.5", "fill", WATER);
            case "conditional" -> {
                page.empty(
                        "path",
                        "d",
                        "M4.5 1H10c-1.6 1.6.8 3-.4 4.7-1.3 1.8 1.5 3 .2 5-.5.8-.5 1.5.2 2.3H4.5A3.5 3.5 0 0 1 1 9.5v-5A3.5 3.5 0 0 1"
                                + " 4.5 1z",
                        "fill",
                        WATER);
                bead("13.5", "4", "1.7");
                bead("17.6", "3.2", "1.2");
                bead("15.8", "9.4", "2.1");
            }
            default -> {
                ring("6", "5", "3.5");
                ring("14.3", "4.2", "2.4");
                ring("12.3", "10.6", "2.4");
            }
        }
        page.close();
    }

    /** Points from 0 to 100; what is undecided as a paler stretch. */
    void points(double low, double high) {
        svg("0 0 100 8", "100", "8", "bar");
        bar(0, 100, FIELD);
        bar(0, clip(low), WATER);
        if (high > low) {
            bar(clip(low), clip(high) - clip(low), "#9cc6cf");
        }
        page.close();
    }

    /** An amount beside the largest one of its table. */
    void amount(double share) {
        svg("0 0 100 8", "100", "8", "bar");
        bar(0, 100, FIELD);
        bar(0, clip(share * 100), WATER);
        page.close();
    }

    /** Shares of a whole as one bar. */
    void stacked(List<Double> shares) {
        svg("0 0 640 26", "640", "26", "stacked");
        double at = 0;
        for (int i = 0; i < shares.size(); i++) {
            double width = shares.get(i) * 640;
            if (width > 0) {
                page.empty(
                        "rect",
                        "x",
                        Numerals.length(at),
                        "y",
                        "0",
                        "width",
                        Numerals.length(Math.max(width - 1, 0.4)),
                        "height",
                        "26",
                        "fill",
                        colour(i));
            }
            at += width;
        }
        page.close();
    }

    /** The colour of one stretch, as the key before its words. */
    void stretch(int index) {
        svg("0 0 10 10", "9", "9", "key");
        page.empty("rect", "x", "0", "y", "0", "width", "10", "height", "10", "rx", "2", "fill", colour(index));
        page.close();
    }

    private static String colour(int index) {
        return STRETCHES.get(index % STRETCHES.size());
    }

    private void bar(double from, double width, String colour) {
        page.empty(
                "rect",
                "x",
                Numerals.length(from),
                "y",
                "1",
                "width",
                Numerals.length(width),
                "height",
                "6",
                "fill",
                colour);
    }

    private void bead(String x, String y, String r) {
        page.empty("circle", "cx", x, "cy", y, "r", r, "fill", WATER);
    }

    private void ring(String x, String y, String r) {
        page.empty("circle", "cx", x, "cy", y, "r", r, "fill", "none", "stroke", "#6a6f70", "stroke-width", "1.4");
    }

    /** Opens a drawing. It says nothing that the words and numbers beside it do not say, so readers aloud pass over it. */
    private void svg(String box, String width, String height, String kind) {
        page.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "viewBox",
                box,
                "width",
                width,
                "height",
                height,
                "class",
                kind,
                "aria-hidden",
                "true");
    }

    private static double clip(double value) {
        return Math.max(0, Math.min(100, value));
    }

    private static String sector(String factor, double radius) {
        int quarter = CLOCKWISE.indexOf(factor);
        if (quarter < 0) {
            throw new IllegalArgumentException("a cleaning factor is one of " + CLOCKWISE + ", not '" + factor + "'");
        }
        boolean right = quarter < 2;
        boolean lower = quarter == 1 || quarter == 2;
        double x = right ? CENTRE + GAP : CENTRE - GAP;
        double y = lower ? CENTRE + GAP : CENTRE - GAP;
        String sideways = point(right ? x + radius : x - radius, y);
        String upright = point(x, lower ? y + radius : y - radius);
        boolean uprightFirst = right != lower;
        String r = Numerals.length(radius);
        return "M" + point(x, y) + "L" + (uprightFirst ? upright : sideways) + "A" + r + " " + r + " 0 0 1 "
                + (uprightFirst ? sideways : upright) + "Z";
    }

    private static String point(double x, double y) {
        return Numerals.length(x) + " " + Numerals.length(y);
    }
}
