package org.washwright.analysis;

import java.util.ArrayList;
import java.util.List;
import org.washwright.rule.Condition;
import org.washwright.rule.Pattern;
import org.washwright.rule.Rule;
import org.washwright.rule.Sign;

/** Rules with one thing changed, for faults. */
final class Conditions {

    private Conditions() {}

    /** The rule without one comparison. */
    static Rule dropped(Rule rule, int pattern, Condition.Test test) {
        List<Pattern> patterns = new ArrayList<>(rule.patterns());
        Pattern p = patterns.get(pattern);
        patterns.set(pattern, new Pattern(p.sign(), p.type(), dropped(p.condition(), test)));
        return Rewrites.with(rule, patterns);
    }

    private static Condition dropped(Condition condition, Condition.Test test) {
        if (condition.equals(test)) {
            return Condition.ALWAYS;
        }
        if (condition instanceof Condition.Test) {
            return condition;
        }
        boolean all = condition instanceof Condition.All;
        List<Condition> parts = all ? ((Condition.All) condition).parts() : ((Condition.Any) condition).parts();
        List<Condition> rest = parts.stream()
                .filter(c -> !c.equals(test))
                .map(c -> dropped(c, test))
                .toList();
        if (rest.size() == 1 && (!all || rest.get(0) instanceof Condition.Test)) {
            return rest.get(0);
        }
        return all ? new Condition.All(rest) : new Condition.Any(rest);
    }

    static Rule signed(Rule rule, int pattern, Sign sign) {
        List<Pattern> patterns = new ArrayList<>(rule.patterns());
        Pattern p = patterns.get(pattern);
        patterns.set(pattern, new Pattern(sign, p.type(), p.condition()));
        return Rewrites.with(rule, patterns);
    }

    static Rule named(Rule rule, String id) {
        return new Rule(
                id,
                rule.title(),
                rule.basis(),
                rule.sources(),
                rule.since(),
                rule.note(),
                rule.place(),
                rule.patterns(),
                rule.effects());
    }

    static Rule unsourced(Rule rule) {
        return new Rule(
                rule.id(),
                rule.title(),
                rule.basis(),
                List.of(),
                rule.since(),
                rule.note(),
                rule.place(),
                rule.patterns(),
                rule.effects());
    }
}
