package org.washwright.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.washwright.plant.PlantWeek.Load;
import org.washwright.plant.PlantWeek.Range;
import org.washwright.plant.PlantWeek.Slot;
import org.washwright.plant.PlantWeek.TaskOnPlant;
import org.washwright.plant.PlantWeek.Week;
import org.washwright.quantity.Quantities;
import org.washwright.task.Value;

/** Sums the hours of what a plant can serve, and fills its week in the order given. */
final class Filling {

    private static final double HOUR = 3600;
    private static final int FIGURES = 3;

    private Filling() {}

    static Week of(Value hours, List<TaskOnPlant> tasks) {
        Optional<Range> has = Loading.known(hours).map(h -> new Range(h.low() / HOUR, h.high() / HOUR));
        List<Slot> order = new ArrayList<>();
        Range needs = new Range(0, 0);
        int notKnown = 0;
        for (int i = 0; i < tasks.size(); i++) {
            Optional<Load> load = tasks.get(i).load();
            if (load.isEmpty()) {
                continue;
            }
            Optional<Range> own = load.get().hours();
            needs = own.map(needs::plus).orElse(needs);
            notKnown += own.isEmpty() ? 1 : 0;
            Optional<Range> until = notKnown == 0 ? Optional.of(needs) : Optional.empty();
            order.add(new Slot(i + 1, tasks.get(i).title(), own, until, fits(has, needs, notKnown)));
        }
        Range sum = needs;
        Optional<Range> over = has.map(
                        h -> new Range(Math.max(0, sum.low() - h.high()), Math.max(0, sum.high() - h.low())))
                .filter(o -> o.high() > 0);
        return new Week(has, needs, notKnown, over, sentence(has, needs, notKnown, over, order), order);
    }

    /** What is not known takes some hours, so a week that is full without it stays full. */
    private static String fits(Optional<Range> has, Range needs, int notKnown) {
        if (has.isEmpty()) {
            return "not known";
        }
        if (needs.low() > has.get().high()) {
            return "does not fit";
        }
        if (notKnown > 0) {
            return "not known";
        }
        return needs.high() <= has.get().low() ? "fits" : "may not fit";
    }

    private static String sentence(
            Optional<Range> has, Range needs, int notKnown, Optional<Range> over, List<Slot> order) {
        if (order.isEmpty()) {
            return "Nothing fills its week.";
        }
        StringBuilder out = new StringBuilder();
        if (notKnown == order.size()) {
            out.append(
                    order.size() == 1
                            ? "How many hours it takes is not known"
                            : "How many hours they take is not known");
        } else {
            out.append(notKnown == 0 ? "Together they take " : "Those whose hours are known take ")
                    .append(hours(needs));
        }
        out.append(has.map(h -> " of the " + hours(h) + " that the plant has a week.")
                .orElse("; how many hours the plant has a week is not known."));
        over.ifPresent(o -> out.append(
                o.low() > 0
                        ? " That is " + hours(o) + " more than it has."
                        : " That may be up to " + hours(new Range(o.high(), o.high())) + " more than it has."));
        if (notKnown > 0 && notKnown < order.size()) {
            out.append(" The hours of ")
                    .append(notKnown == 1 ? "one more are" : notKnown + " more are")
                    .append(" not known and come on top.");
        }
        if (over.isPresent() && notKnown < order.size()) {
            long fit = order.stream().filter(s -> s.fits().equals("fits")).count();
            out.append(" Taken in the order given, ")
                    .append(fit == 0 ? "none surely fits." : "the first " + (fit == 1 ? "one fits." : fit + " fit."));
        }
        return out.toString();
    }

    private static String hours(Range range) {
        String low = Quantities.number(range.low(), FIGURES);
        String high = Quantities.number(range.high(), FIGURES);
        return (low.equals(high) ? low : low + " to " + high) + " h";
    }
}
