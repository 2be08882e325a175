package org.washwright.engine;

import java.util.Collection;
import org.washwright.catalogue.Catalogue;
import org.washwright.quantity.Quantities;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Field;
import org.washwright.task.FieldType;
import org.washwright.task.Value;

/** Puts values into words, with the names of the catalogue and default units. */
public final class Words {

    /** Significant figures of what was given: as many as anyone types. */
    public static final int GIVEN = 6;

    /** Significant figures of what was computed or read. */
    public static final int COMPUTED = 3;

    private static final int MOST_LISTED = 4;

    private final Catalogue catalogue;

    /** Words with the names of this catalogue. */
    public Words(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** A value in words. */
    public String value(Value value, FieldType type, int digits) {
        if (value instanceof Value.Unknown) {
            return "not known";
        }
        if (value instanceof Value.NotApplicable) {
            return "does not apply";
        }
        if (value instanceof Value.Number n && type instanceof FieldType.NumberType t) {
            return Quantities.write(n.span(), t.dimension(), digits);
        }
        if (value instanceof Value.Reference r) {
            return r.factId();
        }
        if (value instanceof Value.AllOf a) {
            return names(a.terms(), type, ", ");
        }
        return names(((Value.OneOf) value).terms(), type, " or ");
    }

    /** The value of a fact's field, as a piece of a sentence. */
    public String inSentence(Fact fact, Field field) {
        Value value = fact.value(field);
        if (!fact.sure() && field.slot() == 0 && field.type() instanceof FieldType.TermType t && !t.isFlag()) {
            // A reason puts its own article before a value.
            return fact.name().replaceFirst("^a ", "");
        }
        if (value instanceof Value.Unknown || value instanceof Value.NotApplicable) {
            return (value instanceof Value.Unknown ? "unknown " : "no ") + field.label();
        }
        if (value instanceof Value.OneOf o && o.terms().size() > MOST_LISTED) {
            return "one of " + o.terms().size();
        }
        int digits = fact.origin(field).kind() == Origin.Kind.GIVEN ? GIVEN : COMPUTED;
        return value(value, field.type(), digits);
    }

    private String names(Collection<String> terms, FieldType type, String joint) {
        String kind = type instanceof FieldType.TermType t ? t.kind() : "";
        return String.join(joint, terms.stream().map(t -> name(kind, t)).toList());
    }

    /** Name of a term; stages of a line are stages or processes. */
    public String name(String kind, String term) {
        return FactTypes.name(catalogue, kind, term);
    }
}
