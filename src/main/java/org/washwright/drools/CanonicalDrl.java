package org.washwright.drools;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.washwright.rule.Condition;
import org.washwright.rule.Condition.Operand;
import org.washwright.rule.Op;
import org.washwright.rule.Pattern;
import org.washwright.rule.Rule;
import org.washwright.rule.Sign;

/**
 * Writes the text that is compiled, from the rule tree alone. For each rule two: one that fires on certain matches, and a
 * companion that fires on possible ones. Levels are salience, so that conclusions of lower levels are settled first, and
 * within a level the certain before the possible.
 */
final class CanonicalDrl {

    private final boolean certain;

    private CanonicalDrl(boolean certain) {
        this.certain = certain;
    }

    /** The text for these rules, in a package of its own; it depends on nothing but the rules and their levels. */
    static String write(String packageName, List<Rule> rules, Map<String, Integer> levels) {
        StringBuilder out = new StringBuilder("package ")
                .append(packageName)
                .append(";\nimport ")
                .append(MatchFact.class.getName())
                .append(";\n")
                .append("global ")
                .append(MatchSink.class.getName())
                .append(" sink;\n");
        for (Rule rule : rules) {
            int level = levels.getOrDefault(rule.id(), 0);
            new CanonicalDrl(true).rule(out, rule, -2 * level);
            new CanonicalDrl(false).rule(out, rule, -2 * level - 1);
        }
        return out.toString();
    }

    private void rule(StringBuilder out, Rule rule, int salience) {
        // Rule ids are checked to be plain letters, digits and hyphens, so they can stand in a name.
        out.append("rule \"")
                .append(rule.id())
                .append(certain ? "" : " possible")
                .append("\"\n");
        out.append("salience ").append(salience).append("\nwhen\n");
        List<String> arguments = new ArrayList<>(List.of("\"" + rule.id() + "\""));
        for (int i = 0; i < rule.patterns().size(); i++) {
            Pattern p = rule.patterns().get(i);
            boolean inner = p.sign() == Sign.NOT ? !certain : certain;
            out.append("  ");
            if (p.sign() == Sign.POSITIVE) {
                out.append("$").append(i).append(" : ");
            } else {
                out.append(p.sign().word());
            }
            out.append(new CanonicalDrl(inner).pattern(p)).append('\n');
            arguments.add(p.sign() == Sign.POSITIVE ? "$" + i : "(MatchFact) null");
        }
        out.append("then\n  sink.").append(certain ? "certain" : "possible");
        out.append('(').append(String.join(", ", arguments)).append(");\nend\n");
    }

    private String pattern(Pattern p) {
        List<String> parts = new ArrayList<>();
        parts.add("type == \"" + p.type().name() + "\"");
        if (certain) {
            parts.add("sure == true");
        }
        if (p.condition() instanceof Condition.All all) {
            all.parts().forEach(c -> parts.add(condition(c)));
        } else {
            parts.add(condition(p.condition()));
        }
        return "MatchFact(" + String.join(", ", parts) + ")";
    }

    private String condition(Condition c) {
        if (c instanceof Condition.Test t) {
            return test(t);
        }
        boolean all = c instanceof Condition.All;
        List<Condition> parts = all ? ((Condition.All) c).parts() : ((Condition.Any) c).parts();
        if (parts.isEmpty()) {
            return "true";
        }
        return "("
                + String.join(
                        all ? " && " : " || ",
                        parts.stream().map(this::condition).toList()) + ")";
    }

    private String test(Condition.Test t) {
        int slot = t.field().slot();
        if (t.operand() instanceof Operand.Number n) {
            return number(t.op(), slot, String.valueOf(n.si()));
        }
        if (t.operand() instanceof Operand.Terms terms) {
            boolean positive = t.op() == Op.EQ || t.op() == Op.IN;
            String method = positive ? (certain ? "anyOf" : "mayAnyOf") : (certain ? "noneOf" : "mayNoneOf");
            return method + "(" + slot + ", "
                    + String.join(
                            ", ",
                            terms.ids().stream().map(id -> "\"" + id + "\"").toList()) + ")";
        }
        if (t.operand() instanceof Operand.FactOf f) {
            return "names(" + slot + ", $" + f.pattern() + ")";
        }
        Operand.FieldOf f = (Operand.FieldOf) t.operand();
        return field(t.op(), slot, "$" + f.pattern(), f.field().slot());
    }

    private String number(Op op, int s, String x) {
        String low = (certain ? "low(" : "mayLow(") + s + ")";
        String high = (certain ? "high(" : "mayHigh(") + s + ")";
        // What must hold of all values is asked of the nearer end, what may hold of the farther one.
        return switch (op) {
            case GT, GE -> (certain ? low : high) + " " + op.sign() + " " + x;
            case LT, LE -> (certain ? high : low) + " " + op.sign() + " " + x;
            case NE ->
                certain ? "(" + low + " > " + x + " || " + high + " < " + x + ")" : "mayDiffer(" + s + ", " + x + ")";
            default ->
                certain
                        ? "(" + low + " == " + x + " && " + high + " == " + x + ")"
                        : "(" + low + " <= " + x + " && " + high + " >= " + x + ")";
        };
    }

    private String field(Op op, int s, String other, int t) {
        return switch (op) {
            case GT -> (certain ? "above(" : "mayAbove(") + s + ", " + other + ", " + t + ")";
            case GE -> (certain ? "notBelow(" : "mayNotBelow(") + s + ", " + other + ", " + t + ")";
            case LT -> (certain ? "below(" : "mayBelow(") + s + ", " + other + ", " + t + ")";
            case LE -> (certain ? "notAbove(" : "mayNotAbove(") + s + ", " + other + ", " + t + ")";
            case NE, NOT_IN -> (certain ? "differs(" : "mayDiffer(") + s + ", " + other + ", " + t + ")";
            default -> (certain ? "same(" : "maySame(") + s + ", " + other + ", " + t + ")";
        };
    }
}
