package org.washwright.rule.check;

import org.washwright.rule.Condition;
import org.washwright.rule.Contact;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Op;
import org.washwright.rule.Pattern;
import org.washwright.rule.Rule;
import org.washwright.rule.Sign;

/**
 * In how many ways the patterns of a rule can meet at most. Only what names a fact makes them fewer: its id, the fact that
 * a conclusion speaks of, or the two that meet. A shared flag or term does not, because all facts of a task may share it, or not be known.
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
        if (type.equals(FactTypes.CONCLUSION) && names(p.condition(), "subject")) {
            return Math.min(ids(p.condition(), p.type().cap()), p.type().cap());
        }
        return Contact.byFactType(type).map(contact -> meetings(contact, p)).orElse((long)
                p.type().cap());
    }

    /** A meeting is named by the two that meet; one that is not named may be any. */
    private static long meetings(Contact contact, Pattern p) {
        long ways = p.type().cap();
        if (names(p.condition(), "process")) {
            ways /= p.type().cap() / contact.group().cap();
        }
        return names(p.condition(), contact.field()) ? ways / contact.group().cap() : ways;
    }

    private static boolean names(Condition condition, String field) {
        if (condition instanceof Condition.Test t) {
            return t.field().name().equals(field) && t.operand() instanceof Condition.Operand.FactOf;
        }
        return condition instanceof Condition.All all && all.parts().stream().anyMatch(c -> names(c, field));
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
}
