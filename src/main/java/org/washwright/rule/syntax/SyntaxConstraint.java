package org.washwright.rule.syntax;

import java.util.List;
import org.washwright.document.Place;
import org.washwright.rule.Op;

/** One constraint of a pattern as written. */
public sealed interface SyntaxConstraint {

    /** Where it stands. */
    Place place();

    /** All of these. */
    record All(List<SyntaxConstraint> parts, Place place) implements SyntaxConstraint {}

    /** Any of these. */
    record Any(List<SyntaxConstraint> parts, Place place) implements SyntaxConstraint {}

    /** A field bound to a variable. */
    record Bind(String variable, String field, Place place) implements SyntaxConstraint {}

    /** A comparison; several operands only with {@code in} and {@code not in}. */
    record Compare(String field, Op op, List<Operand> operands, Place place) implements SyntaxConstraint {}

    /** What a field is compared with. */
    sealed interface Operand {

        /** A text in quotes: a term or a quantity. */
        record Quoted(String text) implements Operand {}

        /** A number without quotes. */
        record Plain(String number) implements Operand {}

        /** True or false. */
        record Flag(boolean value) implements Operand {}

        /** A variable, or a field of one; the field may be empty. */
        record Variable(String name, String field) implements Operand {}
    }
}
