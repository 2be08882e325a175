package org.washwright.engine.sweep;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.washwright.quantity.Span;
import org.washwright.rule.Condition;
import org.washwright.rule.Op;

/** Makes checks of conditions, apart for what one fact decides alone and what needs earlier facts. */
final class Checks {

    private Checks() {}

    /** The part of a pattern's condition that one fact decides alone. */
    static Condition own(Condition condition) {
        return part(condition, Checks::isOwn);
    }

    /** The part of a pattern's condition that needs facts of earlier patterns. */
    static Condition joining(Condition condition) {
        return part(condition, c -> !isOwn(c));
    }

    private static Condition part(Condition condition, Predicate<Condition> wanted) {
        if (condition instanceof Condition.All all) {
            return new Condition.All(all.parts().stream().filter(wanted).toList());
        }
        return wanted.test(condition) ? condition : Condition.ALWAYS;
    }

    private static boolean isOwn(Condition condition) {
        return condition
                .tests()
                .allMatch(t -> t.operand() instanceof Condition.Operand.Number
                        || t.operand() instanceof Condition.Operand.Terms);
    }

    /** A check of a condition. */
    static Check of(Condition condition) {
        if (condition instanceof Condition.Test test) {
            return of(test);
        }
        if (condition instanceof Condition.All all) {
            List<Check> parts = all.parts().stream().map(Checks::of).toList();
            return parts.size() == 1 ? parts.get(0) : new Check.All(parts);
        }
        List<Check> parts =
                ((Condition.Any) condition).parts().stream().map(Checks::of).toList();
        return new Check.Any(parts);
    }

    private static Check of(Condition.Test test) {
        int slot = test.field().slot();
        if (test.operand() instanceof Condition.Operand.Number n) {
            return new Check.Number(slot, test.op(), Span.of(n.si()));
        }
        if (test.operand() instanceof Condition.Operand.Terms t) {
            return new Check.Terms(slot, Set.copyOf(t.ids()), test.op() == Op.EQ || test.op() == Op.IN);
        }
        if (test.operand() instanceof Condition.Operand.FieldOf f) {
            return new Check.OtherField(slot, test.op(), f.pattern(), f.field().slot());
        }
        return new Check.OtherFact(slot, ((Condition.Operand.FactOf) test.operand()).pattern());
    }
}
