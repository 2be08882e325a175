package org.washwright.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/** Puts steps in order: by what rules say of their places, and where they say nothing by the catalogue's positions. */
final class StepOrder {

    private StepOrder() {}

    /** The steps in order; empty when the places contradict each other. */
    static Optional<List<Step>> of(List<Step> steps) {
        Map<String, TreeSet<String>> waitsFor = new TreeMap<>();
        steps.forEach(s -> waitsFor.put(s.key(), new TreeSet<>()));
        for (Step s : steps) {
            s.behind().stream().filter(waitsFor::containsKey).forEach(waitsFor.get(s.key())::add);
            s.before().stream()
                    .filter(waitsFor::containsKey)
                    .forEach(other -> waitsFor.get(other).add(s.key()));
        }
        List<Step> rest = new ArrayList<>(steps);
        rest.sort(Comparator.comparingInt(Step::position).thenComparing(Step::key));
        List<Step> out = new ArrayList<>();
        while (!rest.isEmpty()) {
            Optional<Step> next =
                    rest.stream().filter(s -> waitsFor.get(s.key()).isEmpty()).findFirst();
            if (next.isEmpty()) {
                return Optional.empty();
            }
            out.add(next.get());
            rest.remove(next.get());
            waitsFor.values().forEach(w -> w.remove(next.get().key()));
        }
        return Optional.of(out);
    }
}
