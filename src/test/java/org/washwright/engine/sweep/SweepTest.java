package org.washwright.engine.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.document.Diagnostics;
import org.washwright.engine.Fact;
import org.washwright.engine.FactBase;
import org.washwright.engine.FactBuilder;
import org.washwright.engine.Inference;
import org.washwright.engine.Match;
import org.washwright.engine.ReferenceInterpreter;
import org.washwright.generate.Agreement;
import org.washwright.generate.RuleWriter;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.generate.TaskMaker;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;

/**
 * The indexed form of the rules and the plain interpreter have to agree on everything. They share the rule tree and the
 * making of conclusions, but no comparison; compiled rules are the third voice, in the differential test of Drools.
 */
class SweepTest {

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void indexedAndInterpretedRulesAgreeOnMadeUpEditions(long seed) {
        Random random = new Random(seed);
        Edition edition = SmallEdition.with(RuleWriter.write(random, SmallEdition.with(""), 30));
        Inference plain = prepare(ReferenceInterpreter.factory(), edition);
        Inference swept = prepare(SweepInference.factory(), edition);
        TaskMaker maker = new TaskMaker(random, edition);
        int certain = 0;
        int possible = 0;
        for (int t = 0; t < 15; t++) {
            List<Fact> facts = facts(edition, maker.task());
            Inference.Inferred expected = plain.run(facts);
            List<String> differences = Agreement.differences(swept.run(facts), expected);
            assertTrue(differences.isEmpty(), () -> String.join("\n", differences));
            certain += (int) expected.matches().stream().filter(Match::certain).count();
            possible +=
                    (int) expected.matches().stream().filter(m -> !m.certain()).count();
        }
        // Own earlier output, half of it: there has to be something to agree on.
        assertTrue(certain > 15 && possible > 100, certain + " certain, " + possible + " possible");
    }

    @Test
    void aRuleWithoutPositivePatternFiresWhenNothingIsThere() {
        Edition edition = SmallEdition.with("rule \"none\" @id(\"N\") @basis(\"common practice\")\n"
                + "when not Soil(kind == \"soil-a\") then caution(\"hazard-a\", \"So.\"); end\n");
        List<Fact> without = facts(edition, Starter.task(edition, "title: t\nsoils: {open: no, list: []}\n"));
        List<Fact> with =
                facts(edition, Starter.task(edition, "title: t\nsoils: {open: no, list: [{kind: soil-a}]}\n"));
        Inference swept = prepare(SweepInference.factory(), edition);
        assertEquals(1, swept.run(without).matches().size());
        assertEquals(0, swept.run(with).matches().size());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "$p : Process(node == \"water\")",
                "$p : Process(node != \"water\")",
                "$p : Process(node in (\"oil\", \"water-a\"))",
                "$p : Process() Process(node == $p.id)",
                "$p : Process() Process(id == $p.node)",
                "$p : Process() Process(node == $p.node)",
                "$p : Process() Process(node != $p.id)",
                "$p : Process() Process(medium == $p.medium, technique != $p.technique)",
                "$p : Process() Process(heat == $p.heat)",
                "$p : Process() Process(heat != $p.heat)",
                "$p : Process() exists Process(heat > $p.heat)",
                "$p : Process() not Process(heat >= $p.heat, id != $p.id)",
                "Process(heat == \"60 °C\") || Process(heat != \"60 °C\")",
                "Process(heat == \"60 °C\" || medium == \"medium-b\")",
                "Soil(kind not in (\"soil-a\", \"soil-b\"), kind == \"soil-c\" || state == \"soil-state-a\")",
            })
    void theseConditionsAreAskedAlike(String conditions) {
        List<String> patterns = List.of(
                conditions.contains(") || Process(") ? conditions.split(" \\|\\| ") : new String[] {conditions});
        StringBuilder drl = new StringBuilder();
        for (String when : patterns) {
            drl.append(rule("R-" + drl.length(), when, "caution(\"hazard-a\", \"So.\");"));
        }
        agree(
                SmallEdition.with(drl.toString()),
                "title: t\nsoils: {open: yes, list: [{kind: soil-a}, {kind: soil-c}]}\n",
                1);
    }

    @Test
    void aConclusionThatBecomesSureOnAHigherLevelIsMatchedOnceAndSurely() {
        String drl = rule("A", "Soil(kind == \"soil-a\")", "conclude(\"conclusion-a\", \"So.\");")
                + rule("B", "Part()", "conclude(\"conclusion-b\", \"So.\");")
                + rule("C", "Conclusion(id == \"conclusion-b\")", "conclude(\"conclusion-a\", \"So.\");")
                + rule("D", "$c : Conclusion(id == \"conclusion-a\")", "caution(\"hazard-a\", \"So.\");");
        Inference.Inferred found =
                agree(SmallEdition.with(drl), "title: t\nsoils: {open: no, list: [{state: soil-state-a}]}\n", 4);
        Match last = found.matches().get(found.matches().size() - 1);
        assertEquals("D", last.rule().id());
        assertTrue(last.certain());
        assertEquals(
                1,
                found.matches().stream().filter(m -> m.rule().id().equals("D")).count());
    }

    private static String rule(String id, String when, String then) {
        return "rule \"" + id + "\" @id(\"" + id + "\") @basis(\"common practice\") when " + when + " then " + then
                + " end\n";
    }

    private static Inference.Inferred agree(Edition edition, String task, int atLeast) {
        List<Fact> facts = facts(edition, Starter.task(edition, task));
        Inference.Inferred expected =
                prepare(ReferenceInterpreter.factory(), edition).run(facts);
        Inference.Inferred found = prepare(SweepInference.factory(), edition).run(facts);
        assertEquals(List.of(), Agreement.differences(found, expected));
        assertTrue(expected.matches().size() >= atLeast, expected.matches().toString());
        return found;
    }

    private static Inference prepare(org.washwright.engine.InferenceFactory factory, Edition edition) {
        return factory.prepare(edition.taskRules(), edition.levels(), edition.types());
    }

    private static List<Fact> facts(Edition edition, CleaningTask task) {
        Diagnostics diagnostics = new Diagnostics();
        FactBase facts = FactBuilder.build(task, edition, Map.of(), diagnostics);
        return diagnostics.hasErrors() ? List.of() : facts.all();
    }
}
