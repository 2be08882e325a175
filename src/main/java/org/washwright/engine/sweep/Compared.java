package org.washwright.engine.sweep;

import java.util.Set;
import org.washwright.engine.Truth;
import org.washwright.quantity.Span;
import org.washwright.rule.Op;
import org.washwright.task.Value;

/** Three-valued comparison of two values. */
final class Compared {

    private Compared() {}

    /** Truth of a comparison of two values of one kind. */
    static Truth values(Value a, Op op, Value b) {
        if (a instanceof Value.NotApplicable || b instanceof Value.NotApplicable) {
            return Truth.FALSE;
        }
        if (a instanceof Value.Unknown || b instanceof Value.Unknown) {
            return Truth.UNDECIDED;
        }
        if (a instanceof Value.Number x && b instanceof Value.Number y) {
            return numbers(x.span(), op, y.span());
        }
        Truth equal = sameTerms(a, b);
        return op == Op.EQ ? equal : equal.not();
    }

    /** Truth of a comparison of two spans: for every pair of their values, for some, for none. */
    static Truth numbers(Span a, Op op, Span b) {
        return switch (op) {
            case LT -> truth(a.high() < b.low(), a.low() < b.high());
            case LE -> truth(a.high() <= b.low(), a.low() <= b.high());
            case GT -> truth(a.low() > b.high(), a.high() > b.low());
            case GE -> truth(a.low() >= b.high(), a.high() >= b.low());
            case NE -> same(a, b).not();
            default -> same(a, b);
        };
    }

    private static Truth same(Span a, Span b) {
        boolean meet = a.low() <= b.high() && b.low() <= a.high();
        return truth(meet && a.isPoint() && b.isPoint(), meet);
    }

    private static Truth sameTerms(Value a, Value b) {
        Set<String> left = terms(a);
        Set<String> right = terms(b);
        int met = 0;
        for (String term : left) {
            met += right.contains(term) ? 1 : 0;
        }
        boolean allA = a instanceof Value.AllOf;
        boolean allB = b instanceof Value.AllOf;
        // What has all its terms at once equals each of them; of alternatives both have to be down to the same one.
        boolean sure = allA && allB
                ? met > 0
                : allA
                        ? met == right.size()
                        : allB ? met == left.size() : left.size() == 1 && right.size() == 1 && met == 1;
        return truth(sure, met > 0);
    }

    /** The terms of a value that has terms. */
    static Set<String> terms(Value value) {
        return value instanceof Value.AllOf all ? all.terms() : ((Value.OneOf) value).terms();
    }

    private static Truth truth(boolean certain, boolean possible) {
        return certain ? Truth.TRUE : possible ? Truth.UNDECIDED : Truth.FALSE;
    }
}
