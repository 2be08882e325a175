package org.washwright.drools;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.RefusedTask;
import org.washwright.document.Diagnostics;
import org.washwright.engine.FactBase;
import org.washwright.engine.FactBuilder;
import org.washwright.engine.Inference;
import org.washwright.engine.Match;
import org.washwright.engine.ReferenceInterpreter;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.generate.Agreement;
import org.washwright.generate.RuleWriter;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.generate.TaskMaker;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;

/**
 * Compiled rules, the indexed form and the plain interpreter have to agree on everything: programs written apart are each
 * other's oracle, so no expected number stands here.
 */
@Tag("slow")
class DifferentialIT {

    private static final int RULES = 60;
    private static final int TASKS = 60;
    private static final int MUTATED = 100;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void compiledAndInterpretedRulesAgreeOnMadeUpEditions(long seed) {
        Random random = new Random(seed);
        Edition edition = SmallEdition.with(RuleWriter.write(random, SmallEdition.with(""), RULES));
        Inference interpreted =
                ReferenceInterpreter.factory().prepare(edition.taskRules(), edition.levels(), edition.types());
        Inference compiled = DroolsInference.factory().prepare(edition.taskRules(), edition.levels(), edition.types());
        Inference swept = SweepInference.factory().prepare(edition.taskRules(), edition.levels(), edition.types());
        TaskMaker maker = new TaskMaker(random, edition);
        int pairs = 0;
        int certain = 0;
        int possible = 0;
        int dropped = 0;
        for (int t = 0; t < TASKS; t++) {
            List<org.washwright.engine.Fact> facts = facts(edition, maker.task());
            if (facts.isEmpty()) {
                continue;
            }
            Inference.Inferred plain = interpreted.run(facts);
            List<String> differences = new ArrayList<>(Agreement.differences(compiled.run(facts), plain));
            differences.addAll(Agreement.differences(swept.run(facts), plain));
            assertTrue(differences.isEmpty(), () -> String.join("\n", differences));
            pairs += edition.rules().size();
            certain += (int) plain.matches().stream().filter(Match::certain).count();
            possible += (int) plain.matches().stream().filter(m -> !m.certain()).count();
            if (!plain.matches().isEmpty()) {
                // The same comparison has to notice an inference that loses one match.
                assertFalse(Agreement.differences(losing(compiled).run(facts), plain)
                        .isEmpty());
                assertFalse(
                        Agreement.differences(surer(compiled).run(facts), plain).isEmpty()
                                && plain.matches().stream().anyMatch(m -> !m.certain()));
                dropped++;
            }
        }
        System.out.println("seed " + seed + ": " + edition.rules().size() + " rules, " + pairs + " rule-task pairs, "
                + certain + " certain and " + possible + " possible matches agree");
        // Own earlier output, half of it: there has to be something to agree on.
        assertTrue(pairs > 2000, pairs + " pairs");
        assertTrue(certain > 500 && possible > 500, certain + " certain, " + possible + " possible");
        assertTrue(dropped > 20, dropped + " losses tried");
    }

    @Test
    void everyPairOfKindsOfNumbersIsComparedAlike() {
        StringBuilder drl = new StringBuilder();
        for (String op : List.of("<", "<=", ">", ">=", "==", "!=")) {
            String id = "R-" + drl.length();
            drl.append("rule \"" + id + "\" @id(\"" + id + "\") @basis(\"common practice\") when $a : Feature() "
                    + "Feature(slenderness " + op + " $a.slenderness) then caution(\"hazard-a\", \"So.\"); end\n");
            drl.append("rule \"" + id + "-n\" @id(\"" + id + "-n\") @basis(\"common practice\") when $a : Feature() "
                    + "not Feature(slenderness " + op + " $a.slenderness, diameter " + op + " $a.diameter) "
                    + "then caution(\"hazard-a\", \"So.\"); end\n");
        }
        Edition edition = SmallEdition.with(drl.toString());
        Inference interpreted =
                ReferenceInterpreter.factory().prepare(edition.taskRules(), edition.levels(), edition.types());
        Inference compiled = DroolsInference.factory().prepare(edition.taskRules(), edition.levels(), edition.types());
        Inference swept = SweepInference.factory().prepare(edition.taskRules(), edition.levels(), edition.types());
        // A depth over a width of zero is infinite, and so can touch the open end of a range.
        List<String> kinds = List.of(
                "depth: 2 mm, diameter: 1 mm",
                "depth: 2 mm, diameter: 0 mm",
                "depth: 1..3 mm, diameter: 1 mm",
                "depth: 2..5 mm, diameter: 1 mm",
                "depth: '>= 2 mm', diameter: 1 mm",
                "depth: '<= 2 mm', diameter: 1 mm",
                "depth: '>= 2 mm', diameter: '<= 1 mm'",
                "depth: not applicable, diameter: 1 mm",
                "depth: unknown, diameter: not applicable",
                "depth: unknown, diameter: unknown");
        for (String one : kinds) {
            for (String other : kinds) {
                for (String open : List.of("yes", "no")) {
                    List<org.washwright.engine.Fact> facts = facts(
                            edition,
                            Starter.task(
                                    edition,
                                    "title: t\nfeatures: {open: " + open + ", list: [{" + one + "}, {" + other
                                            + "}]}\n"));
                    Inference.Inferred plain = interpreted.run(facts);
                    List<String> differences = new ArrayList<>(Agreement.differences(compiled.run(facts), plain));
                    differences.addAll(Agreement.differences(swept.run(facts), plain));
                    assertTrue(differences.isEmpty(), () -> one + " and " + other + ": " + differences);
                }
            }
        }
    }

    @Test
    void theBytesOfTheDemoAnswersAreTheSame() {
        Assessor swept = Assessor.of(Starter.edition(), SweepInference.factory());
        Starter.demoTasks().forEach((name, task) -> {
            byte[] plain = Starter.interpreted().assess(task, Starter.WISHES).bytes();
            assertArrayEquals(
                    plain, Starter.compiled().assess(task, Starter.WISHES).bytes(), name);
            assertArrayEquals(plain, swept.assess(task, Starter.WISHES).bytes(), name);
        });
    }

    @Test
    void theBytesOfAnswersToMutatedDemoTasksAreTheSame() {
        Random random = new Random(7);
        TaskMaker maker = new TaskMaker(random, Starter.edition());
        List<CleaningTask> demo = new ArrayList<>(Starter.demoTasks().values());
        Assessor swept = Assessor.of(Starter.edition(), SweepInference.factory());
        int compared = 0;
        int refused = 0;
        while (compared < MUTATED) {
            CleaningTask task = maker.mutated(demo.get(random.nextInt(demo.size())));
            try {
                byte[] plain =
                        Starter.interpreted().assess(task, Starter.WISHES).bytes();
                assertArrayEquals(
                        plain, Starter.compiled().assess(task, Starter.WISHES).bytes(), task.toString());
                assertArrayEquals(plain, swept.assess(task, Starter.WISHES).bytes(), task.toString());
                compared++;
            } catch (RefusedTask e) {
                // Hardness and strength made up apart may contradict each other.
                refused++;
            }
        }
        System.out.println(compared + " answers agree to the byte; " + refused + " tasks contradict themselves");
    }

    @Test
    void aLostMatchChangesTheBytesOfTheAnswer() {
        Edition edition = Starter.edition();
        Assessor losing = Assessor.of(
                edition,
                (rules, levels, types) -> losing(ReferenceInterpreter.factory().prepare(rules, levels, types)));
        Starter.demoTasks()
                .forEach((name, task) -> assertFalse(
                        java.util.Arrays.equals(
                                losing.assess(task, Starter.WISHES).bytes(),
                                Starter.interpreted()
                                        .assess(task, Starter.WISHES)
                                        .bytes()),
                        name));
        assertEquals(16, Starter.demoTasks().size());
    }

    private static List<org.washwright.engine.Fact> facts(Edition edition, CleaningTask task) {
        Diagnostics diagnostics = new Diagnostics();
        FactBase facts = FactBuilder.build(task, edition, Map.of(), diagnostics);
        return diagnostics.hasErrors() ? List.of() : facts.all();
    }

    /** An inference with a bug sown in: its last match is lost. */
    private static Inference losing(Inference sound) {
        return facts -> {
            Inference.Inferred all = sound.run(facts);
            int keep = Math.max(0, all.matches().size() - 1);
            return new Inference.Inferred(all.matches().subList(0, keep), all.conclusions());
        };
    }

    /** An inference with another bug: what is possible counts as certain. */
    private static Inference surer(Inference sound) {
        return facts -> {
            Inference.Inferred all = sound.run(facts);
            return new Inference.Inferred(
                    all.matches().stream()
                            .map(m -> new Match(m.rule(), m.facts(), true))
                            .toList(),
                    all.conclusions());
        };
    }
}
