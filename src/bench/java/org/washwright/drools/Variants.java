package org.washwright.drools;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.FactHandle;
import org.washwright.engine.Inference;
import org.washwright.engine.InferenceFactory;
import org.washwright.rule.Rule;

/** Compiled rules with one thing left out or done otherwise, so that its cost shows. */
public final class Variants {

    private static final Pattern COMPANION = Pattern.compile("rule \"[^\"]* possible\".*?\nend\n", Pattern.DOTALL);

    private Variants() {}

    /** Takes matches and forgets them; for rules that conclude nothing. */
    private static final class Counting implements MatchSink {
        private int certain;

        @Override
        public void certain(String rule, MatchFact... facts) {
            certain++;
        }

        @Override
        public void possible(String rule, MatchFact... facts) {
            // Nothing is kept.
        }
    }

    /** Compiled rules, kept from one contender's JVM to the next: what is timed is running them. */
    public static InferenceFactory kept() {
        return DroolsInference.factory(Units.in(Path.of("target", "bench-units")));
    }

    /** The same compiled base with nothing recorded; what it returns is empty. */
    public static InferenceFactory unrecorded() {
        return (rules, levels, types) -> {
            DroolsInference recorded = (DroolsInference) kept().prepare(rules, levels, types);
            return facts -> {
                KieSession session = recorded.base().newKieSession();
                try {
                    Counting sink = new Counting();
                    DroolsInference.fire(session, sink, facts);
                    return new Inference.Inferred(java.util.Collections.nCopies(sink.certain, null), List.of());
                } finally {
                    session.dispose();
                }
            };
        };
    }

    /** Only the certain rules. */
    public static InferenceFactory withoutCompanions() {
        return (rules, levels, types) -> {
            Units units = Units.in(Path.of("target", "bench-units"));
            List<Units.Unit> held = UnitPlan.texts(rules, levels).stream()
                    .map(text -> units.of(COMPANION.matcher(text).replaceAll("")))
                    .toList();
            KieBase base = base(held);
            Map<String, RankedRule> byId = RankedRule.byId(rules, levels);
            return facts -> {
                KieSession session = base.newKieSession();
                try {
                    MatchRecord record = new MatchRecord(byId, types, session);
                    DroolsInference.fire(session, record, facts);
                    return record.inferred();
                } finally {
                    session.dispose();
                }
            };
        };
    }

    /** One session for all tasks, emptied after each; for one thread, and for rules that conclude nothing. */
    public static InferenceFactory inOneSession() {
        return (rules, levels, types) -> {
            DroolsInference compiled =
                    (DroolsInference) kept().prepare(rules, levels, types);
            KieSession session = compiled.base().newKieSession();
            Map<String, RankedRule> byId = RankedRule.byId(rules, levels);
            return facts -> {
                MatchRecord record = new MatchRecord(byId, types, session);
                DroolsInference.fire(session, record, facts);
                List<FactHandle> handles = new ArrayList<>(session.<FactHandle>getFactHandles());
                handles.forEach(session::delete);
                session.fireAllRules();
                return record.inferred();
            };
        };
    }

    /** Compiles one text as a whole. */
    public static void compile(String drl) {
        new Units(Optional.empty()).of(drl);
    }

    /** All rules in one text. */
    public static String oneText(List<Rule> rules, Map<String, Integer> levels) {
        return CanonicalDrl.write("washwright.all", rules, levels);
    }

    private static KieBase base(List<Units.Unit> units) {
        List<Model> models = new ArrayList<>();
        units.forEach(u -> models.addAll(u.models()));
        return KieBaseBuilder.createKieBaseFromModel(models);
    }
}
