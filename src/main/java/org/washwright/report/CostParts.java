package org.washwright.report;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.washwright.assessment.Design;
import org.washwright.assessment.Design.Figure;
import org.washwright.assessment.Design.Kind;

/**
 * The kinds of cost that make up one total. No id of a figure is known here: a total is a figure of the line in the group of
 * cost that rests on at least two others of its unit, and the one with the most parts is shown.
 *
 * @param total what the parts add up to; empty when no figure is the sum of others
 * @param parts its parts in their order, every one known
 */
record CostParts(Optional<Figure> total, List<Figure> parts) {

    static final String GROUP = "cost";

    /** The parts of the line's cost; empty when it has fewer than two that are known. */
    static Optional<CostParts> of(Design design, Lookup lookup) {
        Map<String, Figure> byRef = new HashMap<>();
        List<Figure> costs = design.figures().stream()
                .filter(f -> f.stage() == 0 && lookup.kind(f.figure()).group().equals(GROUP))
                .filter(f -> f.low() != null && f.high() != null && f.low() >= 0)
                .toList();
        costs.forEach(f -> byRef.put("figure/" + f.figure() + "/0", f));
        CostParts most = null;
        for (Figure total : costs) {
            Kind kind = lookup.kind(total.figure());
            Set<String> once = new HashSet<>();
            List<Figure> parts = total.inputs().stream()
                    .filter(once::add)
                    .map(byRef::get)
                    .filter(f -> f != null && lookup.kind(f.figure()).unit().equals(kind.unit()))
                    .toList();
            boolean more = most == null || parts.size() > most.parts.size();
            if (parts.size() > 1 && more && addsUp(total, parts)) {
                most = new CostParts(Optional.of(total), parts);
            }
        }
        return Optional.ofNullable(most);
    }

    /** What comes of a sum by other ways (a price divided by parts, say) must not be drawn as one. */
    private static boolean addsUp(Figure total, List<Figure> parts) {
        double low = parts.stream().mapToDouble(Figure::low).sum();
        double high = parts.stream().mapToDouble(Figure::high).sum();
        return near(low, total.low()) && near(high, total.high());
    }

    private static boolean near(double a, double b) {
        return Math.abs(a - b) <= 0.01 * Math.max(Math.abs(a), Math.abs(b));
    }

    /** The middle of a figure's range. */
    static double middle(Figure figure) {
        return (figure.low() + figure.high()) / 2;
    }

    /** Share of a part in the sum of the middles. */
    double share(Figure part) {
        double sum = parts.stream().mapToDouble(CostParts::middle).sum();
        return sum > 0 ? middle(part) / sum : 0;
    }
}
