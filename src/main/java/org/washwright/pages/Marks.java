package org.washwright.pages;

import io.quarkus.qute.TemplateExtension;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;
import org.washwright.assessment.Answer.Factor;

/**
 * Shapes of the four-factor mark and of bars, as SVG path text and lengths.
 *
 * <p>The disc stands in a box of 80 by 80. Clockwise from the upper right: medium, agitation, temperature, time. A
 * quadrant is filled from the centre by area, so its radius goes with the square root of the share.
 */
@TemplateExtension
public final class Marks {

    static final double RADIUS = 37;
    private static final double CENTRE = 40;
    private static final double GAP = 1;
    private static final List<String> CLOCKWISE = List.of("medium", "agitation", "temperature", "time");

    private Marks() {}

    /** The whole quadrant of a factor. */
    public static String field(Factor factor) {
        return sector(factor.factor(), RADIUS);
    }

    /** The filled part of the quadrant of a factor; empty when it has no scale or a share of nothing. */
    public static String fill(Factor factor) {
        double share = Math.min(1, factor.share());
        return share > 0 ? sector(factor.factor(), Math.sqrt(share) * RADIUS) : "";
    }

    /** True when the factor has a place on a scale. */
    public static boolean scaled(Factor factor) {
        return factor.share() >= 0;
    }

    /** The four settings as a sentence for those who hear the page. */
    public static String inWords(List<Factor> factors) {
        return factors.stream().map(Marks::inWords).collect(Collectors.joining("; "));
    }

    private static String inWords(Factor factor) {
        String setting = factor.factor() + ": " + factor.words();
        if (!scaled(factor)) {
            return setting + " (no scale)";
        }
        long percent = Math.round(Math.min(1, factor.share()) * 100);
        return setting + " (" + percent + " % of the possible range)";
    }

    /** A place from 0 to 100 along a bar, kept within the bar. */
    @TemplateExtension(namespace = "marks")
    public static String place(double points) {
        return length(Math.max(0, Math.min(100, points)));
    }

    /** A share of one as a place from 0 to 100 along a bar. */
    @TemplateExtension(namespace = "marks")
    public static String percent(double share) {
        return place(share * 100);
    }

    /** A share of one as a whole percentage; below half a percent it is said to be less than one. */
    @TemplateExtension(namespace = "marks")
    public static String percentText(double share) {
        return share > 0 && share < 0.005 ? "<1" : Figures.points(share * 100);
    }

    /** The quadrant of a factor by name, as the key beside its words. */
    @TemplateExtension(namespace = "marks")
    public static String quadrant(String factor) {
        return sector(factor, RADIUS);
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
        String r = length(radius);
        return "M" + point(x, y) + "L" + (uprightFirst ? upright : sideways) + "A" + r + " " + r + " 0 0 1 "
                + (uprightFirst ? sideways : upright) + "Z";
    }

    private static String point(double x, double y) {
        return length(x) + " " + length(y);
    }

    private static String length(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
