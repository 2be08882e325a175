package org.washwright.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.washwright.catalogue.Catalogue;
import org.washwright.rule.Edition;
import org.washwright.rule.Effect;
import org.washwright.rule.Rule;

/** Swaps a term in what a rule says. */
final class Swaps {

    private Swaps() {}

    /** The rule that says something else, and what in words. */
    record Swapped(Rule rule, String what) {}

    static Optional<Swapped> inEffect(Rule rule, Edition edition, Random random) {
        int at = random.nextInt(rule.effects().size());
        List<Effect> others = others(rule.effects().get(at), edition);
        if (others.isEmpty()) {
            return Optional.empty();
        }
        Effect other = others.get(random.nextInt(others.size()));
        List<Effect> effects = new ArrayList<>(rule.effects());
        Effect before = effects.set(at, other);
        Rule swapped = new Rule(
                rule.id(),
                rule.title(),
                rule.basis(),
                rule.sources(),
                rule.since(),
                rule.note(),
                rule.place(),
                rule.patterns(),
                effects);
        return Optional.of(new Swapped(swapped, told(before) + " made " + told(other)));
    }

    private static String told(Effect e) {
        return e.toString().replaceAll(", reason=.*", "").replaceAll("reason=.*", "");
    }

    private static List<Effect> others(Effect e, Edition edition) {
        Catalogue c = edition.catalogue();
        List<Effect> out = new ArrayList<>();
        if (e instanceof Effect.Conclude x) {
            c.ofKind("conclusion").keySet().stream()
                    .filter(id -> !id.equals(x.conclusion()))
                    .forEach(id -> out.add(new Effect.Conclude(id, x.subject(), x.reason())));
        } else if (e instanceof Effect.Caution x) {
            c.ofKind("hazard").keySet().stream()
                    .filter(id -> !id.equals(x.hazard()))
                    .forEach(id -> out.add(new Effect.Caution(id, x.target(), x.reason())));
        } else if (e instanceof Effect.Verify x) {
            c.ofKind("test-method").keySet().stream()
                    .filter(id -> !id.equals(x.method()))
                    .forEach(id -> out.add(new Effect.Verify(id, x.reason())));
        } else if (e instanceof Effect.Require x) {
            c.stages().keySet().stream()
                    .filter(id -> !id.equals(x.stage()))
                    .forEach(id -> out.add(new Effect.Require(x.target(), id, x.after(), x.before(), x.reason())));
        } else if (e instanceof Effect.RuleOut x && x.target() instanceof Effect.Target.Node n) {
            nodes(n, c).forEach(t -> out.add(new Effect.RuleOut(t, x.role(), x.reason())));
        } else if (e instanceof Effect.Score x && x.target() instanceof Effect.Target.Node n) {
            nodes(n, c).forEach(t -> out.add(new Effect.Score(x.support(), t, x.criterion(), x.points(), x.reason())));
        } else if (e instanceof Effect.Limit x && x.target() instanceof Effect.Target.Node n) {
            nodes(n, c)
                    .forEach(t -> out.add(new Effect.Limit(
                            t, x.stage(), x.parameter(), x.dimension(), x.max(), x.bound(), x.reason())));
        }
        return out;
    }

    private static List<Effect.Target> nodes(Effect.Target.Node node, Catalogue c) {
        return c.processes().keySet().stream()
                .filter(id -> !id.equals(node.id()))
                .map(id -> (Effect.Target) new Effect.Target.Node(id))
                .toList();
    }
}
