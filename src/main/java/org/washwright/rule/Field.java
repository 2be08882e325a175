package org.washwright.rule;

import org.washwright.task.FieldType;

/**
 * A field of a fact type.
 *
 * @param name as rules write it, for instance {@code substrate.family}
 * @param label what a reader calls it
 * @param type what it holds
 * @param slot its number within the fact type, from 0
 */
public record Field(String name, String label, FieldType type, int slot) {

    /** The attribute whose term opens this property; the name itself for a plain attribute. */
    public String attribute() {
        int dot = name.indexOf('.');
        return dot < 0 ? name : name.substring(0, dot);
    }

    /** The property behind the dot; empty for a plain attribute. */
    public String property() {
        int dot = name.indexOf('.');
        return dot < 0 ? "" : name.substring(dot + 1);
    }
}
