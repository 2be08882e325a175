package org.washwright.assessment;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * What may be set for one assessment besides task and edition.
 *
 * @param weights weight of areas by id, from 0; areas left out keep the edition's weight
 * @param comparisons how many times as much the first of two areas matters as the second, 1/9 to 9, by {@code AREA/AREA}; instead
 *     of weights
 * @param assumptions new value of assumptions as text with unit, by id
 * @param asOf date for which law is read, ISO 8601; part of the hashed request
 * @param seed seed for anything sampled
 */
public record Wishes(
        Map<String, Double> weights,
        Map<String, Double> comparisons,
        Map<String, String> assumptions,
        String asOf,
        long seed) {

    /** Nothing but the date. */
    public static Wishes on(String asOf) {
        return new Wishes(Map.of(), Map.of(), Map.of(), asOf, 0);
    }

    /** Wishes with weights set directly or not at all. */
    public Wishes(Map<String, Double> weights, Map<String, String> assumptions, String asOf, long seed) {
        this(weights, Map.of(), assumptions, asOf, seed);
    }

    /** Keeps ordered copies. */
    public Wishes {
        comparisons = Collections.unmodifiableMap(new TreeMap<>(comparisons));
        weights = Collections.unmodifiableMap(new TreeMap<>(weights));
        assumptions = Collections.unmodifiableMap(new TreeMap<>(assumptions));
    }
}
