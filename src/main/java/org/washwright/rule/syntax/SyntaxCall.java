package org.washwright.rule.syntax;

import java.util.List;
import org.washwright.document.Place;

/** One consequence as written: a verb and its arguments. */
public record SyntaxCall(String verb, List<Argument> arguments, Place place) {

    /** Keeps a copy. */
    public SyntaxCall {
        arguments = List.copyOf(arguments);
    }

    /** An argument of a verb. */
    public sealed interface Argument {

        /** A text. */
        record Text(String text) implements Argument {}

        /** A whole number. */
        record Whole(int value) implements Argument {}

        /** A variable, or a field of one; the field may be empty. */
        record Variable(String name, String field) implements Argument {}

        /** A place in the line or a bound: {@code after}, {@code before}, {@code between}, {@code min}, {@code max}. */
        record Nested(String name, List<Argument> arguments) implements Argument {}

        /** In words, for messages. */
        default String describe() {
            if (this instanceof Text t) {
                return "\"" + t.text() + "\"";
            }
            if (this instanceof Whole w) {
                return String.valueOf(w.value());
            }
            if (this instanceof Variable v) {
                return v.field().isEmpty() ? v.name() : v.name() + "." + v.field();
            }
            Nested n = (Nested) this;
            return n.name() + "("
                    + String.join(
                            ", ", n.arguments().stream().map(Argument::describe).toList()) + ")";
        }
    }
}
