package org.washwright.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.Node;
import org.washwright.generate.Starter;

/**
 * What a failed expectation says was found. The task is a steel of 35 HRC with rust: hard enough to be baked after pickling
 * (ASTM B850-98, bake table: above 31 HRC), too soft to be kept out of the acid (common practice: 40 HRC).
 */
class CaseRunnerTest {

    private static final String CASE = """
            cases:
              - id: c
                title: c
                task:
                  title: t
                  part: {rest: not applicable}
                  materials: [{substrate: carbon-steel, hardness: 35 HRC, stress: relieved, rest: not applicable}]
                  components: []
                  features: []
                  soils: [{kind: rust, rest: not applicable}]
                  lot: {rest: not applicable}
                  preceding: {rest: not applicable}
                  following: {operation: storage, rest: not applicable}
                  demand: {residue: unknown, rest: not applicable}
                  jurisdictions: [uk]
                  site: {waterDischarge: yes, rest: not applicable}
                  permittedSolvents: [hydrocarbon]
                  plants: []
                expect: {EXPECT}
            """;

    private static CaseResult run(String expect) {
        Diagnostics diagnostics = new Diagnostics();
        Map<String, Node> documents = new LinkedHashMap<>();
        documents.put(
                "cases/c.yaml",
                DocumentReader.read(
                                "cases/c.yaml",
                                CASE.replace("EXPECT", expect).getBytes(StandardCharsets.UTF_8),
                                diagnostics)
                        .orElseThrow());
        List<Case> cases = CaseReader.read(documents, Starter.edition(), diagnostics);
        assertEquals(List.of(), diagnostics.all());
        return new CaseRunner(Starter.interpreted(), "2026-11-25").run(cases.get(0));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "proposes: [acid-pickling]",
                "rulesOut: [{process: chlorinated-vapour, by: LA-01}]",
                "cautions: [{hazard: hydrogen-embrittlement, process: acid-pickling, by: MA-05}]",
                "verifies: [white-cloth-wipe]",
                "asks: [demand/residue]",
                "fires: [{rule: MA-05, for: [acid-pickling, electrolytic-alkaline]}]",
                "doesNotFire: [MA-06]",
                "undecided: [HP-01]",
                "windows: [{process: acid-pickling, stage: bake, parameter: bake-temperature, within: 180..230 °C}]",
                "stages: [{process: acid-pickling, order: [main, rinse, bake]}]",
                "says: [{rule: MA-13, verb: limit, detail: 'current density of the main cleaning at least 4.3 A/dm²', for: [electrolytic-alkaline]}]",
            })
    void what_holds_is_met(String expect) {
        CaseResult result = run(expect);
        assertTrue(result.holds(), () -> result.asData().toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "proposes: [chlorinated-vapour] | ruled out: The site has no permit for chlorinated solvent. [LA-01]",
                "conditional: [acid-pickling] | recommended",
                "rulesOut: [{process: acid-pickling, by: MA-06}] | recommended; MA-06 does not fire",
                "rulesOut: [{process: chlorinated-vapour, by: MA-11}] | MA-11 does not fire",
                "cautions: [{hazard: metal-fire}] | hydrogen-embrittlement by MA-04",
                "verifies: [particle-count] | proven by: white-cloth-wipe",
                "asks: [following/operation] | asked for: demand/",
                "fires: [MA-06] | MA-06 does not fire",
                "fires: [HP-01] | HP-01 is undecided, held by demand/residue",
                "doesNotFire: [MA-05] | MA-05 fires",
                "fires: [{rule: MA-05, for: [acid-pickling]}] | it speaks of: acid-pickling, electrolytic-alkaline",
                "windows: [{process: acid-pickling, stage: bake, parameter: bake-temperature, max: 210 °C}] | 190 to 220 °C",
                "windows: [{process: acid-pickling, stage: dry, parameter: ph, max: '7'}] | the stage has no such parameter",
                "windows: [{process: acid-pickling, stage: degrease, parameter: ph, max: '7'}] | the line is: main",
                "stages: [{process: acid-pickling, order: [bake, main]}] | the line is: main, rinse",
                "says: [{rule: MA-13, verb: limit, detail: nothing}] | it says limit: ",
            })
    void what_does_not_hold_says_what_was_found_instead(String expect, String found) {
        CaseResult result = run(expect);
        assertFalse(result.holds());
        assertTrue(result.unmet().get(0).found().contains(found), result.unmet().get(0)::found);
    }

    @Test
    void a_task_that_contradicts_itself_is_refused_and_not_a_pass() {
        Case broken = run("fires: [MA-05]").reference();
        Case contradictory = new Case(
                broken.id(),
                broken.title(),
                broken.basis(),
                broken.sources(),
                broken.place(),
                broken.asOf(),
                Starter.task(
                        "title: t\nmaterials: [{substrate: carbon-steel, hardness: 35 HRC, tensileStrength: 300 MPa}]\n"),
                broken.expectations());
        CaseResult result = new CaseRunner(Starter.interpreted(), "2026-11-25").run(contradictory);
        assertFalse(result.holds());
        assertFalse(result.refused().isEmpty());
    }
}
