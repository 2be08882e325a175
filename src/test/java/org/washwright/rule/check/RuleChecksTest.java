package org.washwright.rule.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.drools.DrlReader;
import org.washwright.exchange.EditionReader;
import org.washwright.generate.SmallEdition;
import org.washwright.rule.Condition;
import org.washwright.rule.Edition;
import org.washwright.rule.Effect;
import org.washwright.rule.Reason;
import org.washwright.rule.Rule;

/** What rules may say and what they are told when they may not; the words are those an author reads. */
class RuleChecksTest {

    private static final Edition EDITION = SmallEdition.with("");
    private static final Terms TERMS =
            new Terms(EDITION.catalogue(), EDITION.types(), EDITION.grading(), EDITION.sources());
    private static final String SAY = "caution(\"hazard-a\", \"So.\")";
    private static final String ANY = "$p : Process()";

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
                "Zzzzzzzz() ¦ known here: Attribute, Conclusion, Demand",
                "Process() Process() Process() ¦ can meet in 8000000 ways, more than 100000",
                "Conclusion() Soil() Soil(kind != $s) ¦ \"$s\" is not bound above"
            })
    void aConditionThatMeansNothingIsRefusedInWords(String when, String words) {
        assertRefused(when, SAY, words);
    }

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
    void sixPatternsAreReadAndSevenAreNot() {
        assertEquals(6, rule("Part() ".repeat(6), SAY).patterns().size());
        assertRefused("Part() ".repeat(7), SAY, "has more than 6 patterns");
    }

    @Test
    void aPatternJoinedByEqualityAddsNoWaysButOneJoinedOtherwiseDoes() {
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
        assertRefused(
                "$p : Process() $q : Process(id != $p.id) Process(id == \"oil-a\")", SAY, "can meet in 8000000 ways");
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
        Effect.Limit limit =
                (Effect.Limit) read(texts, text("T", ANY, "limit(\"any\", \"main\", \"ph\", max(9), \"So.\")"))
                        .edition()
                        .orElseThrow()
                        .rules()
                        .get(0)
                        .effects()
                        .get(0);
        assertEquals(new Effect.Bound.Literal(9), limit.bound());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"Soil(kind == \"mud\", amount > \"3 g/m2\")", "Soil((kind == \"mud\" && amount > \"3 g/m2\"))"})
    void oneBadConstraintSpoilsTheRuleWhateverFollows(String when) {
        assertEquals(List.of(), checked(text("R", when, SAY)));
    }

    @Test
    void aBadHeaderSpoilsTheRule() {
        String body = "when Soil() then " + SAY + "; end\n";
        String basis = "@basis(\"common practice\") ";
        assertEquals(1, checked("rule \"r\" @id(\"R\") " + basis + body).size());
        assertEquals(List.of(), checked("rule \"r\" " + basis + body));
        assertEquals(List.of(), checked("rule \"r\" @id(\"9\") " + basis + body));
        assertEquals(List.of(), checked("rule \"r\" @id(\"R\") " + basis + "@sinse(\"x\") " + body));
        assertEquals(List.of(), checked("rule \"r\" @id(\"R\") " + body));
        assertEquals(List.of(), checked("rule \"r\" @id(\"R\") @basis(\"handbook\") " + body));
        assertEquals(List.of(), checked("rule \"r\" @id(\"R\") @basis(\"handbook\") @source(\"NONE\") " + body));
        Rule cited = checked("rule \"r\" @id(\"R\") @basis(\"handbook\") @source(\"BOOK, page 3; BOOK; \") "
                        + "@title(\"T\") @since(\"now\") @note(\"n\") " + body)
                .get(0);
        assertEquals(List.of(new Rule.Cite("BOOK", "page 3"), new Rule.Cite("BOOK", "")), cited.sources());
        assertEquals(List.of("T", "now", "n"), List.of(cited.title(), cited.since(), cited.note()));
        assertEquals(List.of(), checked("rule \"r\" @id(\"R\") " + basis + "when Soil() then end\n"));
    }

    @Test
    void rulesThatWaitForEachOtherAreToldWhereTheCircleStarts() {
        String circle = text("B", "Conclusion(id == \"conclusion-a\")", "conclude(\"conclusion-b\", \"So.\")")
                + text("C", "Conclusion(id == \"conclusion-b\")", "conclude(\"conclusion-a\", \"So.\")");
        List<Diagnostic> found = read(SmallEdition.texts(), text("A", "Soil()", SAY) + circle)
                .diagnostics()
                .all();
        assertEquals(1, found.size(), found::toString);
        assertTrue(found.get(0).text().endsWith("B, C"), found.get(0).text());
        assertEquals(2, found.get(0).place().line());
    }

    @Test
    void aConclusionThatSomeRuleDrawsIsNotCalledMissing() {
        String rules = text("A", "Soil()", "conclude(\"conclusion-a\", \"So.\")")
                + text("B", "Conclusion(id == \"conclusion-a\")", SAY);
        assertEquals(List.of(), read(SmallEdition.texts(), rules).diagnostics().all());
        assertEquals(
                1,
                read(SmallEdition.texts(), text("B", "Conclusion(id == \"conclusion-a\")", SAY))
                        .diagnostics()
                        .all()
                        .size());
    }

    private static Reason so() {
        return new Reason(List.of(new Reason.Part.Words("So.")));
    }

    private static Effect effect(String then) {
        return rule(ANY, then).effects().get(0);
    }

    private static Rule rule(String when, String then) {
        Diagnostics diagnostics = new Diagnostics();
        List<Rule> rules = checked(text("R", when, then), diagnostics);
        assertFalse(diagnostics.hasErrors(), () -> diagnostics.all().toString());
        return rules.get(0);
    }

    private static void assertRefused(String when, String then, String words) {
        Diagnostics diagnostics = new Diagnostics();
        assertEquals(List.of(), checked(text("R", when, then), diagnostics));
        List<String> found =
                diagnostics.all().stream().map(Diagnostic::toString).toList();
        assertTrue(found.stream().anyMatch(f -> f.contains(words)), found::toString);
    }

    private static String text(String id, String when, String then) {
        return "rule \"" + id + "\" @id(\"" + id + "\") @basis(\"common practice\") when " + when + " then " + then
                + "; end\n";
    }

    private static EditionReader.Result read(Map<String, String> texts, String drl) {
        Map<String, String> all = new TreeMap<>(texts);
        all.put("rules/all.drl", drl);
        return new EditionReader(new DrlReader()).read(SmallEdition.files(all));
    }

    /** The rules that pass, by the checker alone. */
    private static List<Rule> checked(String drl) {
        return checked(drl, new Diagnostics());
    }

    private static List<Rule> checked(String drl, Diagnostics diagnostics) {
        return new RuleChecker(TERMS, diagnostics).check(new DrlReader().read("r.drl", drl, diagnostics));
    }
}
