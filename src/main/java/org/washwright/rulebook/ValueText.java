package org.washwright.rulebook;

import java.util.stream.Collectors;
import org.washwright.catalogue.Catalogue;
import org.washwright.quantity.Quantities;
import org.washwright.task.FieldType;
import org.washwright.task.Value;

/** A value as readers see it. */
final class ValueText {
    private static final int DIGITS = 3;

    private ValueText() {}

    static String of(Catalogue catalogue, Value value, FieldType type) {
        if (value instanceof Value.Unknown) {
            return "not known";
        }
        if (value instanceof Value.NotApplicable) {
            return "not applicable";
        }
        if (value instanceof Value.Number n && type instanceof FieldType.NumberType t) {
            return Quantities.write(n.span(), t.dimension(), DIGITS);
        }
        if (value instanceof Value.OneOf o) {
            return o.terms().stream().map(id -> name(catalogue, id, type)).collect(Collectors.joining(" or "));
        }
        if (value instanceof Value.AllOf a) {
            return a.terms().stream().map(id -> name(catalogue, id, type)).collect(Collectors.joining(", "));
        }
        return "";
    }

    private static String name(Catalogue catalogue, String id, FieldType type) {
        return type instanceof FieldType.TermType t && !t.isFlag() ? catalogue.name(t.kind(), id) : id;
    }
}
