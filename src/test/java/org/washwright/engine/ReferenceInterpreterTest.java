package org.washwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.washwright.engine.Fired.fire;
import static org.washwright.engine.Fired.rule;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The order of matches, and conclusions that are drawn more than once. */
class ReferenceInterpreterTest {

    @Test
    void aConclusionOnceCertainStaysCertainWhenAnotherRuleOnlyMayDrawIt() {
        String last = rule("Z", "Conclusion(id == \"conclusion-a\")", "caution(\"hazard-a\", \"So.\")");
        String sure = "$s : Soil(kind.oily == true)";
        String unsure = "$s : Soil(amount > \"5 g/m2\")";
        String draw = "conclude(\"conclusion-a\", \"So.\")";
        String task = "soils: [{kind: soil-a}]";
        for (String rules : List.of(
                rule("A", sure, draw) + rule("B", unsure, draw), rule("A", unsure, draw) + rule("B", sure, draw))) {
            List<Firing> firings = fire(rules + last, task);
            assertEquals(
                    List.of("A", "B", "Z"),
                    firings.stream().map(f -> f.rule().id()).toList());
            assertTrue(firings.get(2).certain());
            assertEquals(
                    "conclusions/conclusion-a",
                    firings.get(2).facts().get(0).orElseThrow().id());
        }
    }

    @Test
    void matchesStandInOrderOfTheirRulesAndFacts() {
        String rules = rule("B", "$s : Soil()", "caution(\"hazard-a\", \"So.\")")
                + rule("A", "$s : Soil() $f : Feature()", "caution(\"hazard-a\", \"So.\")");
        List<String> keys = new ArrayList<>();
        fire(rules, "soils: [{kind: soil-a}, {kind: soil-b}]\nfeatures: [{depth: 1 mm}, {depth: 2 mm}]")
                .forEach(f -> keys.add(f.rule().id() + " " + new Match(f.rule(), f.facts(), true).key()));
        assertEquals(
                List.of(
                        "A soils/0 features/0",
                        "A soils/0 features/1",
                        "A soils/1 features/0",
                        "A soils/1 features/1",
                        "B soils/0",
                        "B soils/1"),
                keys);
    }

    @Test
    void aConclusionThatBecomesCertainOnALaterLevelIsOneFactForTheLevelsAbove() {
        String rules = rule("A", "$s : Soil(amount > \"5 g/m2\")", "conclude(\"conclusion-b\", \"So.\")")
                + rule("B", "$s : Soil(kind.oily == true)", "conclude(\"conclusion-a\", \"So.\")")
                + rule("C", "Conclusion(id == \"conclusion-a\")", "conclude(\"conclusion-b\", \"So.\")")
                + rule("D", "Conclusion(id == \"conclusion-b\")", "caution(\"hazard-a\", \"So.\")");
        List<Firing> firings = fire(rules, "soils: [{kind: soil-a}]");
        assertEquals(
                List.of("A false", "B true", "C true", "D true"),
                firings.stream().map(f -> f.rule().id() + " " + f.certain()).toList());
    }

    @Test
    void factsAreOrderedByTheirIdsAsText() {
        String soils = "soils: [" + "{kind: soil-a}, ".repeat(10) + "{kind: soil-a}]";
        List<String> ids = fire(rule("A", "$s : Soil()", "caution(\"hazard-a\", \"So.\")"), soils).stream()
                .map(f -> f.facts().get(0).orElseThrow().id())
                .toList();
        assertEquals(List.of("soils/0", "soils/1", "soils/10", "soils/2"), ids.subList(0, 4));
    }

    @Test
    void aRuleThatNamesNoConclusionWaitsForAllOfThem() {
        for (String any : List.of("Conclusion(id != \"conclusion-a\")", "Conclusion(id not in (\"conclusion-a\"))")) {
            String rules = rule("A", "Soil()", "conclude(\"conclusion-a\", \"So.\")")
                    + rule("B", "Conclusion(id == \"conclusion-a\")", "conclude(\"conclusion-b\", \"So.\")")
                    + rule("C", any, "caution(\"hazard-a\", \"So.\")");
            List<Firing> firings = fire(rules, "soils: [{kind: soil-a}]");
            assertEquals(List.of(0, 1, 2), firings.stream().map(Firing::level).toList());
            assertEquals(
                    "conclusions/conclusion-b",
                    firings.get(2).facts().get(0).orElseThrow().id());
        }
    }
}
