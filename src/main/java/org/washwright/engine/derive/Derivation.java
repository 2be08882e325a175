package org.washwright.engine.derive;

import java.util.List;
import java.util.Optional;
import org.washwright.quantity.Span;
import org.washwright.task.Group;
import org.washwright.task.Value;

/**
 * A formula that computes an attribute. Narrower inputs give narrower results, so that the law of not knowing holds
 * through it.
 */
public interface Derivation {

    /** Attribute it computes. */
    String attribute();

    /** The formula in words or signs. */
    String formula();

    /** Citation, or "definition". */
    String source();

    /** Computes the value for one entry. */
    Computed compute(Inputs inputs);

    /**
     * A computed value.
     *
     * @param value the value
     * @param inputs references of what was read
     * @param further references of what would narrow the value if it were known
     * @param contradiction what contradicts what, in words
     * @param warnings where the formula was used beyond what it holds for, in words
     */
    record Computed(
            Value value,
            List<String> inputs,
            List<String> further,
            Optional<String> contradiction,
            List<String> warnings) {

        Computed(Value value, List<String> inputs, List<String> further, Optional<String> contradiction) {
            this(value, inputs, further, contradiction, List.of());
        }

        static Computed of(Value value, String... inputs) {
            return new Computed(value, List.of(inputs), List.of(), Optional.empty());
        }
    }

    /** What a formula may read. */
    interface Inputs {

        /** Another attribute of the same entry, computed ones included; not applicable when the edition has none such. */
        Value own(String attribute);

        /** What the catalogue says of the term of an own attribute; not applicable when the edition has no such property. */
        Value property(String attribute, String property);

        /** Text of a code attribute of the same entry; empty when none was given. */
        String code(String attribute);

        /** Text of a code attribute of a single group; empty when none was given. */
        String codeOf(Group group, String attribute);

        /** A given attribute of the same entry, codes included. */
        Value given(String attribute);

        /** An attribute of a single group that comes before. */
        Value of(Group group, String attribute);

        /** An assumption. */
        Value assumption(String id);

        /** Hottest, fastest, highest: the upper end of a process's own window of a parameter; not applicable without one. */
        Value highest(String parameter);

        /** Reference of an attribute of the same entry. */
        String ref(String attribute);
    }

    /** Product of two numbers; unknown or not applicable when either is. */
    static Value product(Value a, Value b) {
        return both(a, b, Span::times);
    }

    /** Quotient of two numbers; unknown or not applicable when either is. */
    static Value quotient(Value a, Value b) {
        return both(a, b, Span::over);
    }

    private static Value both(Value a, Value b, java.util.function.BinaryOperator<Span> operation) {
        if (a instanceof Value.NotApplicable || b instanceof Value.NotApplicable) {
            return Value.NOT_APPLICABLE;
        }
        return a instanceof Value.Number x && b instanceof Value.Number y
                ? new Value.Number(operation.apply(x.span(), y.span()))
                : Value.UNKNOWN;
    }
}
