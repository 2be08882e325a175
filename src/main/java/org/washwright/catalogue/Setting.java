package org.washwright.catalogue;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.quantity.Span;

/**
 * How a stage is run: words for the factors without a scale, and a range for each parameter.
 *
 * @param phrase what one does, imperative, for the one sentence of an answer
 * @param factors words for medium and agitation
 * @param windows usual range of each parameter in SI, by parameter id
 */
public record Setting(String phrase, Map<String, String> factors, Map<String, Span> windows) {

    /** Keeps copies in fixed order. */
    public Setting {
        factors = Collections.unmodifiableMap(new TreeMap<>(factors));
        windows = Collections.unmodifiableMap(new TreeMap<>(windows));
    }
}
