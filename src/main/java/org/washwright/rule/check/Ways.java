package org.washwright.rule.check;

import org.washwright.rule.Condition;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Op;
import org.washwright.rule.Pattern;
import org.washwright.rule.Rule;
import org.washwright.rule.Sign;

/**
 * In how many ways the patterns of a rule can meet at most. Only what names a fact makes them fewer: its id, or the fact that
 * a conclusion speaks of. A shared flag or term does not, because all facts of a task may share it, or not be known.
 */
final class Ways {

    private Ways() {}

    static long of(Rule rule) {
        long ways = 1;
        for (Pattern p : rule.patterns()) {
            // Six factors of at most 200 stay far from the end of a long.
            ways *= p.sign() == Sign.POSITIVE ? of(p, rule) : 1;
        }
        return ways;
    }

    private static long of(Pattern p, Rule rule) {
        String type = p.type().name();
        if (type.equals(FactTypes.PROCESS)) {
            return rule.isLineRule()
                    ? 1
                    : Math.min(ids(p.condition(), p.type().cap()), p.type().cap());
        }
        if (type.equals(FactTypes.CONCLUSION) && hasSubject(p.condition())) {
            return Math.min(ids(p.condition(), p.type().cap()), p.type().cap());
        }
        return p.type().cap();
    }

    /** How many ids the condition allows; {@code all} when it does not say. */
    private static long ids(Condition condition, long all) {
        if (condition instanceof Condition.Test t && t.field().name().equals("id")) {
            boolean fixed = t.op() == Op.EQ || t.op() == Op.IN;
            if (fixed && t.operand() instanceof Condition.Operand.Terms terms) {
                return terms.ids().size();
            }
            boolean sameId = t.op() == Op.EQ
                    && t.operand() instanceof Condition.Operand.FieldOf f
                    && f.field().name().equals("id");
            return sameId ? 1 : all;
        }
        if (condition instanceof Condition.All both) {
            return both.parts().stream().mapToLong(c -> ids(c, all)).min().orElse(all);
        }
        return all;
    }

    private static boolean hasSubject(Condition condition) {
        if (condition instanceof Condition.Test t) {
            return t.operand() instanceof Condition.Operand.FactOf;
        }
        return condition instanceof Condition.All all && all.parts().stream().anyMatch(Ways::hasSubject);
    }
}
