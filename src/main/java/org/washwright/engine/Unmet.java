package org.washwright.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.washwright.rule.Condition;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Pattern;
import org.washwright.rule.Rule;
import org.washwright.rule.Sign;

/**
 * A condition of a rule that nothing known of a task can meet: what would have to be otherwise before the rule could fire.
 * Each pattern is looked at by itself; comparisons between facts count as open.
 *
 * @param pattern number of the pattern in its rule
 * @param tests the comparisons that fail; empty when the pattern fails as a whole
 */
public record Unmet(int pattern, List<Condition.Test> tests) {

    /** Keeps a copy. */
    public Unmet {
        tests = List.copyOf(tests);
    }

    /** The conditions of a rule that fail; none when what is known leaves the rule open or fires it. */
    public static List<Unmet> of(Rule rule, FactBase facts) {
        List<Unmet> unmet = new ArrayList<>();
        for (int i = 0; i < rule.patterns().size(); i++) {
            Pattern pattern = rule.patterns().get(i);
            // Stages are there only when a line is composed.
            if (!pattern.type().name().equals(FactTypes.STAGE)) {
                of(i, pattern, facts).ifPresent(unmet::add);
            }
        }
        return unmet;
    }

    private static Optional<Unmet> of(int index, Pattern pattern, FactBase facts) {
        List<Fact> own = facts.all().stream()
                .filter(f -> f.type().name().equals(pattern.type().name()))
                .toList();
        if (pattern.sign() == Sign.NOT) {
            boolean there = own.stream().anyMatch(f -> f.sure() && truth(pattern.condition(), f) == Truth.TRUE);
            return there ? Optional.of(new Unmet(index, List.of())) : Optional.empty();
        }
        if (own.stream().anyMatch(f -> truth(pattern.condition(), f) != Truth.FALSE)) {
            return Optional.empty();
        }
        List<Condition.Test> fewest = own.stream()
                .map(f -> failing(pattern.condition(), f))
                .min(Comparator.comparingInt(List::size))
                .orElse(List.of());
        return Optional.of(new Unmet(index, fewest));
    }

    /** Comparisons that fail by themselves; none when a whole alternative does. */
    private static List<Condition.Test> failing(Condition condition, Fact fact) {
        List<Condition> parts = condition instanceof Condition.All all ? all.parts() : List.of(condition);
        return parts.stream()
                .filter(Condition.Test.class::isInstance)
                .map(Condition.Test.class::cast)
                .filter(t -> truth(t, fact) == Truth.FALSE)
                .toList();
    }

    private static Truth truth(Condition condition, Fact fact) {
        if (condition instanceof Condition.Test t) {
            boolean literal =
                    t.operand() instanceof Condition.Operand.Number || t.operand() instanceof Condition.Operand.Terms;
            return literal ? Logic.truth(t, fact, List.of()) : Truth.UNDECIDED;
        }
        boolean all = condition instanceof Condition.All;
        List<Condition> parts = all ? ((Condition.All) condition).parts() : ((Condition.Any) condition).parts();
        Truth truth = all ? Truth.TRUE : Truth.FALSE;
        for (Condition part : parts) {
            truth = all ? truth.and(truth(part, fact)) : truth.or(truth(part, fact));
        }
        return truth;
    }
}
