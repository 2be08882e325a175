package org.washwright.engine;

import java.util.Collection;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import org.washwright.catalogue.Catalogue;
import org.washwright.quantity.Span;
import org.washwright.rule.FactType;
import org.washwright.rule.Field;
import org.washwright.task.FieldType;
import org.washwright.task.Value;

/** A fact in the making: values are set one by one, then what the catalogue says of their terms is added. */
final class FactDraft {

    private final String id;
    private final FactType type;
    private final Value[] values;
    private final Origin[] origins;

    FactDraft(String id, FactType type) {
        this.id = id;
        this.type = type;
        this.values = new Value[type.fields().size()];
        this.origins = new Origin[values.length];
    }

    /** A draft of its own with the same values. */
    FactDraft copy() {
        FactDraft copy = new FactDraft(id, type);
        System.arraycopy(values, 0, copy.values, 0, values.length);
        System.arraycopy(origins, 0, copy.origins, 0, origins.length);
        return copy;
    }

    Collection<Field> fields() {
        return type.fields().values();
    }

    void set(Field field, Value value, Origin origin) {
        values[field.slot()] = value;
        origins[field.slot()] = origin;
    }

    Field field(String name) {
        return type.field(name).orElseThrow();
    }

    /** True when the edition has such a field. */
    boolean has(String name) {
        return type.field(name).isPresent();
    }

    Value get(String name) {
        return values[type.field(name).orElseThrow().slot()];
    }

    /** What the catalogue says of the term of a field; not applicable when its kind has no such property. */
    Value property(Catalogue catalogue, String name, String property) {
        Field base = type.field(name).orElseThrow();
        return type.field(name + "." + property).isPresent()
                ? property(catalogue, ((FieldType.TermType) base.type()).kind(), values[base.slot()], property)
                : Value.NOT_APPLICABLE;
    }

    /** Fills the fields behind a dot from the catalogue. */
    void paths(Catalogue catalogue) {
        int last = -1;
        Origin unsourced = Origin.NONE;
        for (Field field : fields()) {
            if (field.property().isEmpty()) {
                continue;
            }
            Field base = type.field(field.attribute()).orElseThrow();
            String kind = ((FieldType.TermType) base.type()).kind();
            Value value = values[base.slot()];
            // Fields behind the same dot stand together, and mostly share an origin.
            if (base.slot() != last) {
                unsourced = origin(catalogue, kind, base, value);
                last = base.slot();
            }
            set(
                    field,
                    property(catalogue, kind, value, field.property()),
                    unsourced.by(sources(catalogue, kind, value, field.property())));
        }
    }

    private Origin origin(Catalogue catalogue, String kind, Field base, Value value) {
        String detail = value instanceof Value.OneOf o ? names(catalogue, kind, o.terms()) : "";
        return new Origin(Origin.Kind.CATALOGUE, detail, List.of(id + "/" + base.name()), "");
    }

    private static String sources(Catalogue catalogue, String kind, Value value, String property) {
        if (!(value instanceof Value.OneOf o)) {
            return "";
        }
        SortedSet<String> sources = new TreeSet<>();
        o.terms()
                .forEach(t -> catalogue
                        .term(kind, t)
                        .map(x -> x.sources().get(property))
                        .ifPresent(sources::add));
        return String.join("; ", sources);
    }

    Fact fact(String name, boolean sure) {
        return new Fact(id, type, name, sure, List.of(values), List.of(origins));
    }

    String id() {
        return id;
    }

    /** What all possible terms say of a property, taken together. */
    private static Value property(Catalogue catalogue, String kind, Value term, String property) {
        if (!(term instanceof Value.OneOf o)) {
            return term instanceof Value.NotApplicable ? Value.NOT_APPLICABLE : Value.UNKNOWN;
        }
        if (o.terms().size() == 1) {
            return catalogue
                    .term(kind, o.terms().first())
                    .map(x -> x.property(property))
                    .orElse(Value.UNKNOWN);
        }
        List<Value> all = o.terms().stream()
                .map(t -> catalogue.term(kind, t).map(x -> x.property(property)).orElse(Value.UNKNOWN))
                .toList();
        return all.stream().skip(1).reduce(all.get(0), FactDraft::hull);
    }

    private static Value hull(Value a, Value b) {
        if (a.equals(b)) {
            return a;
        }
        if (a instanceof Value.Number x && b instanceof Value.Number y) {
            Span hull = x.span().hull(y.span());
            return new Value.Number(hull);
        }
        if (a instanceof Value.OneOf x && b instanceof Value.OneOf y) {
            TreeSet<String> both = new TreeSet<>(x.terms());
            both.addAll(y.terms());
            return Value.oneOf(both);
        }
        // One of them may have no such property: then nothing is certain.
        return Value.UNKNOWN;
    }

    static String names(Catalogue catalogue, String kind, SortedSet<String> terms) {
        return String.join(
                " or ", terms.stream().map(t -> catalogue.name(kind, t)).toList());
    }
}
