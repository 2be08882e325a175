package org.washwright.casework;

import java.util.stream.Collectors;
import org.washwright.catalogue.Catalogue;
import org.washwright.quantity.Quantities;
import org.washwright.task.FieldType;
import org.washwright.task.Given;
import org.washwright.task.Value;

/** A value of a task as readers see it. */
final class ShownValue {
    private static final int DIGITS = 3;

    private ShownValue() {}

    static String of(Catalogue catalogue, Given given, FieldType type) {
        return type instanceof FieldType.CodeType && !given.code().isEmpty()
                ? given.code()
                : of(catalogue, given.value(), type);
    }

    static String of(Catalogue catalogue, Value value, FieldType type) {
        if (value instanceof Value.NotApplicable) {
            return "does not apply";
        }
        if (value instanceof Value.Number n && type instanceof FieldType.NumberType t) {
            return Quantities.write(n.span(), t.dimension(), DIGITS);
        }
        if (value instanceof Value.OneOf o) {
            return o.terms().stream()
                    .map(id -> type instanceof FieldType.TermType t && !t.isFlag() ? catalogue.name(t.kind(), id) : id)
                    .collect(Collectors.joining(" or "));
        }
        return "not known";
    }
}
