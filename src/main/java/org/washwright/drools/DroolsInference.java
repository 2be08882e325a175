package org.washwright.drools;

import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.builder.ReleaseId;
import org.kie.api.runtime.KieContainer;
import org.kie.api.runtime.KieSession;
import org.washwright.engine.Fact;
import org.washwright.engine.Inference;
import org.washwright.engine.InferenceFactory;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Rule;

/** Rules compiled by Drools from their canonical form. */
public final class DroolsInference implements Inference {

    private static final AtomicLong BUILDS = new AtomicLong();

    private final List<Rule> rules;
    private final Map<String, Integer> levels;
    private final FactTypes types;
    private final KieBase base;

    private DroolsInference(List<Rule> rules, Map<String, Integer> levels, FactTypes types) {
        this.rules = List.copyOf(rules);
        this.levels = Map.copyOf(levels);
        this.types = types;
        this.base = compile(CanonicalDrl.write(this.rules, levels));
    }

    /** Compiles rules; takes seconds of processor time for a hundred rules. */
    public static InferenceFactory factory() {
        return DroolsInference::new;
    }

    @Override
    public Inferred run(List<Fact> facts) {
        KieSession session = base.newKieSession();
        try {
            MatchSink sink = new MatchSink(rules, levels, types, session);
            session.setGlobal("sink", sink);
            facts.forEach(f -> session.insert(new MatchFact(f)));
            if (session.fireAllRules(MatchSink.MAX_FIRINGS) >= MatchSink.MAX_FIRINGS) {
                throw new IllegalStateException("the rules fired " + MatchSink.MAX_FIRINGS
                        + " times on one task; split rules whose patterns meet in too many ways");
            }
            return sink.inferred();
        } finally {
            session.dispose();
        }
    }

    private static KieBase compile(String drl) {
        KieServices services = KieServices.get();
        // Each build has its own coordinates and leaves the repository at once: what stays there would never be freed.
        ReleaseId id = services.newReleaseId("org.washwright.compiled", "edition", "1." + BUILDS.incrementAndGet());
        KieFileSystem files = services.newKieFileSystem().generateAndWritePomXML(id);
        files.write("src/main/resources/washwright/rules.drl", drl);
        KieBuilder builder = services.newKieBuilder(files, DroolsInference.class.getClassLoader());
        builder.buildAll(ExecutableModelProject.class);
        try {
            if (builder.getResults().hasMessages(Message.Level.ERROR)) {
                throw new IllegalStateException("canonical rules do not compile: "
                        + builder.getResults().getMessages(Message.Level.ERROR));
            }
            KieContainer container = services.newKieContainer(id, DroolsInference.class.getClassLoader());
            return container.getKieBase();
        } finally {
            services.getRepository().removeKieModule(id);
        }
    }
}
