package org.washwright.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.washwright.document.Diagnostics;
import org.washwright.drools.DrlReader;
import org.washwright.generate.SmallEdition;
import org.washwright.rule.check.RuleChecker;
import org.washwright.rule.check.Terms;

/** Rules as one would say them; expected sentences are those an editor would write by hand. */
class SpokenRulesTest {

    private static final Edition EDITION = SmallEdition.with("");
    private static final String SAY = "caution(\"hazard-a\", \"So.\")";

    @ParameterizedTest
    @CsvSource(
            delimiter = '¦',
            quoteCharacter = '\'',
            value = {
                "Soil() ¦ any soil",
                "not Soil() ¦ no soil",
                "exists Soil() ¦ at least one soil",
                "exists Soil(kind == \"soil-a\") ¦ at least one soil: soil is A",
                "not Soil(kind != \"soil-a\") ¦ no soil: soil is not A",
                "Soil(kind in (\"soil-a\", \"soil-b\")) ¦ soil: soil is A or B",
                "Soil(kind not in (\"soil-a\", \"soil-b\")) ¦ soil: soil is not A or B",
                "Soil(amount < \"2 g/m2\") ¦ soil: amount is below 2 g/m²",
                "Soil(amount <= \"2 g/m2\") ¦ soil: amount is at most 2 g/m²",
                "Soil(amount > \"2 g/m2\") ¦ soil: amount is above 2 g/m²",
                "Soil(amount >= \"2 g/m2\") ¦ soil: amount is at least 2 g/m²",
                "Soil(kind == \"soil-a\", amount > \"2 g/m2\") ¦ soil: soil is A and amount is above 2 g/m²",
                "Soil(kind == \"soil-a\" || amount > \"2 g/m2\") ¦ soil: soil is A or amount is above 2 g/m²",
                "Soil(kind == \"soil-a\", (amount > \"2 g/m2\" || state == \"soil-state-a\")) ¦ soil: soil is A and (amount is above 2 g/m² or state is soil-state a)",
                "Soil(kind == \"soil-a\" || (amount > \"2 g/m2\" && amount < \"5 g/m2\")) ¦ soil: soil is A or (amount is above 2 g/m² and amount is below 5 g/m²)",
                "Process(node == \"any\") ¦ any process",
                "Process(node == \"water\") ¦ process: belongs to water",
                "not Process(node == \"any\") ¦ no process: belongs to any",
                "Process(node in (\"any\", \"oil\")) ¦ process: belongs to any or oil",
                "Process(node == \"any\", charges == true) ¦ process: belongs to any and charges is yes",
                "Process(id == \"oil-a\") ¦ process: it is oil A",
                "Process(id == \"any\") ¦ process: it is any",
                "Conclusion(id == \"conclusion-a\") ¦ it is concluded: conclusion a",
                "Conclusion(id != \"conclusion-a\") ¦ it is concluded: is not conclusion a",
                "Conclusion() ¦ it is concluded",
                "not Conclusion() ¦ it is not concluded",
                "not Conclusion(id == \"conclusion-a\") ¦ it is not concluded: conclusion a",
                "exists Conclusion(id == \"conclusion-a\") ¦ it is concluded: conclusion a",
                "Attribute(id == \"att-flag\", value == true) ¦ a flag is yes",
                "$s : Soil() Conclusion(id == \"conclusion-a\", subject == $s) ¦ any soil; and it is concluded: conclusion a, about the soil",
                "$f : Feature() Feature(depth > $f.diameter) ¦ any feature 1; and feature 2: depth is above the diameter or width of feature 1",
                "Stage(next == \"water-a\") ¦ stage: next stage is water A"
            })
    void aConditionIsSaidInWords(String when, String words) {
        assertEquals("When " + words, sentence(when, SAY).condition());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '¦',
            quoteCharacter = '\'',
            value = {
                "conclude(\"conclusion-a\", \"So.\") ¦ conclude conclusion a",
                "conclude(\"conclusion-a\", $p, \"So.\") ¦ conclude conclusion a, about the process",
                "ruleOut(\"water\", \"first\", \"So.\") ¦ rule out water as first cleaning",
                "ruleOut($p, \"alone\", \"So.\") ¦ rule out the process as the only cleaning",
                "support(\"water\", \"works\", 1, \"So.\") ¦ give water 5 points for works",
                "oppose($p, \"safe\", 3, \"So.\") ¦ take from the process 20 points for safe",
                "require(\"any\", \"first\", after(\"main\"), \"So.\") ¦ the line of any needs the stage first after the main cleaning",
                "require(\"any\", \"first\", before(\"last\"), \"So.\") ¦ the line of any needs the stage first before last",
                "require(\"any\", \"second\", between(\"first\", \"main\"), \"So.\") ¦ the line of any needs the stage second between first and the main cleaning",
                "limit(\"oil\", \"main\", \"temperature\", max(\"60 °C\"), \"So.\") ¦ keep the temperature of the main cleaning in oil at or below 60 °C",
                "limit($p, \"first\", \"temperature\", min($p.heat), \"So.\") ¦ keep the temperature of first in the process at or above the heat of the process",
                "caution(\"hazard-b\", \"So.\") ¦ warn of B",
                "caution(\"hazard-b\", \"oil-a\", \"So.\") ¦ warn of B with oil A",
                "ask(\"Part.rate\", \"So.\") ¦ find out: How many parts an hour?",
                "ask(\"Soil\", \"So.\") ¦ find out: soil",
                "ask(\"Attribute.att-heat\", \"So.\") ¦ find out: How hot?",
                "verify(\"test-method-a\", \"So.\") ¦ prove cleanliness by test-method a"
            })
    void aConsequenceIsSaidInWords(String then, String words) {
        assertEquals(
                List.of(new RuleSentence.Said(words, "So.")),
                sentence("$p : Process()", then).then());
    }

    @Test
    void theWholeRuleIsOneRunOfText() {
        RuleSentence s = sentence(
                "$p : Process()",
                "caution(\"hazard-a\", \"{$p} is {$p.heat} for {$target}.\"); verify(\"test-method-a\", \"So.\")");
        assertEquals(
                "When any process. Then warn of A, because: [the process] is [heat] for [the process]. And prove"
                        + " cleanliness by test-method a, because: So.",
                s.words());
        assertEquals("Always", new RuleSentence(List.of(), s.then()).condition());
    }

    @Test
    void aRowOfATableHoldsOnlyPlainComparisons() {
        assertEquals(
                Optional.of(List.of(
                        new RuleSentence.Cell("soil", "is A"),
                        new RuleSentence.Cell("soil: amount", "is above 2 g/m²"),
                        new RuleSentence.Cell("a flag", "is yes"))),
                cells("Soil(kind == \"soil-a\", amount > \"2 g/m2\") Attribute(id == \"att-flag\", value == true)"));
        assertEquals(Optional.empty(), cells("not Soil(kind == \"soil-a\")"));
        assertEquals(Optional.empty(), cells("Soil(kind == \"soil-a\" || kind == \"soil-b\")"));
        assertEquals(Optional.empty(), cells("$f : Feature(depth > \"1 mm\") Feature(depth > $f.depth)"));
    }

    private static Optional<List<RuleSentence.Cell>> cells(String when) {
        return RuleSentence.cells(EDITION, rule(when, SAY));
    }

    private static RuleSentence sentence(String when, String then) {
        return RuleSentence.of(EDITION, rule(when, then));
    }

    private static Rule rule(String when, String then) {
        String text = "rule \"R\" @id(\"R\") @basis(\"common practice\") when " + when + " then " + then + "; end\n";
        Diagnostics diagnostics = new Diagnostics();
        Terms terms = new Terms(EDITION.catalogue(), EDITION.types(), EDITION.grading(), EDITION.sources());
        List<Rule> rules = new RuleChecker(terms, diagnostics).check(new DrlReader().read("r.drl", text, diagnostics));
        assertFalse(diagnostics.hasErrors(), () -> diagnostics.all().toString());
        return rules.get(0);
    }
}
