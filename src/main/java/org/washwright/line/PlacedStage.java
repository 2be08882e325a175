package org.washwright.line;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.catalogue.Setting;
import org.washwright.catalogue.StageTerm;

/**
 * A stage in its place in a line.
 *
 * @param key unique in the line
 * @param stage the stage term; empty for the main stage
 * @param setting how it is run
 * @param certain false when an undecided rule would place it
 * @param windows allowed range of each parameter by id
 * @param firings firings that placed it
 * @param insteadOf id of the stage whose window closed, when this one took its place; else empty
 */
public record PlacedStage(
        String key,
        Optional<StageTerm> stage,
        Setting setting,
        boolean certain,
        Map<String, Window> windows,
        List<Integer> firings,
        String insteadOf) {

    /** Keeps copies. */
    public PlacedStage {
        windows = java.util.Collections.unmodifiableMap(new TreeMap<>(windows));
        firings = List.copyOf(firings);
    }
}
