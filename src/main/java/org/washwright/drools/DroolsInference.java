package org.washwright.drools;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;
import org.washwright.engine.Fact;
import org.washwright.engine.Inference;
import org.washwright.engine.InferenceFactory;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Rule;

/** Rules compiled by Drools from their canonical form. */
public final class DroolsInference implements Inference {

    /** Most firings of one run, far above what the caps on tasks and rules allow; a guard, not a limit to work with. */
    private static final int MAX_FIRINGS = 2_000_000;

    /** Units of this process that no store keeps. */
    private static final Units IN_MEMORY = new Units(Optional.empty());

    private final Map<String, RankedRule> rules;
    private final FactTypes types;

    /** Held so that other editions find these units in memory as long as this one lives. */
    private final List<Units.Unit> units;

    private final KieBase base;

    private DroolsInference(
            List<Rule> rules,
            Map<String, Integer> levels,
            FactTypes types,
            Units units,
            BiConsumer<Integer, Integer> progress) {
        this.rules = RankedRule.byId(rules, levels);
        this.types = types;
        List<String> texts = UnitPlan.texts(rules, levels);
        List<Units.Unit> made = new ArrayList<>();
        texts.forEach(text -> {
            made.add(units.of(text));
            progress.accept(made.size(), texts.size());
        });
        this.units = List.copyOf(made);
        List<Model> models = new ArrayList<>();
        this.units.forEach(u -> models.addAll(u.models()));
        this.base = KieBaseBuilder.createKieBaseFromModel(models);
    }

    /** Compiles rules; takes seconds of processor time for a hundred rules. */
    public static InferenceFactory factory() {
        return factory(IN_MEMORY);
    }

    /** Takes rules compiled before from these units, and compiles the others. */
    public static InferenceFactory factory(Units units) {
        return factory(units, (done, all) -> {});
    }

    /** The same, telling after each part how many of how many are ready. */
    public static InferenceFactory factory(Units units, BiConsumer<Integer, Integer> progress) {
        return (rules, levels, types) -> new DroolsInference(rules, levels, types, units, progress);
    }

    @Override
    public Inferred run(List<Fact> facts) {
        if (rules.isEmpty()) {
            // A base without rules knows no sink either.
            return new Inferred(List.of(), List.of());
        }
        KieSession session = base.newKieSession();
        try {
            MatchRecord record = new MatchRecord(rules, types, session);
            fire(session, record, facts);
            return record.inferred();
        } finally {
            session.dispose();
        }
    }

    /** Runs the rules over facts in a session of {@link #base()}; what matches goes to the sink. */
    static void fire(KieSession session, MatchSink sink, List<Fact> facts) {
        session.setGlobal("sink", sink);
        facts.forEach(f -> session.insert(new MatchFact(f)));
        if (session.fireAllRules(MAX_FIRINGS) >= MAX_FIRINGS) {
            throw new IllegalStateException("the rules fired " + MAX_FIRINGS
                    + " times on one task; split rules whose patterns meet in too many ways");
        }
    }

    /** The compiled rules. */
    KieBase base() {
        return base;
    }
}
