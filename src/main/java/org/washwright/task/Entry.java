package org.washwright.task;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * One entry of a group: one material, one soil, or the whole of a single group.
 *
 * @param given what was given, by attribute name; what is missing is unknown
 */
public record Entry(Map<String, Given> given) {

    /** Nothing is known. */
    public static final Entry EMPTY = new Entry(Map.of());

    /** Keeps an ordered copy. */
    public Entry {
        given = Collections.unmodifiableMap(new TreeMap<>(given));
    }

    /** Value of an attribute; unknown when nothing was given. */
    public Value value(String attribute) {
        Given g = given.get(attribute);
        return g == null ? Value.UNKNOWN : g.value();
    }
}
