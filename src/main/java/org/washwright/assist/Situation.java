package org.washwright.assist;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.washwright.rule.FactType;
import org.washwright.rule.Field;

/** Where in a rule a caret stands: what is expected there. */
sealed interface Situation {

    /** Between rules. */
    record Outside() implements Situation {}

    /** Nothing can be said: in a comment, in a name, behind something unknown. */
    record Free() implements Situation {}

    /** Between a rule's name and {@code when}; {@code given} are the annotations that it has. */
    record Head(Set<String> given) implements Situation {}

    /** Inside the quotes, or where they belong, of an annotation. */
    record AnnotationText(String name) implements Situation {}

    /** Where a pattern may start. */
    record PatternStart(int patterns, boolean signed, boolean named, List<Bound> bounds) implements Situation {}

    /** Where a field is named. */
    record FieldPlace(PatternSoFar pattern, List<Bound> bounds) implements Situation {}

    /** Behind a field. */
    record OperatorPlace(PatternSoFar pattern, Optional<Field> field) implements Situation {}

    /** Behind an operator; {@code op} as written. */
    record LiteralPlace(PatternSoFar pattern, Optional<Field> field, String op, List<Bound> bounds)
            implements Situation {}

    /** Behind something whole, where only these may follow. */
    record Joint(List<String> next) implements Situation {}

    /** Where a verb may start. */
    record ConsequenceStart(boolean any, List<Bound> bounds) implements Situation {}

    /**
     * At an argument of a verb.
     *
     * @param index number of the argument, from 0
     * @param texts the arguments before it as far as they are plain texts, else empty
     * @param nested name of the inner call, such as {@code after}; empty outside of one
     * @param bounds names bound above
     * @param concluded conclusions that the rule itself matches
     */
    record ArgumentPlace(
            Verb verb, int index, List<String> texts, String nested, List<Bound> bounds, Set<String> concluded)
            implements Situation {}

    /**
     * A pattern as far as it is written.
     *
     * @param type its fact type; of a declared attribute the one of its id; empty when it is not known
     * @param attribute true for a pattern over a declared attribute
     */
    record PatternSoFar(Optional<FactType> type, boolean attribute) {

        /** True when it has to say first which attribute it is about. */
        boolean needsId() {
            return attribute && type.isEmpty();
        }
    }
}
