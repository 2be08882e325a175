package org.washwright.rule.check;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.washwright.rule.FactType;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Field;

/** Names bound within one rule: patterns ({@code $m}) and fields of patterns ({@code $c}). */
final class Scope {

    /** What a name stands for: a pattern's fact, or one field of it. */
    record Bound(int pattern, FactType type, Optional<Field> field) {}

    private final Map<String, Bound> bound = new HashMap<>();

    boolean bind(String name, Bound what) {
        return bound.putIfAbsent(name, what) == null;
    }

    Optional<Bound> get(String name) {
        return Optional.ofNullable(bound.get(name));
    }

    /** The field that a variable, or a field of one, means; empty when the name or the field is not known. */
    Optional<Bound> field(String name, String fieldName) {
        Bound b = bound.get(name);
        if (b == null) {
            return Optional.empty();
        }
        if (fieldName.isEmpty()) {
            return b.field().isPresent() ? Optional.of(b) : Optional.empty();
        }
        if (b.field().isPresent()) {
            return b.type()
                    .field(b.field().get().name() + "." + fieldName)
                    .map(f -> new Bound(b.pattern(), b.type(), Optional.of(f)));
        }
        return b.type().field(fieldName).map(f -> new Bound(b.pattern(), b.type(), Optional.of(f)));
    }

    /** The pattern that a variable names when it matches facts of a type. */
    Optional<Integer> pattern(String name, String type) {
        return get(name)
                .filter(b -> b.field().isEmpty() && b.type().name().equals(type))
                .map(Bound::pattern);
    }

    boolean isConclusionSubject(Bound b) {
        return !b.type().name().equals(FactTypes.STAGE) && b.field().isEmpty();
    }

    java.util.Set<String> names() {
        return new java.util.TreeSet<>(bound.keySet());
    }
}
