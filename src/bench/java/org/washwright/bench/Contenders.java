package org.washwright.bench;

import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.washwright.assessment.Asked;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.document.Diagnostics;
import org.washwright.document.Hashes;
import org.washwright.document.Place;
import org.washwright.drools.Variants;
import org.washwright.engine.Fact;
import org.washwright.engine.Inference;
import org.washwright.engine.InferenceFactory;
import org.washwright.engine.ReferenceInterpreter;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.explain.compare.Change;
import org.washwright.explain.compare.Comparing;
import org.washwright.explain.compare.TaskChanges;
import org.washwright.task.TaskReader;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;

/** Everything that is timed, by name. */
final class Contenders {

    /** Makes a contender ready. */
    interface Maker {
        Contender make(Synthetic synthetic) throws Exception;
    }

    private static final Map<String, Maker> MAKERS = new LinkedHashMap<>();

    static {
        MAKERS.put("if-chain", IfChain::of);
        MAKERS.put("indexed", s -> engine(s, SweepInference.factory()));
        MAKERS.put("compiled", s -> engine(s, Variants.kept()));
        MAKERS.put("compiled, not recorded", s -> engine(s, Variants.unrecorded()));
        MAKERS.put("compiled, no companions", s -> engine(s, Variants.withoutCompanions()));
        MAKERS.put("compiled, one session", s -> engine(s, Variants.inOneSession()));
        MAKERS.put("interpreter", s -> engine(s, ReferenceInterpreter.factory()));
        MAKERS.put("bare Drools, new sessions", BareDrools::withNewSessions);
        MAKERS.put("bare Drools, one session", BareDrools::withOneSession);
        MAKERS.put("Evrete", OtherEvaluators::evrete);
        MAKERS.put("JEXL", OtherEvaluators::jexl);
        MAKERS.put("end to end, indexed", s -> whole(s, SweepInference.factory()));
        MAKERS.put("end to end, compiled", s -> whole(s, Variants.kept()));
        MAKERS.put("freezing alone", Contenders::freezing);
        MAKERS.put("one assessment", s -> asked(false));
        MAKERS.put("what-if", s -> asked(true));
    }

    private Contenders() {}

    static Contender make(String name, Synthetic synthetic) throws Exception {
        return MAKERS.get(name).make(synthetic);
    }

    private static Contender engine(Synthetic synthetic, InferenceFactory factory) {
        Edition edition = edition(synthetic);
        Inference inference = factory.prepare(edition.taskRules(), edition.levels(), edition.types());
        List<List<Fact>> facts = synthetic.rules.isEmpty()
                ? Starter.demoTasks().values().stream()
                        .map(t -> org.washwright.engine.FactBuilder.build(t, edition, Map.of(), new Diagnostics())
                                .all())
                        .toList()
                : synthetic.facts(edition);
        return n -> inference.run(facts.get(n % facts.size())).matches().size();
    }

    /** An answer to a task that was read, or what a change of it would move, the answer to the task itself being kept. */
    private static Contender asked(boolean changed) {
        Assessor assessor = Starter.swept();
        Edition edition = Starter.edition();
        List<CleaningTask> tasks = List.copyOf(Starter.demoTasks().values());
        List<byte[]> kept = changed
                ? tasks.stream().map(t -> assessor.assess(t, Starter.WISHES).bytes()).toList()
                : List.of();
        List<Change> changes = List.of(Change.of("/following/operation", "painting", Place.ofFile("-")));
        return n -> {
            int i = n % tasks.size();
            if (!changed) {
                return assessor.assess(tasks.get(i), Starter.WISHES).answer().firings().size();
            }
            try {
                FrozenAnswer before = FrozenAnswer.read(kept.get(i));
                Asked asked = Asked.of(before.answer().request(), edition.catalogue());
                CleaningTask other = TaskChanges.apply(asked.task(), changes, edition, new Diagnostics())
                        .orElseThrow();
                FrozenAnswer after = assessor.assess(other, asked.wishes());
                return Hashes.canonical(Comparing.of(before, after)).length;
            } catch (java.io.IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        };
    }

    private static Contender whole(Synthetic synthetic, InferenceFactory factory) {
        Edition edition = edition(synthetic);
        Assessor assessor = Assessor.of(edition, factory);
        List<byte[]> documents = synthetic.rules.isEmpty()
                ? bytes(Starter.demoTexts().values())
                : bytes(synthetic.texts());
        return n -> {
            CleaningTask task = TaskReader.read(
                            "t.yaml", documents.get(n % documents.size()), edition, new Diagnostics())
                    .orElseThrow();
            return assessor.assess(task, Starter.WISHES).answer().firings().size();
        };
    }

    private static List<byte[]> bytes(Collection<String> texts) {
        return texts.stream().map(t -> t.getBytes(StandardCharsets.UTF_8)).toList();
    }

    private static Contender freezing(Synthetic synthetic) {
        Assessor assessor = Assessor.of(edition(synthetic), SweepInference.factory());
        List<FrozenAnswer> answers = Starter.demoTasks().values().stream()
                .map(t -> assessor.assess(t, Starter.WISHES))
                .toList();
        return n -> FrozenAnswer.of(answers.get(n % answers.size()).answer()).answer().firings().size();
    }

    /** The starter rulebook stands for "no synthetic rules". */
    private static Edition edition(Synthetic synthetic) {
        return synthetic.rules.isEmpty() ? Starter.edition() : synthetic.edition();
    }
}
