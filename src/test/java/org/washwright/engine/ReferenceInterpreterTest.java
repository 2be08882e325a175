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
}
