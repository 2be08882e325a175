package org.washwright.plant;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.task.Value;

/**
 * A plant that stands there or is planned. What is not known of it is unknown, never a default.
 *
 * @param name what people call it
 * @param notes free text, no part of any decision
 * @param process id of the process that its main stage runs
 * @param stages stage ids in the order in which a load passes them, {@link #MAIN} among them; empty when not known
 * @param settings what it can be set to, by stage id or {@link #MAIN} and by parameter id
 * @param basket what one basket takes
 * @param largestPart longest part it takes; not applicable when nothing limits it
 * @param chambers chambers or baths of the main stage side by side
 * @param hours hours in which it runs a week
 * @param solvents ids of the solvent classes it is built for; empty when not known
 * @param transfer time to lift a load from station to station; unknown leaves it to the edition
 * @param availability share of its hours in which it works; unknown leaves it to the edition
 */
public record Plant(
        String name,
        String notes,
        String process,
        Optional<List<String>> stages,
        Map<String, Map<String, Value>> settings,
        Basket basket,
        Value largestPart,
        Value chambers,
        Value hours,
        Optional<List<String>> solvents,
        Value transfer,
        Value availability) {

    /** Stands for the main stage among the others. */
    public static final String MAIN = "main";

    /**
     * What one basket takes; a limit that does not exist is not applicable.
     *
     * @param volume room in it; kept for readers, because no task says how much room a part takes
     * @param mass mass of parts
     * @param area wetted area of parts
     */
    public record Basket(Value volume, Value mass, Value area) {

        /** Nothing is known of it. */
        public static final Basket UNKNOWN = new Basket(Value.UNKNOWN, Value.UNKNOWN, Value.UNKNOWN);
    }

    /** Keeps copies in fixed order. */
    public Plant {
        stages = stages.map(List::copyOf);
        solvents = solvents.map(List::copyOf);
        TreeMap<String, Map<String, Value>> copy = new TreeMap<>();
        settings.forEach((stage, map) -> copy.put(stage, Collections.unmodifiableMap(new TreeMap<>(map))));
        settings = Collections.unmodifiableMap(copy);
    }

    /** What a parameter of a stage can be set to; unknown when nothing was said. */
    public Value setting(String stage, String parameter) {
        return settings.getOrDefault(stage, Map.of()).getOrDefault(parameter, Value.UNKNOWN);
    }
}
