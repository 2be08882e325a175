package org.washwright.analysis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.washwright.rule.Condition;
import org.washwright.rule.Edition;
import org.washwright.rule.Effect;
import org.washwright.rule.FactType;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Levels;
import org.washwright.rule.Pattern;
import org.washwright.rule.Rule;
import org.washwright.rule.Sign;
import org.washwright.task.Group;

/** Proves of rules that they can never fire. */
final class Deadness {

    private final Edition edition;
    private final Space space;
    private final Map<String, Optional<String>> known = new HashMap<>();

    Deadness(Edition edition, Space space) {
        this.edition = edition;
        this.space = space;
    }

    /** Why a rule can never fire; empty when nothing proves it. Rules are looked at behind those that conclude for them. */
    Optional<String> of(Rule rule) {
        Optional<String> before = known.get(rule.id());
        if (before != null) {
            return before;
        }
        Optional<String> why =
                alone(rule).or(() -> together(rule)).or(() -> passedBy(rule)).or(() -> unconcluded(rule));
        known.put(rule.id(), why);
        return why;
    }

    private static String place(int pattern) {
        return "its condition " + (pattern + 1);
    }

    private Optional<String> alone(Rule rule) {
        for (int i = 0; i < rule.patterns().size(); i++) {
            Pattern p = rule.patterns().get(i);
            if (p.sign() != Sign.NOT && space.isEmpty(p.type(), List.of(p.condition()))) {
                return Optional.of(
                        place(i) + " asks for what no " + p.type().name() + " of this edition can be at once");
            }
        }
        return Optional.empty();
    }

    /** Conditions on a group of which a task has only one must hold of that one all together. */
    private Optional<String> together(Rule rule) {
        for (int i = 0; i < rule.patterns().size(); i++) {
            FactType type = rule.patterns().get(i).type();
            boolean single = Group.byFactType(type.name()).map(g -> !g.isList()).orElse(false)
                    || type.name().startsWith(FactTypes.ATTRIBUTE + "/");
            List<Condition> all = new ArrayList<>();
            rule.patterns().stream()
                    .filter(p -> p.type().equals(type) && p.sign() != Sign.NOT)
                    .forEach(p -> all.add(p.condition()));
            if (single && all.size() > 1 && space.isEmpty(type, all)) {
                return Optional.of("its conditions on " + type.name() + " can't hold of the same one");
            }
        }
        return Optional.empty();
    }

    /** What must be there and what must not be there exclude each other. */
    private Optional<String> passedBy(Rule rule) {
        for (Pattern not : rule.patterns()) {
            if (not.sign() != Sign.NOT || not.condition().tests().anyMatch(Space::isJoin)) {
                continue;
            }
            for (int i = 0; i < rule.patterns().size(); i++) {
                Pattern p = rule.patterns().get(i);
                if (p.sign() != Sign.NOT
                        && p.type().equals(not.type())
                        && space.implies(p.type(), p.condition(), not.condition())) {
                    return Optional.of(place(i) + " asks for what another of its conditions forbids");
                }
            }
        }
        return Optional.empty();
    }

    private Optional<String> unconcluded(Rule rule) {
        for (int i = 0; i < rule.patterns().size(); i++) {
            Pattern p = rule.patterns().get(i);
            if (p.sign() == Sign.NOT || !p.type().name().equals(FactTypes.CONCLUSION)) {
                continue;
            }
            Set<String> all = new TreeSet<>();
            edition.rules().forEach(r -> all.addAll(Levels.concluded(r)));
            Set<String> wanted = Levels.matched(Rewrites.with(rule, List.of(p)), all);
            boolean possible = edition.rules().stream()
                    .filter(r -> !r.id().equals(rule.id()))
                    .anyMatch(r -> concludes(r, wanted, rule, p) && of(r).isEmpty());
            if (!possible) {
                return Optional.of(place(i) + " waits for a conclusion that no rule can draw about it");
            }
        }
        return Optional.empty();
    }

    /** True when a rule may conclude one of these about the fact that another pattern of the waiting rule matches. */
    private boolean concludes(Rule rule, Set<String> wanted, Rule waiting, Pattern pattern) {
        Optional<Integer> subject = pattern.condition()
                .tests()
                .filter(t -> t.operand() instanceof Condition.Operand.FactOf)
                .map(t -> ((Condition.Operand.FactOf) t.operand()).pattern())
                .findFirst();
        return rule.effects().stream()
                .filter(e -> e instanceof Effect.Conclude)
                .map(e -> (Effect.Conclude) e)
                .filter(c -> wanted.contains(c.conclusion()))
                .anyMatch(c ->
                        subject.isEmpty() || meet(rule, c, waiting.patterns().get(subject.get())));
    }

    private boolean meet(Rule rule, Effect.Conclude conclude, Pattern about) {
        if (conclude.subject().isEmpty()) {
            return false;
        }
        Pattern p = rule.patterns().get(conclude.subject().get());
        return p.type().equals(about.type()) && !space.excludes(p.type(), p.condition(), about.condition());
    }
}
