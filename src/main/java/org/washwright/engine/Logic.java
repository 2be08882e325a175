package org.washwright.engine;

import java.util.List;
import java.util.SortedSet;
import org.washwright.quantity.Span;
import org.washwright.rule.Condition;
import org.washwright.rule.Op;
import org.washwright.task.Value;

/** Three-valued truth of conditions over facts. Whatever is compared with something not applicable is false. */
public final class Logic {

    private Logic() {}

    /** Truth of a condition of the pattern whose fact is {@code fact}, given the facts of earlier patterns. */
    public static Truth truth(Condition condition, Fact fact, List<Fact> earlier) {
        if (condition instanceof Condition.Test test) {
            return truth(test, fact, earlier);
        }
        boolean all = condition instanceof Condition.All;
        List<Condition> parts = all ? ((Condition.All) condition).parts() : ((Condition.Any) condition).parts();
        Truth truth = all ? Truth.TRUE : Truth.FALSE;
        for (Condition part : parts) {
            Truth t = truth(part, fact, earlier);
            truth = all ? truth.and(t) : truth.or(t);
        }
        return truth;
    }

    /** Truth of one comparison. */
    public static Truth truth(Condition.Test test, Fact fact, List<Fact> earlier) {
        Value value = fact.value(test.field());
        if (test.operand() instanceof Condition.Operand.Number n) {
            return compare(value, test.op(), Value.number(n.si()));
        }
        if (test.operand() instanceof Condition.Operand.Terms t) {
            return terms(value, test.op(), t.ids());
        }
        if (test.operand() instanceof Condition.Operand.FieldOf f) {
            return compare(value, test.op(), earlier.get(f.pattern()).value(f.field()));
        }
        Condition.Operand.FactOf f = (Condition.Operand.FactOf) test.operand();
        return Truth.of(value instanceof Value.Reference r
                && r.factId().equals(earlier.get(f.pattern()).id()));
    }

    private static Truth compare(Value a, Op op, Value b) {
        if (a instanceof Value.NotApplicable || b instanceof Value.NotApplicable) {
            return Truth.FALSE;
        }
        if (a instanceof Value.Unknown || b instanceof Value.Unknown) {
            return Truth.UNDECIDED;
        }
        if (a instanceof Value.Number x && b instanceof Value.Number y) {
            return numbers(x.span(), op, y.span());
        }
        Truth equal = b instanceof Value.AllOf all && !(a instanceof Value.AllOf) ? equal(all, a) : equal(a, b);
        return op == Op.EQ ? equal : equal.not();
    }

    private static Truth numbers(Span a, Op op, Span b) {
        return switch (op) {
            case LT -> Truth.of(a.high() < b.low(), a.low() < b.high());
            case LE -> Truth.of(a.high() <= b.low(), a.low() <= b.high());
            case GT -> numbers(b, Op.LT, a);
            case GE -> numbers(b, Op.LE, a);
            case NE -> numbers(a, Op.EQ, b).not();
            default ->
                Truth.of(a.isPoint() && b.isPoint() && a.low() == b.low(), a.low() <= b.high() && b.low() <= a.high());
        };
    }

    private static Truth equal(Value a, Value b) {
        SortedSet<String> right = termsOf(b);
        SortedSet<String> left = termsOf(a);
        boolean meet = left.stream().anyMatch(right::contains);
        if (a instanceof Value.AllOf && b instanceof Value.AllOf) {
            return Truth.of(meet);
        }
        if (a instanceof Value.AllOf) {
            return Truth.of(left.containsAll(right), meet);
        }
        return Truth.of(left.size() == 1 && right.size() == 1 && meet, meet);
    }

    private static SortedSet<String> termsOf(Value value) {
        return value instanceof Value.AllOf all ? all.terms() : ((Value.OneOf) value).terms();
    }

    private static Truth terms(Value value, Op op, SortedSet<String> ids) {
        if (value instanceof Value.NotApplicable) {
            return Truth.FALSE;
        }
        if (value instanceof Value.Unknown) {
            return Truth.UNDECIDED;
        }
        SortedSet<String> own = termsOf(value);
        boolean meet = own.stream().anyMatch(ids::contains);
        Truth in = value instanceof Value.AllOf ? Truth.of(meet) : Truth.of(ids.containsAll(own), meet);
        return op == Op.EQ || op == Op.IN ? in : in.not();
    }
}
