package org.washwright.explain.asking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The order in which to find out. Step by step that unknown comes next which is expected to decide most processes that those
 * before it leave open, another first process counting as one more; among equals the one that settles more conditions.
 */
final class Order {

    private static final double EQUAL = 1e-12;

    private final Map<String, Double> open;

    /** An order. */
    Order(Map<String, Double> open) {
        this.open = new TreeMap<>(open);
    }

    /** An unknown in its place, with the number of processes it is expected to decide there. */
    record Placed(Asking.Tried tried, double decides) {}

    List<Placed> of(List<Asking.Tried> all) {
        List<Asking.Tried> rest = new ArrayList<>(all);
        List<Placed> out = new ArrayList<>();
        while (!rest.isEmpty()) {
            Asking.Tried next = rest.stream().min(this::compare).orElseThrow();
            out.add(new Placed(next, decides(next)));
            rest.remove(next);
            open.replaceAll((process, left) -> left * (1 - decided(next, process)));
        }
        return out;
    }

    private int compare(Asking.Tried a, Asking.Tried b) {
        double gain = gain(b) - gain(a);
        if (Math.abs(gain) > EQUAL) {
            return gain > 0 ? 1 : -1;
        }
        return Comparator.comparingDouble((Asking.Tried t) -> -t.share(Asking.Turned::statusChanges))
                .thenComparingDouble(t -> -t.eased())
                .thenComparing(t -> t.choice().place().pointer())
                .compare(a, b);
    }

    private double gain(Asking.Tried tried) {
        return decides(tried) + tried.share(Asking.Turned::firstChanges);
    }

    private double decides(Asking.Tried tried) {
        double sum = 0;
        for (Map.Entry<String, Double> e : open.entrySet()) {
            sum += e.getValue() * decided(tried, e.getKey());
        }
        return sum;
    }

    private static double decided(Asking.Tried tried, String process) {
        return tried.share(t -> t.decided().contains(process));
    }
}
