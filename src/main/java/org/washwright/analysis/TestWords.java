package org.washwright.analysis;

import org.washwright.engine.Words;
import org.washwright.quantity.Quantities;
import org.washwright.rule.Condition;
import org.washwright.rule.Edition;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Op;
import org.washwright.task.FieldType;

/** Puts single comparisons into words. */
public final class TestWords {

    private TestWords() {}

    /** A comparison such as {@code depth over width > 5} or {@code soil is chips}. */
    public static String of(Condition.Test test, Edition edition) {
        return test.field().label() + " " + sign(test.op()) + " " + operand(test, edition);
    }

    private static String sign(Op op) {
        return switch (op) {
            case EQ, IN -> "is";
            case NE, NOT_IN -> "is not";
            case LT -> "<";
            case LE -> "≤";
            case GT -> ">";
            case GE -> "≥";
        };
    }

    private static String operand(Condition.Test test, Edition edition) {
        if (test.operand() instanceof Condition.Operand.Number n
                && test.field().type() instanceof FieldType.NumberType t) {
            return Quantities.write(n.si(), t.dimension(), Words.GIVEN);
        }
        if (test.operand() instanceof Condition.Operand.Terms terms
                && test.field().type() instanceof FieldType.TermType t) {
            return String.join(
                    " or ",
                    terms.ids().stream()
                            .map(id -> FactTypes.name(edition.catalogue(), t.kind(), id))
                            .toList());
        }
        return test.operand() instanceof Condition.Operand.FieldOf f
                ? f.field().label() + " of condition " + (f.pattern() + 1)
                : "what condition " + (((Condition.Operand.FactOf) test.operand()).pattern() + 1) + " matched";
    }
}
