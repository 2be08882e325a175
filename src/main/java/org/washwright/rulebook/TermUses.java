package org.washwright.rulebook;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.catalogue.Catalogue;
import org.washwright.rule.Condition;
import org.washwright.rule.Edition;
import org.washwright.rule.Effect;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Rule;
import org.washwright.task.FieldType;

/** Which rules speak of which term, in their conditions or in what they say. */
public final class TermUses {

    /** A rule that speaks of a term. */
    public record Use(String id, String title) {}

    private final Catalogue catalogue;
    private final Map<String, Map<String, Use>> byTerm = new HashMap<>();

    private TermUses(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** Looks all rules of an edition over. */
    public static TermUses of(Edition edition) {
        TermUses uses = new TermUses(edition.catalogue());
        edition.rules().forEach(uses::read);
        return uses;
    }

    /** The rules that speak of a term, by id. */
    public List<Use> of(String kind, String id) {
        return List.copyOf(byTerm.getOrDefault(key(kind, id), Map.of()).values());
    }

    private void read(Rule rule) {
        rule.patterns().stream().flatMap(p -> p.condition().tests()).forEach(test -> {
            if (test.operand() instanceof Condition.Operand.Terms terms
                    && test.field().type() instanceof FieldType.TermType type
                    && !type.isFlag()) {
                terms.ids().forEach(id -> note(rule, kind(type.kind(), id), id));
            }
        });
        rule.effects().forEach(effect -> read(rule, effect));
    }

    private String kind(String kind, String id) {
        if (!kind.equals(FactTypes.LINE_STAGE)) {
            return kind;
        }
        return catalogue.term("stage", id).isPresent() ? "stage" : "process";
    }

    private void read(Rule rule, Effect effect) {
        if (effect instanceof Effect.Conclude c) {
            note(rule, "conclusion", c.conclusion());
        } else if (effect instanceof Effect.RuleOut r) {
            note(rule, r.target());
        } else if (effect instanceof Effect.Score s) {
            note(rule, s.target());
        } else if (effect instanceof Effect.Require r) {
            note(rule, r.target());
            note(rule, "stage", r.stage());
            r.after().ifPresent(stage -> note(rule, stage));
            r.before().ifPresent(stage -> note(rule, stage));
        } else if (effect instanceof Effect.Limit l) {
            note(rule, l.target());
            note(rule, l.stage());
            note(rule, "parameter", l.parameter());
        } else if (effect instanceof Effect.Caution c) {
            note(rule, "hazard", c.hazard());
            c.target().ifPresent(target -> note(rule, target));
        } else if (effect instanceof Effect.Verify v) {
            note(rule, "test-method", v.method());
        }
    }

    private void note(Rule rule, Effect.Target target) {
        if (target instanceof Effect.Target.Node node) {
            note(rule, "process", node.id());
        }
    }

    private void note(Rule rule, Effect.StageRef stage) {
        if (stage instanceof Effect.StageRef.Named named) {
            note(rule, "stage", named.id());
        }
    }

    private void note(Rule rule, String kind, String id) {
        byTerm.computeIfAbsent(key(kind, id), k -> new TreeMap<>())
                .putIfAbsent(rule.id(), new Use(rule.id(), rule.title()));
    }

    private static String key(String kind, String id) {
        return kind + "/" + id;
    }
}
