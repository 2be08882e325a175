package org.washwright.assist;

import java.util.Optional;
import org.washwright.rule.FactType;
import org.washwright.rule.Field;

/**
 * A name that a rule gives to a fact, or to a field of one.
 *
 * @param name with its dollar sign
 * @param type type of the fact
 * @param field the field; empty for the fact itself
 */
record Bound(String name, FactType type, Optional<Field> field) {

    boolean isFactOf(String typeName) {
        return field.isEmpty() && type.name().equals(typeName);
    }
}
