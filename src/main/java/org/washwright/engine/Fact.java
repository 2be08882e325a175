package org.washwright.engine;

import java.util.List;
import org.washwright.rule.FactType;
import org.washwright.rule.Field;
import org.washwright.task.Value;

/**
 * One thing that rules can match. Immutable; equal by id.
 *
 * <p>A fact that is not sure stands for what may exist: an entry that an open list may still hold, or a conclusion of an
 * undecided firing. It takes part in possible matches only.
 */
public final class Fact {

    private final String id;
    private final FactType type;
    private final String name;
    private final boolean sure;
    private final List<Value> values;
    private final List<Origin> origins;

    /**
     * A fact.
     *
     * @param id for instance {@code materials/0}
     * @param type its fact type
     * @param name what a reader calls it
     * @param sure false when it may not exist
     * @param values values in slot order
     * @param origins origins in slot order
     */
    public Fact(String id, FactType type, String name, boolean sure, List<Value> values, List<Origin> origins) {
        this.id = id;
        this.type = type;
        this.name = name;
        this.sure = sure;
        this.values = List.copyOf(values);
        this.origins = List.copyOf(origins);
        if (values.size() != type.fields().size() || origins.size() != values.size()) {
            throw new IllegalArgumentException(
                    "a " + type.name() + " has " + type.fields().size() + " fields");
        }
    }

    /** Unique in one evaluation. */
    public String id() {
        return id;
    }

    /** Its fact type. */
    public FactType type() {
        return type;
    }

    /** What a reader calls it. */
    public String name() {
        return name;
    }

    /** False when it may not exist. */
    public boolean sure() {
        return sure;
    }

    /** Value of a field of its type. */
    public Value value(Field field) {
        return values.get(field.slot());
    }

    /** Value in a slot of its type. */
    public Value at(int slot) {
        return values.get(slot);
    }

    /** Origin of the value of a field of its type. */
    public Origin origin(Field field) {
        return origins.get(field.slot());
    }

    /** Reference of a field: fact id, slash, field name. */
    public String ref(Field field) {
        return id + "/" + field.name();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Fact f && f.id.equals(id);
    }

    @Override
    public int hashCode() {
        return id.hashCode();
    }

    @Override
    public String toString() {
        return id + (sure ? "" : "?");
    }
}
