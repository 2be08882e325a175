package org.washwright.rule.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.washwright.rule.check.Checked.SAY;
import static org.washwright.rule.check.Checked.assertRefused;
import static org.washwright.rule.check.Checked.rule;
import static org.washwright.rule.check.Checked.text;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.washwright.generate.SmallEdition;
import org.washwright.rule.Effect;
import org.washwright.rule.Reason;

/** What consequences may say and what they are told when they may not; the words are those an author reads. */
class ConsequenceChecksTest {

    private static final String ANY = "$p : Process()";

    @ParameterizedTest
    @CsvSource(
            delimiter = '¦',
            quoteCharacter = '\'',
            value = {
                "conclude(\"conclusion-a\") ¦ conclude got (\"conclusion-a\")",
                "conclude(3, \"So.\") ¦ conclude got (3, \"So.\")",
                "conclude(\"conclusion-a\", 3, \"So.\") ¦ conclude got (\"conclusion-a\", 3, \"So.\"). Write conclude(",
                "conclude(\"conclusion-a\", $p.id, \"So.\") ¦ \"$p\" is not bound above",
                "conclude(\"conclusion-a\", $q, \"So.\") ¦ \"$q\" is not bound above",
                "conclude(\"conclusion-z\", \"So.\") ¦ \"conclusion-z\" is no conclusion",
                "ruleOut(\"any\", \"So.\") ¦ ruleOut got (\"any\", \"So.\"). Write ruleOut(target",
                "ruleOut(\"any\", 3, \"So.\") ¦ ruleOut got (\"any\", 3, \"So.\")",
                "ruleOut(\"any\", \"man\", \"So.\") ¦ \"man\" is no role. did you mean \"main\"?",
                "ruleOut(\"anny\", \"main\", \"So.\") ¦ \"anny\" is no node of the process tree. did you mean \"any\"?",
                "ruleOut(3, \"main\", \"So.\") ¦ ruleOut got (3, \"main\", \"So.\")",
                "ruleOut($p.id, \"main\", \"So.\") ¦ ruleOut got ($p.id, \"main\", \"So.\")",
                "support(\"any\", \"works\", \"So.\") ¦ support got",
                "support(\"any\", \"wroks\", 2, \"So.\") ¦ \"wroks\" is no criterion of grading.yaml. known here: cheap, fine, green, safe, works",
                "support(\"any\", \"works\", 0, \"So.\") ¦ 1 to 3 points",
                "support(\"any\", \"works\", 4, \"So.\") ¦ 1 to 3 points",
                "require(\"any\", \"first\", \"main\", \"So.\") ¦ require got",
                "require(\"any\", \"first\", max(\"main\"), \"So.\") ¦ require got (\"any\", \"first\", max(\"main\"), \"So.\")",
                "require(\"any\", \"first\", after(\"main\", \"last\"), \"So.\") ¦ require got",
                "require(\"any\", \"first\", between(\"main\"), \"So.\") ¦ require got",
                "require(\"any\", \"firts\", after(\"main\"), \"So.\") ¦ \"firts\" is no stage",
                "require(\"any\", \"first\", after(\"mainly\"), \"So.\") ¦ \"mainly\" is no stage",
                "require(\"any\", \"first\", after($p), \"So.\") ¦ \"$p\" is not bound above",
                "require(\"any\", \"first\", after(3), \"So.\") ¦ require got",
                "limit(\"any\", \"main\", \"temperature\", \"So.\") ¦ limit got",
                "limit(\"any\", \"main\", \"temperature\", after(\"60 °C\"), \"So.\") ¦ limit got",
                "limit(\"any\", \"main\", \"temperature\", max(\"60 °C\", \"70 °C\"), \"So.\") ¦ limit got",
                "limit(\"any\", \"main\", \"time\", max(\"60 s\"), \"So.\") ¦ \"time\" is no parameter",
                "limit(\"any\", \"main\", \"temperature\", max(60), \"So.\") ¦ limit got",
                "limit(\"any\", \"main\", \"temperature\", max(\"60 s\"), \"So.\") ¦ 60 s",
                "limit(\"any\", \"main\", \"temperature\", max($p), \"So.\") ¦ \"$p\" is not bound above",
                "limit(\"any\", \"main\", \"temperature\", max($p.medium), \"So.\") ¦ Bind a temperature",
                "limit(\"any\", \"mian\", \"temperature\", max(\"60 °C\"), \"So.\") ¦ \"mian\" is no stage",
                "caution(\"So.\") ¦ caution got (\"So.\")",
                "caution(3, \"So.\") ¦ caution got (3, \"So.\")",
                "caution(\"hazard-a\", \"any\", \"any\", \"So.\") ¦ caution got",
                "caution(\"hazard-x\", \"So.\") ¦ \"hazard-x\" is no hazard",
                "caution(\"hazard-a\", \"nowhere\", \"So.\") ¦ \"nowhere\" is no node of the process tree",
                "ask(\"So.\") ¦ ask got (\"So.\")",
                "ask(3, \"So.\") ¦ ask got (3, \"So.\")",
                "ask(\"Material.colour\", \"So.\") ¦ \"Material.colour\" is no attribute of a task",
                "ask(\"Part\", \"So.\") ¦ \"Part\" is no attribute of a task",
                "ask(\"Attribute.att-none\", \"So.\") ¦ \"Attribute.att-none\" is no attribute of a task",
                "verify(\"test-method-a\", 3, \"So.\") ¦ verify got (\"test-method-a\", 3, \"So.\")",
                "verify(3, \"So.\") ¦ verify got",
                "verify(\"test-method-x\", \"So.\") ¦ \"test-method-x\" is no test method",
                "warn(\"So.\") ¦ warn",
                "verify(\"test-method-a\", 3) ¦ verify got (\"test-method-a\", 3)",
                "caution(\"hazard-a\", \" \") ¦ the reason of \"caution\" is empty",
                "caution(\"hazard-a\", \"With {$p.colour}.\") ¦ Bound here: $p; write for instance {$p.field}",
                "caution(\"hazard-a\", \"With {colour}.\") ¦ \"{colour}\" in the reason is no bound value"
            })
    void aConsequenceThatMeansNothingIsRefusedInWords(String then, String words) {
        assertRefused(ANY, then, words);
    }

    @Test
    void withNothingBoundAReasonIsToldToBind() {
        assertRefused(
                "Part()", "caution(\"hazard-a\", \"{$p}.\")", "Bind a pattern first, for instance $m : Material(...)");
    }

    @Test
    void aReasonOfFiveHundredCharactersIsReadAndALongerOneIsNot() {
        assertEquals(
                1,
                rule(ANY, "caution(\"hazard-a\", \"" + "x".repeat(500) + "\")")
                        .effects()
                        .size());
        assertRefused(ANY, "caution(\"hazard-a\", \"" + "x".repeat(501) + "\")", "500");
    }

    @Test
    void aLineRuleMayNotConcludeAndItsProcessIsTheOneOfTheLine() {
        assertRefused("$s : Stage()", "conclude(\"conclusion-a\", \"So.\")", "R");
        assertTrue(rule("$s : Stage() $t : Stage() $p : Process()", SAY).isLineRule());
        Effect.Require require = (Effect.Require)
                rule("$s : Stage() $t : Stage()", "require(\"any\", \"first\", between($s, $t), \"So.\")")
                        .effects()
                        .get(0);
        assertEquals(new Effect.StageRef.Matched(0), require.after().orElseThrow());
        assertEquals(new Effect.StageRef.Matched(1), require.before().orElseThrow());
        assertRefused(
                "$s : Stage() $m : Material()",
                "require(\"any\", \"first\", after($m), \"So.\")",
                "\"$m\" is not bound");
        assertRefused("$s : Stage()", "require(\"any\", \"first\", after($s.id), \"So.\")", "require got");
        assertRefused("$s : Stage()", "ruleOut($s, \"main\", \"So.\")", "\"$s\" is not bound above");
    }

    @Test
    void consequencesKeepWhatTheySay() {
        assertEquals(
                new Effect.Ask("Soil", "", so()),
                effect("ask(\"Soil\", \"So.\")"),
                "a list as a whole may be asked for");
        assertEquals(new Effect.Ask("Part", "rate", so()), effect("ask(\"Part.rate\", \"So.\")"));
        assertEquals(new Effect.Ask("Attribute", "att-heat", so()), effect("ask(\"Attribute.att-heat\", \"So.\")"));
        Effect.Limit limit = (Effect.Limit) effect("limit($p, \"first\", \"temperature\", min($p.heat), \"So.\")");
        assertEquals(false, limit.max());
        assertEquals("heat", ((Effect.Bound.FieldOf) limit.bound()).field().name());
        assertEquals(new Effect.StageRef.Named("first"), limit.stage());
        assertEquals(new Effect.Target.Matched(0), limit.target());
        Effect.Limit max = (Effect.Limit) effect("limit(\"oil\", \"main\", \"temperature\", max(\"60 °C\"), \"So.\")");
        assertEquals(new Effect.Bound.Literal(333.15), max.bound());
        assertTrue(max.max());
        Effect.Require before = (Effect.Require) effect("require(\"any\", \"first\", before(\"main\"), \"So.\")");
        assertTrue(before.after().isEmpty());
        assertEquals(new Effect.StageRef.Named("main"), before.before().orElseThrow());
        Effect.Score oppose = (Effect.Score) effect("oppose(\"any\", \"works\", 3, \"So.\")");
        assertEquals(List.of(false, 3), List.of(oppose.support(), oppose.points()));
    }

    @Test
    void aPlainNumberBoundsAParameterWithoutUnit() {
        Map<String, String> texts = new TreeMap<>(SmallEdition.texts());
        texts.computeIfPresent(
                "catalogue/parameter-terms.yaml",
                (k, t) -> t + "  - {id: ph, name: pH, quantity: ph, unit: \"\", scale: 0..14, factor: medium}\n");
        texts.put("rules/all.drl", text("T", ANY, "limit(\"any\", \"main\", \"ph\", max(9), \"So.\")"));
        Effect.Limit limit = (Effect.Limit) SmallEdition.read(SmallEdition.files(texts))
                .rules()
                .get(0)
                .effects()
                .get(0);
        assertEquals(new Effect.Bound.Literal(9), limit.bound());
    }

    private static Reason so() {
        return new Reason(List.of(new Reason.Part.Words("So.")));
    }

    private static Effect effect(String then) {
        return rule(ANY, then).effects().get(0);
    }
}
