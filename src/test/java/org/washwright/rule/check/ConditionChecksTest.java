package org.washwright.rule.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.washwright.rule.check.Checked.SAY;
import static org.washwright.rule.check.Checked.assertRefused;
import static org.washwright.rule.check.Checked.checked;
import static org.washwright.rule.check.Checked.rule;
import static org.washwright.rule.check.Checked.text;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.rule.Condition;
import org.washwright.rule.Reason;
import org.washwright.rule.Rule;

/** What conditions may say and what they are told when they may not; the words are those an author reads. */
class ConditionChecksTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '¦',
            quoteCharacter = '\'',
            value = {
                "Soil(kind == true) ¦ can't be compared with yes or no (\"kind\")",
                "Soil(kind == 3) ¦ can't be compared with a number (\"kind\")",
                "Material(porous == 3) ¦ Write a term in quotes, or true or false",
                "Soil(kind == 3) ¦ Write a term in quotes",
                "Material(porous == \"maybe\") ¦ \"maybe\" is no flag",
                "Soil(amount in (\"3 g/m2\")) ¦ can't be compared with a list (\"amount\"). Use < and > with quantities",
                "Soil(amount not in (\"3 g/m2\")) ¦ can't be compared with a list",
                "Soil(amount == true) ¦ can't be compared with yes or no (\"amount\"). Write for instance \"2 g/m2\"",
                "Soil(kind >= \"soil-a\") ¦ can't be compared with something larger or smaller",
                "$s : Soil() Conclusion(id == \"conclusion-a\", subject == \"x\") ¦ can't be compared with a literal",
                "$s : Soil() Conclusion(id == \"conclusion-a\", subject == $s.kind) ¦ can't be compared with that",
                "$s : Soil() Conclusion(id == \"conclusion-a\", subject != $s) ¦ can't be compared with that",
                "Soil($k : kind) Conclusion(id == \"conclusion-a\", subject == $k) ¦ can't be compared with that",
                "$s : Soil() Soil(kind == $s) ¦ \"$s\" is not known in facts of type Soil",
                "$s : Soil() Soil(kind == $s.colour) ¦ \"colour\" is not known in facts of type Soil",
                "$f : Feature() Feature(kind < $f.kind) ¦ can't be compared with kind of feature by <",
                "$f : Feature() Soil(kind == $f.kind) ¦ can't be compared with kind of feature by ==",
                "$s : Soil() $s : Feature() ¦ \"$s\" is bound twice",
                "not $s : Soil() ¦ a variable on \"not\" or \"exists\"",
                "$s : Soil($s : kind) ¦ \"$s\" is bound twice",
                "Soil($k : colour) ¦ \"colour\" is not known",
                "exists Soil($k : kind) ¦ a variable inside \"not\" or \"exists\"",
                "Attribute(id == \"att-flag\", id == \"att-flag\" || value == true) ¦ the id of an attribute is compared once",
                "Attribute(id != \"att-flag\") ¦ it needs id == \"...\" as a constraint",
                "Attribute(id == \"att-flat\") ¦ did you mean \"att-flag\"?",
                "Attribut() ¦ did you mean \"Attribute\"?",
                "Zzzzzzzz() ¦ known here: Attribute, Component, Conclusion, Demand",
                "Process() Process() Process() ¦ can meet in 8000000 ways, more than 100000",
                "Conclusion() Soil() Soil(kind != $s) ¦ \"$s\" is not bound above"
            })
    void aConditionThatMeansNothingIsRefusedInWords(String when, String words) {
        assertRefused(when, SAY, words);
    }

    @Test
    void sixPatternsAreReadAndSevenAreNot() {
        assertEquals(6, rule("Part() ".repeat(6), SAY).patterns().size());
        assertRefused("Part() ".repeat(7), SAY, "has more than 6 patterns");
    }

    @Test
    void aPatternThatNamesItsFactAddsNoWaysButOneJoinedOtherwiseDoes() {
        // 200 processes and 100 conclusions meet in 20000 ways; 200 times 200 times 200 are too many.
        assertEquals(
                3,
                rule("$p : Process() $q : Process(id == $p.id) $r : Process(medium == $q.medium)", SAY)
                        .patterns()
                        .size());
        assertEquals(
                3,
                rule("$p : Process() $q : Process(id == $p.id) Conclusion(id == \"conclusion-a\", subject == $q)", SAY)
                        .patterns()
                        .size());
        assertEquals(
                3,
                rule("$p : Process() $q : Process(id != $p.id) Process(id == \"oil-a\")", SAY)
                        .patterns()
                        .size());
        // Any number of processes may have the same medium.
        assertRefused(
                "$p : Process() $q : Process(id != $p.id) Process(medium == $q.medium)",
                SAY,
                "can meet in 8000000 ways");
        assertRefused("$p : Process() Process(heat > $p.heat) Process()", SAY, "can meet in 8000000 ways");
        assertRefused(
                "$p : Process() Process(id == $p.id || heat == $p.heat) Process()", SAY, "can meet in 8000000 ways");
        assertEquals(
                4,
                rule("Process() Process() not Process() exists Process()", SAY)
                        .patterns()
                        .size());
    }

    @Test
    void aHundredThousandWaysAreAllowed() {
        // 200 processes, 20 soils, 20 permitted solvent classes: 80000 ways; with 30 features in place of soils 120000.
        assertEquals(
                3, rule("Process() Soil() PermittedSolvent()", SAY).patterns().size());
        assertRefused("Process() Feature() PermittedSolvent()", SAY, "can meet in 120000 ways");
    }

    @Test
    void boundFieldsStandForTheirValueAndTheirOwnProperties() {
        Rule rule = rule(
                "$f : Feature($d : depth, $k : kind) Feature(depth > $d, kind == $k) Feature(kind.dead == $k.dead)",
                "caution(\"hazard-a\", \"{$d} of {$k.dead} of {$f.name} of {$f}.\")");
        List<Condition.Test> tests = rule.patterns().get(1).condition().tests().toList();
        assertEquals(
                "depth",
                ((Condition.Operand.FieldOf) tests.get(0).operand()).field().name());
        assertEquals(0, ((Condition.Operand.FieldOf) tests.get(1).operand()).pattern());
        Condition.Test dead =
                rule.patterns().get(2).condition().tests().findFirst().orElseThrow();
        assertEquals(
                "kind.dead",
                ((Condition.Operand.FieldOf) dead.operand()).field().name());
        List<Reason.Part> parts = rule.effects().get(0).reason().parts();
        assertEquals("depth", ((Reason.Part.ValueOf) parts.get(0)).field().name());
        assertEquals(new Reason.Part.Words(" of "), parts.get(1));
        assertEquals("kind.dead", ((Reason.Part.ValueOf) parts.get(2)).field().name());
        assertEquals(new Reason.Part.NameOf(0), parts.get(4));
        assertEquals(new Reason.Part.NameOf(0), parts.get(6));
        assertEquals(8, parts.size());
        assertRefused("Feature($k : kind)", "caution(\"hazard-a\", \"{$k.name}.\")", "no bound value");
        assertRefused("Feature($k : kind) Feature(kind == $k.none)", SAY, "\"none\" is not known in");
        assertRefused("Feature($k : kind)", "conclude(\"conclusion-a\", $k, \"So.\")", "\"$k\" is not bound");
        assertRefused("$p : Process($m : medium)", "ruleOut($m, \"main\", \"So.\")", "\"$m\" is not bound");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"Soil(kind == \"mud\", amount > \"3 g/m2\")", "Soil((kind == \"mud\" && amount > \"3 g/m2\"))"})
    void oneBadConstraintSpoilsTheRuleWhateverFollows(String when) {
        assertEquals(List.of(), checked(text("R", when, SAY)));
    }
}
