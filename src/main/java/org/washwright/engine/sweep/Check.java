package org.washwright.engine.sweep;

import java.util.List;
import java.util.Set;
import org.washwright.engine.Fact;
import org.washwright.engine.Truth;
import org.washwright.quantity.Span;
import org.washwright.rule.Op;
import org.washwright.task.Value;

/** One condition made ready to be asked many times. */
sealed interface Check {

    /**
     * Its truth.
     *
     * @param fact the fact that is matched
     * @param earlier facts of the earlier patterns; null for {@code not} and {@code exists}
     */
    Truth of(Fact fact, Fact[] earlier);

    /** All of these. */
    record All(List<Check> parts) implements Check {
        @Override
        public Truth of(Fact fact, Fact[] earlier) {
            Truth truth = Truth.TRUE;
            for (Check part : parts) {
                truth = truth.and(part.of(fact, earlier));
                if (truth == Truth.FALSE) {
                    return truth;
                }
            }
            return truth;
        }
    }

    /** Any of these. */
    record Any(List<Check> parts) implements Check {
        @Override
        public Truth of(Fact fact, Fact[] earlier) {
            Truth truth = Truth.FALSE;
            for (Check part : parts) {
                truth = truth.or(part.of(fact, earlier));
                if (truth == Truth.TRUE) {
                    return truth;
                }
            }
            return truth;
        }
    }

    /** One of these terms, or none of them. */
    record Terms(int slot, Set<String> ids, boolean among) implements Check {
        @Override
        public Truth of(Fact fact, Fact[] earlier) {
            Value value = fact.at(slot);
            if (value instanceof Value.Unknown) {
                return Truth.UNDECIDED;
            }
            if (value instanceof Value.NotApplicable) {
                return Truth.FALSE;
            }
            int met = 0;
            Set<String> own = Compared.terms(value);
            for (String term : own) {
                met += ids.contains(term) ? 1 : 0;
            }
            boolean whole = value instanceof Value.AllOf ? met > 0 : met == own.size();
            Truth in = whole ? Truth.TRUE : met > 0 ? Truth.UNDECIDED : Truth.FALSE;
            return among ? in : in.not();
        }
    }

    /** Compared with a number in SI. */
    record Number(int slot, Op op, Span span) implements Check {
        @Override
        public Truth of(Fact fact, Fact[] earlier) {
            Value value = fact.at(slot);
            if (value instanceof Value.Number n) {
                return Compared.numbers(n.span(), op, span);
            }
            return value instanceof Value.Unknown ? Truth.UNDECIDED : Truth.FALSE;
        }
    }

    /** Compared with a field of an earlier fact. */
    record OtherField(int slot, Op op, int pattern, int otherSlot) implements Check {
        @Override
        public Truth of(Fact fact, Fact[] earlier) {
            return Compared.values(fact.at(slot), op, earlier[pattern].at(otherSlot));
        }
    }

    /** Names an earlier fact. */
    record OtherFact(int slot, int pattern) implements Check {
        @Override
        public Truth of(Fact fact, Fact[] earlier) {
            return fact.at(slot) instanceof Value.Reference r && r.factId().equals(earlier[pattern].id())
                    ? Truth.TRUE
                    : Truth.FALSE;
        }
    }
}
