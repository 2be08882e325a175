package org.washwright.rule;

import java.util.List;
import java.util.SortedSet;
import java.util.stream.Stream;

/** What a pattern demands of one fact. */
public sealed interface Condition {

    /** Holds of every fact. */
    Condition ALWAYS = new All(List.of());

    /** All of these hold. */
    record All(List<Condition> parts) implements Condition {
        /** Keeps a copy. */
        public All {
            parts = List.copyOf(parts);
        }
    }

    /** At least one of these holds. */
    record Any(List<Condition> parts) implements Condition {
        /** Keeps a copy. */
        public Any {
            parts = List.copyOf(parts);
        }
    }

    /**
     * A comparison.
     *
     * @param field field of the pattern's fact type
     * @param op operator
     * @param operand what it is compared with
     */
    record Test(Field field, Op op, Operand operand) implements Condition {}

    /** What a field is compared with. */
    sealed interface Operand {

        /** A number in SI. */
        record Number(double si) implements Operand {}

        /** Terms of the field's kind; one unless the operator is {@code in} or {@code not in}. */
        record Terms(SortedSet<String> ids) implements Operand {}

        /** A field of an earlier pattern's fact. */
        record FieldOf(int pattern, Field field) implements Operand {}

        /** The fact of an earlier pattern. */
        record FactOf(int pattern) implements Operand {}
    }

    /** All comparisons, in the order written. */
    default Stream<Test> tests() {
        if (this instanceof Test t) {
            return Stream.of(t);
        }
        List<Condition> parts = this instanceof All a ? a.parts() : ((Any) this).parts();
        return parts.stream().flatMap(Condition::tests);
    }
}
