package org.washwright.rule;

import java.util.SortedSet;
import org.washwright.quantity.Quantities;
import org.washwright.task.FieldType;

/** Comparisons of a rule in words, with the names of the catalogue. */
record TestPhrase(Edition edition, Rule rule, RuleThings things) {

    /** A comparison as a clause of its own, for instance "the substrate of the material is carbon steel". */
    String about(int i, Condition.Test t) {
        String thing = things.thing(i);
        if (things.label(i, t.field()).equals(thing)) {
            return things.the(i) + " " + demand(t);
        }
        if (!thing.isEmpty() && isFlag(t)) {
            boolean wanted = (t.op() == Op.EQ || t.op() == Op.IN) == terms(t).contains(FieldType.YES);
            String what = things.label(i, t.field()).replaceFirst(" of the [a-z]+$", "");
            return "“" + what + "” is " + (wanted ? "" : "not ") + "true of " + things.the(i);
        }
        return thing.isEmpty()
                        || t.field().name().equals("id")
                        || t.field().name().equals("node")
                ? test(i, t)
                : "the " + things.label(i, t.field()) + " of " + things.the(i) + " " + demand(t);
    }

    private static boolean isFlag(Condition.Test t) {
        return t.field().type() instanceof FieldType.TermType type
                && type.isFlag()
                && t.operand() instanceof Condition.Operand.Terms terms
                && terms.ids().size() == 1;
    }

    private static SortedSet<String> terms(Condition.Test t) {
        return ((Condition.Operand.Terms) t.operand()).ids();
    }

    String test(int i, Condition.Test t) {
        String type = rule.patterns().get(i).type().name();
        String field = t.field().name();
        if (type.equals(FactTypes.CONCLUSION)) {
            return field.equals("subject") ? "about " + demand(t).replaceFirst("^is ", "") : plain(demand(t));
        }
        if (field.equals("node")) {
            return demand(t).replaceFirst("^is", "belongs to");
        }
        return field.equals("id") ? "it " + demand(t) : things.label(i, t.field()) + " " + demand(t);
    }

    private static String plain(String demand) {
        return demand.startsWith("is not ") ? demand : demand.replaceFirst("^is ", "");
    }

    String demand(Condition.Test t) {
        String sign = switch (t.op()) {
            case EQ, IN -> "is ";
            case NE, NOT_IN -> "is not ";
            case LT -> "is below ";
            case LE -> "is at most ";
            case GT -> "is above ";
            case GE -> "is at least ";
        };
        return sign + operand(t);
    }

    private String operand(Condition.Test t) {
        if (t.operand() instanceof Condition.Operand.Number n) {
            return t.field().type() instanceof FieldType.NumberType type
                    ? Quantities.write(n.si(), type.dimension(), RuleSentence.DIGITS)
                    : Quantities.number(n.si(), RuleSentence.DIGITS);
        }
        if (t.operand() instanceof Condition.Operand.FactOf f) {
            return things.the(f.pattern());
        }
        if (t.operand() instanceof Condition.Operand.FieldOf f) {
            if (things.label(f.pattern(), f.field()).equals(things.thing(f.pattern()))) {
                return things.the(f.pattern());
            }
            return "the " + things.label(f.pattern(), f.field()) + " of " + things.the(f.pattern());
        }
        String kind = t.field().type() instanceof FieldType.TermType type ? type.kind() : "";
        return String.join(
                " or ",
                ((Condition.Operand.Terms) t.operand())
                        .ids().stream().map(id -> name(kind, id)).toList());
    }

    private String name(String kind, String id) {
        return FactTypes.name(edition.catalogue(), kind, id);
    }
}
