package org.washwright.catalogue;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * A kind of term.
 *
 * @param id for instance {@code soil}
 * @param name what a reader calls it
 * @param properties what its terms can say of themselves, in order of their ids, so that a file's order changes no answer
 */
public record Kind(String id, String name, Map<String, Property> properties) {

    /** Keeps an ordered copy. */
    public Kind {
        properties = Collections.unmodifiableMap(new TreeMap<>(properties));
    }
}
