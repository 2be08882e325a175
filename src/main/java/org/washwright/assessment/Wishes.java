package org.washwright.assessment;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * What may be set for one assessment besides task and edition.
 *
 * @param weights weight of areas by id, from 0; areas left out keep the edition's weight
 * @param assumptions new value of assumptions as text with unit, by id
 * @param asOf date for which law is read, ISO 8601; part of the hashed request
 * @param seed seed for anything sampled
 */
public record Wishes(Map<String, Double> weights, Map<String, String> assumptions, String asOf, long seed) {

    /** Nothing but the date. */
    public static Wishes on(String asOf) {
        return new Wishes(Map.of(), Map.of(), asOf, 0);
    }

    /** Keeps ordered copies. */
    public Wishes {
        weights = Collections.unmodifiableMap(new TreeMap<>(weights));
        assumptions = Collections.unmodifiableMap(new TreeMap<>(assumptions));
    }
}
