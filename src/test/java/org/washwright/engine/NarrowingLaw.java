package org.washwright.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.washwright.document.Diagnostics;
import org.washwright.generate.RuleWriter;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.TaskMaker;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;

/** Tries the law of not knowing on rules and tasks made up from a seed. */
final class NarrowingLaw {

    private static final int RULES = 30;
    private static final int TRIES = 40;

    private NarrowingLaw() {}

    /**
     * What came of a seed.
     *
     * @param steps narrowings tried
     * @param decidedAgainst matches that were possible before a step and not after it
     * @param broken breaches of the law, in words
     */
    record Outcome(int steps, int decidedAgainst, List<String> broken) {}

    static Outcome tried(long seed, int tasks) {
        Random random = new Random(seed);
        Edition edition = SmallEdition.with(RuleWriter.write(random, SmallEdition.with(""), RULES));
        Inference inference =
                ReferenceInterpreter.factory().prepare(edition.taskRules(), edition.levels(), edition.types());
        TaskMaker maker = new TaskMaker(random, edition);
        List<String> broken = new ArrayList<>();
        int steps = 0;
        int decided = 0;
        for (int t = 0; t < tasks; t++) {
            CleaningTask task = maker.task();
            Optional<Inference.Inferred> before = run(inference, edition, task);
            for (int i = 0; i < TRIES && before.isPresent(); i++) {
                Optional<TaskMaker.Narrowed> next = maker.narrower(task);
                Optional<Inference.Inferred> after = next.flatMap(n -> run(inference, edition, n.task()));
                if (after.isPresent()) {
                    for (String breach : broken(before.get(), after.get())) {
                        broken.add(next.get().what() + ": " + breach);
                    }
                    steps++;
                    decided += before.get().matches().size()
                            - after.get().matches().size();
                    task = next.get().task();
                    before = after;
                }
            }
        }
        return new Outcome(steps, decided, broken);
    }

    static Optional<Inference.Inferred> run(Inference inference, Edition edition, CleaningTask task) {
        Diagnostics diagnostics = new Diagnostics();
        FactBase facts = FactBuilder.build(task, edition, Map.of(), diagnostics);
        // Values that contradict each other are refused before any rule runs.
        return diagnostics.hasErrors() ? Optional.empty() : Optional.of(inference.run(facts.all()));
    }

    /** Breaches of the law between a task and one that says more. */
    static List<String> broken(Inference.Inferred before, Inference.Inferred after) {
        List<String> broken = new ArrayList<>();
        Map<String, Boolean> old = matches(before);
        Map<String, Boolean> now = matches(after);
        old.forEach((key, certain) -> {
            if (certain && !now.getOrDefault(key, false)) {
                broken.add(key + " had fired and is " + (now.containsKey(key) ? "undecided" : "gone"));
            }
        });
        now.forEach((key, certain) -> {
            if (!old.containsKey(key)) {
                broken.add(key + " was impossible and is " + (certain ? "certain" : "possible"));
            }
        });
        Map<String, Boolean> oldConclusions = conclusions(before);
        conclusions(after).forEach((id, sure) -> {
            if (!oldConclusions.containsKey(id)) {
                broken.add(id + " was not even possible");
            }
        });
        oldConclusions.forEach((id, sure) -> {
            if (sure && !conclusions(after).getOrDefault(id, false)) {
                broken.add(id + " was concluded");
            }
        });
        return broken;
    }

    private static Map<String, Boolean> matches(Inference.Inferred inferred) {
        Map<String, Boolean> out = new TreeMap<>();
        inferred.matches().forEach(m -> out.put(m.rule().id() + " " + m.key(), m.certain()));
        return out;
    }

    private static Map<String, Boolean> conclusions(Inference.Inferred inferred) {
        Map<String, Boolean> out = new TreeMap<>();
        inferred.conclusions().forEach(f -> out.put(f.id(), f.sure()));
        return out;
    }
}
