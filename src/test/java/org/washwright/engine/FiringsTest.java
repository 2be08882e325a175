package org.washwright.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.washwright.engine.Fired.facts;
import static org.washwright.engine.Fired.fire;
import static org.washwright.engine.Fired.only;
import static org.washwright.engine.Fired.rule;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.washwright.generate.SmallEdition;
import org.washwright.rule.Edition;

/** What a firing shows: what it read, what holds it when it is undecided, whom it is about and what it says. */
class FiringsTest {

    @Test
    void aCertainRuleFiresAndAnUnknownLeavesItUndecided() {
        String rule = rule("R", "$s : Soil(kind.oily == true)", "caution(\"hazard-a\", \"So.\")");
        Firing fires = only(rule, "soils: [{kind: soil-a}]");
        assertTrue(fires.certain());
        assertEquals(List.of(), fires.held());
        assertEquals(List.of("soils/0/kind.oily"), fires.uses());
        Firing open = only(rule, "soils: [{amount: 2 g/m2}]");
        assertEquals(false, open.certain());
        assertEquals(List.of("soils/0/kind"), open.held());
        assertEquals(List.of(), fire(rule, "soils: [{kind: soil-b}]"));
    }

    @Test
    void whatAnOpenListMayHoldIsHeldByTheList() {
        String rule = rule("R", "$s : Soil(kind.oily == true)", "caution(\"hazard-a\", \"{$s} it is.\")");
        Firing firing = only(rule, "soils: {open: yes, list: [{kind: soil-b}]}");
        assertEquals(List.of("soils"), firing.held());
        assertEquals("A further soil it is.", firing.findings().get(0).text());
    }

    @Test
    void aNegativeConditionReadsTheWholeList() {
        String rule = rule("R", "$m : Material() not Soil(kind.oily == true)", "caution(\"hazard-a\", \"So.\")");
        Firing certain = only(rule, "materials: [{porous: yes}]\nsoils: [{kind: soil-b}]");
        assertTrue(certain.certain());
        assertEquals(List.of("soils"), certain.uses());
        assertEquals("materials/0", certain.facts().get(0).orElseThrow().id());
        assertTrue(certain.facts().get(1).isEmpty());
        Firing undecided = only(rule, "materials: [{porous: yes}]\nsoils: [{kind: soil-b}, {state: soil-state-a}]");
        assertEquals(List.of("soils/1/kind"), undecided.held());
        assertEquals(List.of(), fire(rule, "materials: [{porous: yes}]\nsoils: [{kind: soil-a}]"));
    }

    @Test
    void existsReadsWhatMeetsItAndNothingElse() {
        String rule = rule("R", "exists Soil(kind.oily == true)", "caution(\"hazard-a\", \"So.\")");
        Firing certain = only(rule, "soils: [{kind: soil-b}, {kind: soil-a}, {amount: 1 g/m2}]");
        assertTrue(certain.certain());
        assertEquals(List.of("soils", "soils/1/kind.oily"), certain.uses());
        Firing undecided = only(rule, "soils: [{kind: soil-b}, {amount: 1 g/m2}]");
        assertEquals(false, undecided.certain());
        assertEquals(List.of("soils", "soils/1/kind.oily"), undecided.uses());
        assertEquals(List.of("soils/1/kind"), undecided.held());
        assertEquals(List.of(), fire(rule, "soils: [{kind: soil-b}]"));
    }

    @Test
    void ofAlternativesOnlyThoseThatDecideAreRead() {
        String rule =
                rule("R", "$s : Soil(kind == \"soil-a\" || amount > \"5 g/m2\")", "caution(\"hazard-a\", \"So.\")");
        assertEquals(
                List.of("soils/0/kind"),
                only(rule, "soils: [{kind: soil-a, amount: 1 g/m2}]").uses());
        assertEquals(
                List.of("soils/0/amount"),
                only(rule, "soils: [{kind: soil-b, amount: 9 g/m2}]").uses());
        assertEquals(
                List.of("soils/0/kind", "soils/0/amount"),
                only(rule, "soils: [{kind: soil-a, amount: 9 g/m2}]").uses());
        assertEquals(
                List.of("soils/0/amount"), only(rule, "soils: [{kind: soil-b}]").held());
    }

    @Test
    void aComparisonOfTwoFactsReadsBothAndIsHeldByBoth() {
        String rule = rule(
                "R",
                "$f : Feature(depth > \"0 mm\") $g : Feature(diameter > $f.depth)",
                "caution(\"hazard-a\", \"So.\")");
        Firing certain = only(rule, "features: [{depth: 1 mm, diameter: 2 mm}]");
        assertEquals(List.of("features/0/depth", "features/0/diameter"), certain.uses());
        Firing undecided = only(rule, "features: [{depth: '>= 1 mm'}]");
        assertEquals(List.of("features/0/depth", "features/0/diameter"), undecided.held());
        String negative =
                rule("N", "$f : Feature() not Feature(diameter > $f.depth)", "caution(\"hazard-a\", \"So.\")");
        assertEquals(
                List.of("features", "features/0/depth"),
                only(negative, "features: [{depth: 3 mm, diameter: 2 mm}]").uses());
    }

    @Test
    void aComputedValueIsHeldByWhatItIsMadeFrom() {
        String rule = rule("R", "$f : Feature(slenderness > \"2\")", "caution(\"hazard-a\", \"So.\")");
        assertEquals(
                List.of("features/0/depth"),
                only(rule, "features: [{diameter: 1 mm}]").held());
        assertEquals(
                List.of("features/0/depth", "features/0/diameter"),
                only(rule, "features: [{kind: feature-a}]").held());
        // Half known is what to narrow first: asking for the unknown would not be wrong, but later.
        assertEquals(
                List.of("features/0/depth"),
                only(rule, "features: [{depth: 1..3 mm}]").held());
        String load = rule("L", "$s : Soil(load > \"2 g/h\")", "caution(\"hazard-a\", \"So.\")");
        assertEquals(
                List.of("part/rate", "soils/0/amount"),
                only(load, "part: {wettedArea: 1 cm2}\nsoils: [{kind: soil-a}]").held());
        String strong = rule("S", "$m : Material(strength > \"1000 MPa\")", "caution(\"hazard-a\", \"So.\")");
        // 31 HRC are 995 MPa within 5 %: the scales not given are what would narrow it.
        assertEquals(
                List.of("materials/0/tensileStrength", "materials/0/vickersHardness"),
                only(strong, "materials: [{hardness: 31 HRC}]").held());
        assertEquals(
                List.of("materials/0/strength"),
                only(
                                strong,
                                "materials: [{hardness: 31 HRC, vickersHardness: not applicable, tensileStrength: not applicable}]")
                        .held());
    }

    @Test
    void aRangeOfTheCatalogueIsHeldByTheTerm() {
        String rule = rule("R", "$m : Material(substrate.limit > \"31 HRC\")", "caution(\"hazard-a\", \"So.\")");
        assertEquals(
                List.of("materials/0/substrate"),
                only(rule, "materials: [{substrate: substrate-b}]").held());
    }

    @Test
    void aConclusionCarriesOnWhatHeldTheRuleThatDrewIt() {
        String rules = rule("A", "$s : Soil(kind.oily == true)", "conclude(\"conclusion-a\", $s, \"{$s} is oily.\")")
                + rule(
                        "B",
                        "$s : Soil() $c : Conclusion(id == \"conclusion-a\", subject == $s)",
                        "caution(\"hazard-a\", \"{$c} of {$s.amount}.\")");
        List<Firing> certain = fire(rules, "soils: [{kind: soil-a, amount: 2 g/m2}]");
        assertEquals(List.of(1, 2), certain.stream().map(Firing::n).toList());
        assertEquals(List.of(0, 1), certain.stream().map(Firing::level).toList());
        assertEquals(List.of("conclusions/conclusion-a/soils/0"), certain.get(1).uses());
        assertEquals("Conclusion a of 2 g/m².", certain.get(1).findings().get(0).text());
        List<Firing> undecided = fire(rules, "soils: [{amount: 1 g/m2}]");
        assertEquals(2, undecided.size());
        assertEquals(List.of("soils/0/kind"), undecided.get(1).held());
        assertEquals(false, undecided.get(1).certain());
    }

    @Test
    void findingsAreAboutTheProcessesOfTheirTarget() {
        String rules = rule("A", "Part()", "ruleOut(\"water\", \"main\", \"No {$target}.\")")
                + rule("B", "$p : Process(id == \"oil-a\")", "support($p, \"works\", 2, \"{$p} and {$target}.\")")
                + rule("C", "Part()", "require(\"any\", \"first\", after(\"main\"), \"so.\")")
                + rule("D", "Part()", "limit(\"oil\", \"main\", \"temperature\", max(\"60 °C\"), \"So.\")")
                + rule("E", "Part()", "caution(\"hazard-a\", \"water-b\", \"So.\")")
                + rule("F", "Part()", "caution(\"hazard-a\", \"Mind {$target}.\")");
        List<Firing> firings = fire(rules, "");
        assertEquals(
                List.of("[water-a] No water A.", "[water-b] No water B."),
                said(firings.get(0)),
                "one for each of a node");
        assertEquals(List.of("[oil-a] Oil A and oil A."), said(firings.get(1)));
        assertEquals(List.of("[oil-a, oil-b, water-a, water-b] So."), said(firings.get(2)), "alike for all: said once");
        assertEquals(List.of("[oil-a, oil-b] So."), said(firings.get(3)));
        assertEquals(List.of("[water-b] So."), said(firings.get(4)));
        assertEquals(List.of("[] Mind the process."), said(firings.get(5)));
    }

    @Test
    void onALineOnlyItsProcessIsSpokenOfAndNumbersGoOn() {
        Edition edition = SmallEdition.with(rule("A", "Part()", "ruleOut(\"any\", \"main\", \"No {$target}.\")"));
        FactBase facts = facts(edition, "");
        Inference.Inferred inferred = ReferenceInterpreter.factory()
                .prepare(edition.taskRules(), edition.levels(), edition.types())
                .run(facts.all());
        Firing firing = new Firings(edition).of(inferred, facts, "oil-a", 7).get(0);
        assertEquals(7, firing.n());
        assertEquals("oil-a", firing.line());
        assertEquals(List.of("[oil-a] No oil A."), said(firing));
    }

    private static List<String> said(Firing firing) {
        return firing.findings().stream().map(f -> f.targets() + " " + f.text()).toList();
    }
}
