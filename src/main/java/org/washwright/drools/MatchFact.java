package org.washwright.drools;

import java.util.Collection;
import java.util.Optional;
import java.util.Set;
import org.washwright.engine.Fact;
import org.washwright.rule.Field;
import org.washwright.task.Value;

/**
 * A fact as compiled rules see it. For each comparison there are two questions: does it certainly hold, and may it hold.
 *
 * <p>Numbers answer both by four bounds a slot, chosen so that plain comparisons are right in every case: a range has its
 * ends in both pairs; the unknown has infinite ends in both; what is not applicable has ends with which every comparison
 * fails.
 */
public final class MatchFact {

    private static final double UP = Double.POSITIVE_INFINITY;
    private static final double DOWN = Double.NEGATIVE_INFINITY;

    private final Fact fact;
    private final Optional<Fact> matched;
    private final double[] low;
    private final double[] high;
    private final double[] mayLow;
    private final double[] mayHigh;
    private final Value[] values;

    /** The term of a slot that has exactly one; it is compared most often, and so kept at hand. */
    private final String[] only;

    MatchFact(Fact fact) {
        this.fact = fact;
        this.matched = Optional.of(fact);
        Collection<Field> fields = fact.type().fields().values();
        this.low = new double[fields.size()];
        this.high = new double[fields.size()];
        this.mayLow = new double[fields.size()];
        this.mayHigh = new double[fields.size()];
        this.values = new Value[fields.size()];
        this.only = new String[fields.size()];
        for (Field field : fields) {
            bounds(field.slot(), fact.value(field));
        }
    }

    private void bounds(int slot, Value value) {
        values[slot] = value;
        if (value instanceof Value.OneOf o && o.terms().size() == 1) {
            only[slot] = o.terms().first();
        }
        boolean number = value instanceof Value.Number;
        boolean never = value instanceof Value.NotApplicable;
        low[slot] = number ? ((Value.Number) value).span().low() : DOWN;
        high[slot] = number ? ((Value.Number) value).span().high() : UP;
        mayLow[slot] = number ? low[slot] : never ? UP : DOWN;
        mayHigh[slot] = number ? high[slot] : never ? DOWN : UP;
    }

    Fact fact() {
        return fact;
    }

    /** As matches hold it. */
    Optional<Fact> asMatched() {
        return matched;
    }

    /** Name of its fact type. */
    public String getType() {
        return fact.type().name();
    }

    /** False when the fact may not exist. */
    public boolean isSure() {
        return fact.sure();
    }

    /** Lowest value, for certain comparisons. */
    public double low(int slot) {
        return low[slot];
    }

    /** Highest value, for certain comparisons. */
    public double high(int slot) {
        return high[slot];
    }

    /** Lowest value, for possible comparisons. */
    public double mayLow(int slot) {
        return mayLow[slot];
    }

    /** Highest value, for possible comparisons. */
    public double mayHigh(int slot) {
        return mayHigh[slot];
    }

    /** Certainly one of these terms. */
    public boolean anyOf(int slot, String... terms) {
        if (only[slot] != null) {
            return among(only[slot], terms);
        }
        if (values[slot] instanceof Value.OneOf o) {
            for (String own : o.terms()) {
                if (!among(own, terms)) {
                    return false;
                }
            }
            return true;
        }
        return values[slot] instanceof Value.AllOf a && meet(a.terms(), terms);
    }

    /** Possibly one of these terms. */
    public boolean mayAnyOf(int slot, String... terms) {
        if (only[slot] != null) {
            return among(only[slot], terms);
        }
        if (values[slot] instanceof Value.OneOf o) {
            return meet(o.terms(), terms);
        }
        return values[slot] instanceof Value.Unknown || anyOf(slot, terms);
    }

    private static boolean among(String term, String... terms) {
        for (String t : terms) {
            if (t.equals(term)) {
                return true;
            }
        }
        return false;
    }

    private static boolean meet(Set<String> own, String... terms) {
        for (String t : terms) {
            if (own.contains(t)) {
                return true;
            }
        }
        return false;
    }

    /** Certainly none of these terms. */
    public boolean noneOf(int slot, String... terms) {
        return applies(slot) && !mayAnyOf(slot, terms);
    }

    /** Possibly none of these terms. */
    public boolean mayNoneOf(int slot, String... terms) {
        return applies(slot) && !anyOf(slot, terms);
    }

    /** Possibly another number than this. */
    public boolean mayDiffer(int slot, double number) {
        return applies(slot) && !(low[slot] == number && high[slot] == number);
    }

    /** Certainly the same value as that of another fact. */
    public boolean same(int slot, MatchFact other, int otherSlot) {
        Value a = values[slot];
        Value b = other.values[otherSlot];
        if (a instanceof Value.Number) {
            return b instanceof Value.Number && low[slot] == high[slot] && a.equals(b);
        }
        if (a instanceof Value.OneOf x && b instanceof Value.OneOf) {
            return x.terms().size() == 1 && a.equals(b);
        }
        if (a instanceof Value.AllOf x && b instanceof Value.OneOf y) {
            return x.terms().containsAll(y.terms());
        }
        if (a instanceof Value.OneOf && b instanceof Value.AllOf) {
            return other.same(otherSlot, this, slot);
        }
        return a instanceof Value.AllOf && maySame(slot, other, otherSlot);
    }

    /** Possibly the same value as that of another fact. */
    public boolean maySame(int slot, MatchFact other, int otherSlot) {
        Value a = values[slot];
        Value b = other.values[otherSlot];
        if (!applies(slot) || !other.applies(otherSlot)) {
            return false;
        }
        if (a instanceof Value.Unknown || b instanceof Value.Unknown) {
            return true;
        }
        if (a instanceof Value.Number) {
            return low[slot] <= other.high[otherSlot] && other.low[otherSlot] <= high[slot];
        }
        return terms(a).stream().anyMatch(terms(b)::contains);
    }

    /** Certainly another value than that of another fact. */
    public boolean differs(int slot, MatchFact other, int otherSlot) {
        return applies(slot) && other.applies(otherSlot) && !maySame(slot, other, otherSlot);
    }

    /** Possibly another value than that of another fact. */
    public boolean mayDiffer(int slot, MatchFact other, int otherSlot) {
        return applies(slot) && other.applies(otherSlot) && !same(slot, other, otherSlot);
    }

    // Two unknown or missing ends may both be infinite, so comparisons of two facts ask first whether there are
    // numbers.

    /** Certainly above the value of another fact. */
    public boolean above(int slot, MatchFact other, int otherSlot) {
        return other.below(otherSlot, this, slot);
    }

    /** Possibly above the value of another fact. */
    public boolean mayAbove(int slot, MatchFact other, int otherSlot) {
        return other.mayBelow(otherSlot, this, slot);
    }

    /** Certainly not below the value of another fact. */
    public boolean notBelow(int slot, MatchFact other, int otherSlot) {
        return other.notAbove(otherSlot, this, slot);
    }

    /** Possibly not below the value of another fact. */
    public boolean mayNotBelow(int slot, MatchFact other, int otherSlot) {
        return other.mayNotAbove(otherSlot, this, slot);
    }

    /** Certainly below the value of another fact. */
    public boolean below(int slot, MatchFact other, int otherSlot) {
        return isNumber(slot) && other.isNumber(otherSlot) && high[slot] < other.low[otherSlot];
    }

    /** Possibly below the value of another fact. */
    public boolean mayBelow(int slot, MatchFact other, int otherSlot) {
        return mayOrder(slot, other, otherSlot)
                && (!isNumber(slot) || !other.isNumber(otherSlot) || low[slot] < other.high[otherSlot]);
    }

    /** Certainly not above the value of another fact. */
    public boolean notAbove(int slot, MatchFact other, int otherSlot) {
        return isNumber(slot) && other.isNumber(otherSlot) && high[slot] <= other.low[otherSlot];
    }

    /** Possibly not above the value of another fact. */
    public boolean mayNotAbove(int slot, MatchFact other, int otherSlot) {
        return mayOrder(slot, other, otherSlot)
                && (!isNumber(slot) || !other.isNumber(otherSlot) || low[slot] <= other.high[otherSlot]);
    }

    private boolean mayOrder(int slot, MatchFact other, int otherSlot) {
        return applies(slot) && other.applies(otherSlot);
    }

    private boolean isNumber(int slot) {
        return values[slot] instanceof Value.Number;
    }

    /** Names this other fact. */
    public boolean names(int slot, MatchFact other) {
        return values[slot] instanceof Value.Reference r && r.factId().equals(other.fact.id());
    }

    private boolean applies(int slot) {
        return !(values[slot] instanceof Value.NotApplicable);
    }

    private static Collection<String> terms(Value value) {
        return value instanceof Value.AllOf a ? a.terms() : ((Value.OneOf) value).terms();
    }

    @Override
    public String toString() {
        return fact.toString();
    }
}
