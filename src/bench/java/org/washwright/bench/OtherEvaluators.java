package org.washwright.bench;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.jexl3.JexlBuilder;
import org.apache.commons.jexl3.JexlEngine;
import org.apache.commons.jexl3.JexlExpression;
import org.apache.commons.jexl3.MapContext;
import org.apache.commons.jexl3.introspection.JexlPermissions;
import org.evrete.KnowledgeService;
import org.evrete.api.FactBuilder;
import org.evrete.api.Knowledge;
import org.evrete.api.StatelessSession;
import org.evrete.api.builders.RuleBuilder;
import org.evrete.api.builders.RuleSetBuilder;

/** Two general-purpose evaluators: a forward-chaining rule engine, and an expression language asked rule by rule. */
final class OtherEvaluators {

    private OtherEvaluators() {}

    /** Evrete knows no {@code not}: the third pattern is asked in the consequence, as its users do. */
    static Contender evrete(Synthetic synthetic) {
        Knowledge knowledge = new KnowledgeService().newKnowledge();
        List<IfChain.Hit> hits = new ArrayList<>();
        Synthetic.Task[] current = new Synthetic.Task[1];
        RuleSetBuilder<Knowledge> set = knowledge.builder();
        for (Synthetic.Spec r : synthetic.rules) {
            RuleBuilder<Knowledge> rule = set.newRule(r.id());
            String soil = "soil-" + r.soil();
            String material = "substrate-" + r.material();
            String feature = "feature-" + r.feature();
            if (r.patterns() == 1) {
                rule.forEach("$s", Synthetic.Soil.class)
                        .where("$s.kind.equals(\"" + soil + "\")", "$s.amount > " + r.amount())
                        .execute(c -> hits.add(new IfChain.Hit(r.id(), c.get("$s"), null)));
            } else {
                rule.forEach(
                                FactBuilder.fact("$s", Synthetic.Soil.class),
                                FactBuilder.fact("$m", Synthetic.Material.class))
                        .where(
                                "$s.kind.equals(\"" + soil + "\")",
                                "$s.amount > " + r.amount(),
                                "$m.substrate.equals(\"" + material + "\")",
                                "$m.hardness > " + r.hardness())
                        .execute(c -> {
                            boolean found = r.patterns() > 2
                                    && current[0].features().stream()
                                            .anyMatch(f -> f.kind().equals(feature) && f.slenderness() > r.depth());
                            if (!found) {
                                hits.add(new IfChain.Hit(r.id(), c.get("$s"), c.get("$m")));
                            }
                        });
            }
        }
        set.build();
        return n -> {
            hits.clear();
            current[0] = synthetic.tasks.get(n);
            StatelessSession session = knowledge.newStatelessSession();
            session.insert(current[0].soils());
            session.insert(current[0].materials());
            session.fire();
            return hits.size();
        };
    }

    static Contender jexl(Synthetic synthetic) {
        JexlEngine engine = new JexlBuilder()
                .permissions(JexlPermissions.UNRESTRICTED)
                .cache(10_000)
                .create();
        List<JexlExpression> soils = new ArrayList<>();
        List<JexlExpression> materials = new ArrayList<>();
        List<JexlExpression> features = new ArrayList<>();
        for (Synthetic.Spec r : synthetic.rules) {
            soils.add(engine.createExpression("s.kind == 'soil-" + r.soil() + "' && s.amount > " + r.amount()));
            materials.add(engine.createExpression(
                    "m.substrate == 'substrate-" + r.material() + "' && m.hardness > " + r.hardness()));
            features.add(engine.createExpression(
                    "f.kind == 'feature-" + r.feature() + "' && f.slenderness > " + r.depth()));
        }
        return n -> {
            Synthetic.Task task = synthetic.tasks.get(n);
            List<IfChain.Hit> hits = new ArrayList<>();
            MapContext context = new MapContext();
            for (int i = 0; i < soils.size(); i++) {
                Synthetic.Spec r = synthetic.rules.get(i);
                for (Synthetic.Soil s : task.soils()) {
                    context.set("s", s);
                    if (!(Boolean) soils.get(i).evaluate(context)) {
                        continue;
                    }
                    if (r.patterns() == 1) {
                        hits.add(new IfChain.Hit(r.id(), s, null));
                        continue;
                    }
                    for (Synthetic.Material m : task.materials()) {
                        context.set("m", m);
                        if ((Boolean) materials.get(i).evaluate(context)
                                && !(r.patterns() > 2 && any(features.get(i), context, task.features()))) {
                            hits.add(new IfChain.Hit(r.id(), s, m));
                        }
                    }
                }
            }
            return hits.size();
        };
    }

    private static boolean any(JexlExpression expression, MapContext context, List<Synthetic.Feature> features) {
        for (Synthetic.Feature f : features) {
            context.set("f", f);
            if ((Boolean) expression.evaluate(context)) {
                return true;
            }
        }
        return false;
    }
}
