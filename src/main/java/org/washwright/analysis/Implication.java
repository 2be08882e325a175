package org.washwright.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.washwright.rule.Condition;
import org.washwright.rule.Edition;
import org.washwright.rule.Effect;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Pattern;
import org.washwright.rule.Rule;
import org.washwright.rule.Sign;

/**
 * Tells whether one rule surely fires wherever another does. Each pattern of the wider rule has to be met by what a pattern
 * of the narrower one matched; a {@code not} has to be as sharp as one of the narrower rule.
 */
final class Implication {

    private final Edition edition;
    private final Space space;

    Implication(Edition edition, Space space) {
        this.edition = edition;
        this.space = space;
    }

    /** Which pattern of the narrower rule stands for each pattern of the wider one; empty when the wider may stay silent. */
    Optional<List<Integer>> of(Rule narrow, Rule wide) {
        return narrow.isLineRule() == wide.isLineRule() ? mapped(narrow, wide, new ArrayList<>()) : Optional.empty();
    }

    private Optional<List<Integer>> mapped(Rule narrow, Rule wide, List<Integer> map) {
        int i = map.size();
        if (i == wide.patterns().size()) {
            return Optional.of(List.copyOf(map));
        }
        Pattern w = wide.patterns().get(i);
        for (int j = 0; j < narrow.patterns().size(); j++) {
            Pattern n = narrow.patterns().get(j);
            if (n.type().name().equals(w.type().name()) && fits(n, w, map, wide, i)) {
                map.add(j);
                Optional<List<Integer>> found = mapped(narrow, wide, map);
                if (found.isPresent()) {
                    return found;
                }
                map.remove(i);
            }
        }
        return Optional.empty();
    }

    private boolean fits(Pattern n, Pattern w, List<Integer> map, Rule wide, int index) {
        if (w.sign() == Sign.NOT) {
            // Whatever the wider rule must not find, the narrower must not find either.
            return n.sign() == Sign.NOT && meets(unmapped(w.condition(), map), n);
        }
        boolean found = n.sign() == Sign.POSITIVE || n.sign() == Sign.EXISTS && !isNamed(wide, index);
        return found && meets(n.condition(), new Pattern(w.sign(), w.type(), unmapped(w.condition(), map)));
    }

    /** True when what meets the condition surely meets the pattern. */
    private boolean meets(Condition narrow, Pattern wide) {
        List<Condition> given = parts(narrow);
        List<Condition> rest =
                parts(wide.condition()).stream().filter(c -> !given.contains(c)).toList();
        if (rest.stream().flatMap(Condition::tests).anyMatch(Space::isJoin)) {
            return false;
        }
        return rest.isEmpty() || space.implies(wide.type(), narrow, new Condition.All(rest));
    }

    private static List<Condition> parts(Condition condition) {
        return condition instanceof Condition.All all
                ? all.parts().stream().flatMap(c -> parts(c).stream()).toList()
                : List.of(condition);
    }

    /** The condition with references to the wider rule's patterns turned into the narrower rule's. */
    private static Condition unmapped(Condition condition, List<Integer> map) {
        if (condition instanceof Condition.Test t) {
            if (t.operand() instanceof Condition.Operand.FactOf f) {
                return new Condition.Test(t.field(), t.op(), new Condition.Operand.FactOf(map.get(f.pattern())));
            }
            if (t.operand() instanceof Condition.Operand.FieldOf f) {
                return new Condition.Test(
                        t.field(), t.op(), new Condition.Operand.FieldOf(map.get(f.pattern()), f.field()));
            }
            return t;
        }
        return condition instanceof Condition.All all
                ? new Condition.All(
                        all.parts().stream().map(c -> unmapped(c, map)).toList())
                : new Condition.Any(((Condition.Any) condition)
                        .parts().stream().map(c -> unmapped(c, map)).toList());
    }

    /** True when an effect or a later pattern speaks of the fact of a pattern. */
    private static boolean isNamed(Rule rule, int pattern) {
        return rule.effects().stream().anyMatch(e -> Effects.patterns(e).contains(pattern))
                || rule.patterns().stream()
                        .flatMap(p -> p.condition().tests())
                        .anyMatch(t -> t.operand() instanceof Condition.Operand.FactOf f && f.pattern() == pattern
                                || t.operand() instanceof Condition.Operand.FieldOf x && x.pattern() == pattern);
    }

    /** Processes that an effect of a rule may be about. */
    Set<String> about(Rule rule, Effect.Target target) {
        if (target instanceof Effect.Target.Node n) {
            return new TreeSet<>(edition.catalogue().members(n.id()));
        }
        Pattern p = rule.patterns().get(((Effect.Target.Matched) target).pattern());
        return p.type().name().equals(FactTypes.PROCESS) ? space.processes(p.condition()) : Set.of();
    }

    /** True when the wider rule's effect is about every process that the narrower rule's is about. */
    boolean covers(Rule narrow, Effect.Target inNarrow, Rule wide, Effect.Target inWide, List<Integer> map) {
        if (inNarrow instanceof Effect.Target.Matched n && inWide instanceof Effect.Target.Matched w) {
            return map.get(w.pattern()) == n.pattern();
        }
        return inWide instanceof Effect.Target.Node && about(wide, inWide).containsAll(about(narrow, inNarrow));
    }
}
