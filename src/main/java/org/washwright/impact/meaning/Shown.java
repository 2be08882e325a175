package org.washwright.impact.meaning;

import org.washwright.catalogue.Catalogue;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;
import org.washwright.quantity.Span;
import org.washwright.rule.FactTypes;
import org.washwright.task.FieldType;
import org.washwright.task.Value;

/** Values as readers see them, and exactly, as far as the meaning hash tells them apart. */
record Shown(Catalogue catalogue) {

    private static final int DIGITS = 6;

    /** A value of a type as readers see it. */
    String value(Value value, FieldType type) {
        if (value instanceof Value.Number n && type instanceof FieldType.NumberType t) {
            return span(n.span(), t.dimension());
        }
        String kind = type instanceof FieldType.TermType t ? t.kind() : "";
        if (value instanceof Value.OneOf o) {
            return String.join(
                    " or ", o.terms().stream().map(id -> name(kind, id)).toList());
        }
        return value instanceof Value.AllOf a
                ? String.join(
                        " and ", a.terms().stream().map(id -> name(kind, id)).toList())
                : value.knowledge();
    }

    private String name(String kind, String id) {
        return FactTypes.name(catalogue, kind, id);
    }

    static String span(Span span, Dimension dimension) {
        return Quantities.write(span, dimension, DIGITS);
    }

    static String exact(Value value) {
        if (value instanceof Value.Number n) {
            return exact(n.span());
        }
        if (value instanceof Value.OneOf o) {
            return String.join(" or ", o.terms());
        }
        return value instanceof Value.AllOf a ? String.join(" and ", a.terms()) : value.knowledge();
    }

    static String exact(Span span) {
        return span.low() + ".." + span.high();
    }

    /** A type as readers see it. */
    static String type(FieldType type) {
        if (type instanceof FieldType.NumberType n) {
            return "quantity, " + n.dimension().label();
        }
        return type instanceof FieldType.TermType t ? "kind " + t.kind() : type.describe();
    }

    static String exact(FieldType type) {
        return type instanceof FieldType.NumberType n
                ? "quantity " + n.dimension().id()
                : type(type);
    }

    static String yes(boolean flag) {
        return flag ? "yes" : "no";
    }

    static String number(double value) {
        return Quantities.number(value, DIGITS);
    }
}
