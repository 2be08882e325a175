package org.washwright.rule;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A type of fact that rules can match.
 *
 * @param name for instance {@code Material}, or {@code Attribute/ID} for an attribute that the edition declares
 * @param fields fields by name, in slot order
 * @param cap most facts of this type in one evaluation
 */
public record FactType(String name, Map<String, Field> fields, int cap) {

    /** Keeps an ordered copy. */
    public FactType {
        fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
    }

    static FactType of(String name, int cap, List<Field> fields) {
        Map<String, Field> byName = new LinkedHashMap<>();
        for (Field f : fields) {
            byName.put(f.name(), new Field(f.name(), f.label(), f.type(), byName.size()));
        }
        return new FactType(name, byName, cap);
    }

    /** The field with this name. */
    public Optional<Field> field(String fieldName) {
        return Optional.ofNullable(fields.get(fieldName));
    }
}
