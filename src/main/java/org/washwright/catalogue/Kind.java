package org.washwright.catalogue;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A kind of term.
 *
 * @param id for instance {@code soil}
 * @param name what a reader calls it
 * @param properties what its terms can say of themselves, by id, in the order of the file
 */
public record Kind(String id, String name, Map<String, Property> properties) {

    /** Keeps a copy. */
    public Kind {
        properties = Collections.unmodifiableMap(new LinkedHashMap<>(properties));
    }
}
