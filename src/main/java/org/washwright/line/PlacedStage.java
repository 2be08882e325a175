package org.washwright.line;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.washwright.catalogue.Setting;
import org.washwright.catalogue.StageTerm;

/**
 * A stage in its place in a line.
 *
 * @param key unique in the line
 * @param factId id of the fact that line rules saw
 * @param stage the stage term; empty for the main stage
 * @param setting how it is run
 * @param certain false when an undecided rule would place it
 * @param windows allowed range of each parameter by id
 * @param firings firings that placed it
 * @param replacing firings that closed the window of the stage whose place it took
 * @param insteadOf id of the stage whose window closed, when this one took its place; else empty
 */
public record PlacedStage(
        String key,
        String factId,
        Optional<StageTerm> stage,
        Setting setting,
        boolean certain,
        Map<String, Window> windows,
        List<Integer> firings,
        List<Integer> replacing,
        String insteadOf) {

    /** Keeps copies. */
    public PlacedStage {
        windows = java.util.Collections.unmodifiableMap(new TreeMap<>(windows));
        firings = List.copyOf(firings);
        replacing = List.copyOf(replacing);
    }

    /** All firings to which it owes its place: those that asked for it and those that closed another's window. */
    public List<Integer> owedTo() {
        TreeSet<Integer> all = new TreeSet<>(firings);
        all.addAll(replacing);
        return List.copyOf(all);
    }
}
