package org.washwright.catalogue;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.document.Place;
import org.washwright.task.Value;

/**
 * A term of the trade.
 *
 * @param kind id of its kind
 * @param id unique within the kind
 * @param name what a reader calls it
 * @param definition what it means
 * @param synonyms other words for it
 * @param replacedBy id of its successor when it is withdrawn, else empty
 * @param properties values by property id; what is left out is not applicable
 * @param sources citation of a property's value, by property id
 * @param place where it stands in the edition
 */
public record Term(
        String kind,
        String id,
        String name,
        String definition,
        List<String> synonyms,
        String replacedBy,
        Map<String, Value> properties,
        Map<String, String> sources,
        Place place) {

    /** Keeps copies in fixed order. */
    public Term {
        synonyms = List.copyOf(synonyms);
        properties = Collections.unmodifiableMap(new TreeMap<>(properties));
        sources = Collections.unmodifiableMap(new TreeMap<>(sources));
    }

    /** Value of a property; not applicable when the term does not say. */
    public Value property(String id) {
        return properties.getOrDefault(id, Value.NOT_APPLICABLE);
    }

    /** True when the term is withdrawn. */
    public boolean isWithdrawn() {
        return !replacedBy.isEmpty();
    }
}
