package org.washwright.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.washwright.rule.Condition;
import org.washwright.rule.Op;
import org.washwright.rule.Pattern;
import org.washwright.rule.Rule;
import org.washwright.rule.Sign;

/** Rules that differ from a rule in one condition: what they fire on shows what that condition is for. */
final class Rewrites {

    private Rewrites() {}

    /** The rule with other patterns. */
    static Rule with(Rule rule, List<Pattern> patterns) {
        return new Rule(
                rule.id(),
                rule.title(),
                rule.basis(),
                rule.sources(),
                rule.since(),
                rule.note(),
                rule.place(),
                patterns,
                rule.effects());
    }

    /** The rule with one comparison replaced. */
    static Rule replaced(Rule rule, int pattern, Condition.Test test, UnaryOperator<Condition> by) {
        List<Pattern> patterns = new ArrayList<>(rule.patterns());
        Pattern p = patterns.get(pattern);
        patterns.set(pattern, new Pattern(p.sign(), p.type(), replaced(p.condition(), test, by)));
        return with(rule, patterns);
    }

    private static Condition replaced(Condition condition, Condition.Test test, UnaryOperator<Condition> by) {
        if (condition instanceof Condition.Test t) {
            return t.equals(test) ? by.apply(t) : t;
        }
        if (condition instanceof Condition.All all) {
            return new Condition.All(
                    all.parts().stream().map(c -> replaced(c, test, by)).toList());
        }
        return new Condition.Any(((Condition.Any) condition)
                .parts().stream().map(c -> replaced(c, test, by)).toList());
    }

    /** The rule with one comparison taken for granted. */
    static Rule without(Rule rule, int pattern, Condition.Test test) {
        return replaced(rule, pattern, test, t -> Condition.ALWAYS);
    }

    /** The rule with one comparison the other way round; empty where rules can't say so. */
    static Optional<Rule> negated(Rule rule, int pattern, Condition.Test test) {
        return negated(test).map(n -> replaced(rule, pattern, test, t -> n));
    }

    /** The opposite comparison. */
    static Optional<Condition> negated(Condition.Test test) {
        if (test.operand() instanceof Condition.Operand.FactOf) {
            return Optional.empty();
        }
        Op op = switch (test.op()) {
            case EQ -> Op.NE;
            case NE -> Op.EQ;
            case LT -> Op.GE;
            case LE -> Op.GT;
            case GT -> Op.LE;
            case GE -> Op.LT;
            case IN -> Op.NOT_IN;
            case NOT_IN -> Op.IN;
        };
        return Optional.of(new Condition.Test(test.field(), op, test.operand()));
    }

    /** The rule with a pattern that must find something where it must find nothing. */
    static Rule found(Rule rule, int pattern) {
        List<Pattern> patterns = new ArrayList<>(rule.patterns());
        Pattern p = patterns.get(pattern);
        patterns.set(pattern, new Pattern(Sign.EXISTS, p.type(), p.condition()));
        return with(rule, patterns);
    }

    /** The rule where, besides, there is a fact that a {@code not} passes over for one comparison alone. */
    static Optional<Rule> passedOver(Rule rule, int pattern, Condition.Test test) {
        Pattern p = rule.patterns().get(pattern);
        return negated(test).map(n -> {
            List<Pattern> patterns = new ArrayList<>(rule.patterns());
            patterns.add(new Pattern(Sign.EXISTS, p.type(), replaced(p.condition(), test, t -> n)));
            return with(rule, patterns);
        });
    }

    /** For each alternative of each choice, the rule where that alternative holds and none of the others. */
    static List<Rule> alternatives(Rule rule) {
        List<Rule> out = new ArrayList<>();
        for (int i = 0; i < rule.patterns().size(); i++) {
            Pattern p = rule.patterns().get(i);
            if (p.sign() == Sign.NOT) {
                continue;
            }
            for (Condition.Any any : choices(p.condition())) {
                for (Condition only : any.parts()) {
                    List<Pattern> patterns = new ArrayList<>(rule.patterns());
                    patterns.set(i, new Pattern(p.sign(), p.type(), chosen(p.condition(), any, only)));
                    out.add(with(rule, patterns));
                }
            }
        }
        return out;
    }

    private static List<Condition.Any> choices(Condition condition) {
        List<Condition.Any> out = new ArrayList<>();
        if (condition instanceof Condition.Any any) {
            out.add(any);
            any.parts().forEach(c -> out.addAll(choices(c)));
        } else if (condition instanceof Condition.All all) {
            all.parts().forEach(c -> out.addAll(choices(c)));
        }
        return out;
    }

    private static Condition chosen(Condition condition, Condition.Any any, Condition only) {
        if (condition.equals(any)) {
            List<Condition> parts = new ArrayList<>(List.of(only));
            any.parts().stream().filter(c -> !c.equals(only)).forEach(c -> parts.add(opposite(c)));
            return new Condition.All(parts);
        }
        if (condition instanceof Condition.All all) {
            return new Condition.All(
                    all.parts().stream().map(c -> chosen(c, any, only)).toList());
        }
        return condition instanceof Condition.Any other
                ? new Condition.Any(
                        other.parts().stream().map(c -> chosen(c, any, only)).toList())
                : condition;
    }

    /** The opposite of a condition; comparisons that have none are left as they are. */
    private static Condition opposite(Condition condition) {
        if (condition instanceof Condition.Test t) {
            return negated(t).orElse(t);
        }
        if (condition instanceof Condition.All all) {
            return new Condition.Any(
                    all.parts().stream().map(Rewrites::opposite).toList());
        }
        return new Condition.All(((Condition.Any) condition)
                .parts().stream().map(Rewrites::opposite).toList());
    }
}
