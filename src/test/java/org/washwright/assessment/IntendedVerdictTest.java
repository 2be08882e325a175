package org.washwright.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.engine.ReferenceInterpreter;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;

/**
 * What becomes of an intended process, on an edition whose words mean nothing. Its windows of temperature: water A 20 to 80
 * °C, water B 40 to 90 °C, oil A 20 to 60 °C, oil B none.
 */
class IntendedVerdictTest {

    private static final String OUT = "when Soil(kind == \"soil-a\") then ruleOut(\"water-a\", \"main\", \"No.\");";
    private static final String HOT =
            "when Lot() then limit(\"water-a\", \"main\", \"temperature\", max(\"50 °C\"), \"It warps.\");";

    private static FrozenAnswer frozen(String task, String... rules) {
        StringBuilder drl = new StringBuilder();
        for (int i = 0; i < rules.length; i++) {
            drl.append("rule \"r" + i + "\" @id(\"R-" + i + "\") @basis(\"common practice\")\n" + rules[i] + "\nend\n");
        }
        Edition edition = SmallEdition.with(drl.toString());
        return Assessor.of(edition, ReferenceInterpreter.factory())
                .assess(Starter.task(edition, "title: t\n" + task), Starter.WISHES);
    }

    private static IntendedVerdict judged(String task, String... rules) {
        return frozen(task, rules).answer().intended().orElseThrow();
    }

    private static List<String> reasons(IntendedVerdict verdict) {
        return verdict.reasons().stream().map(Answer.Sentence::text).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "intended: {}\n", "intended: {rest: not applicable}\n", "intended: {ph: unknown}\n"})
    void whoIntendsNothingGetsNoVerdict(String task) {
        FrozenAnswer frozen = frozen(task, HOT);
        assertEquals(Optional.empty(), frozen.answer().intended());
        String bytes = new String(frozen.bytes(), StandardCharsets.UTF_8);
        assertFalse(bytes.contains("\"verdict\""), bytes);
    }

    @Test
    void aRecommendedProcessFitsWithEverythingGivenInItsWindow() {
        IntendedVerdict verdict = judged("intended: {process: water-a, temperature: 20..80 °C}\n");
        assertEquals("fits", verdict.verdict());
        assertEquals("Water A fits.", verdict.text());
        assertEquals(List.of(), verdict.reasons());
        assertEquals("within", verdict.settings().get(0).state());
    }

    @ParameterizedTest
    @CsvSource({
        "20 °C, fits, within",
        "50 °C, fits, within",
        "50.1 °C, fits if, outside",
        "10 °C, fits if, outside",
        "30..70 °C, fits if, partly outside",
        "'>= 50 °C', fits if, partly outside",
        "'<= 50 °C', fits if, partly outside",
        "60..70 °C, fits if, outside",
        "30..40 °C, fits, within",
        "unknown, fits, not given",
    })
    void aTemperatureIsHeldAgainstTheWindowThatLimitsLeave(String given, String verdict, String state) {
        IntendedVerdict judged = judged("intended: {process: water-a, temperature: '" + given + "'}\n", HOT);
        assertEquals(verdict, judged.verdict());
        assertEquals(state, judged.settings().get(0).state());
        assertEquals("20 to 50 °C", judged.settings().get(0).window());
        assertEquals(verdict.equals("fits"), judged.reasons().isEmpty());
    }

    @Test
    void aSettingOutsideIsToBeMovedAndTheRuleThatNarrowedTheWindowIsNamed() {
        FrozenAnswer frozen = frozen("intended: {process: water-a, temperature: 60 °C}\n", HOT);
        IntendedVerdict verdict = frozen.answer().intended().orElseThrow();
        assertEquals(List.of("temperature 60 °C: keep it within 20 to 50 °C."), reasons(verdict));
        List<Integer> cited = verdict.reasons().get(0).firings();
        assertEquals(
                List.of("R-0"),
                frozen.answer().firings().stream()
                        .filter(f -> cited.contains(f.n()) && f.certain())
                        .map(Answer.Firing::rule)
                        .toList());
        // The window of oil A is its own: no rule stands behind it.
        assertEquals(
                List.of(),
                judged("intended: {process: oil-a, temperature: 70 °C}\n", HOT)
                        .reasons()
                        .get(0)
                        .firings());
    }

    @Test
    void whatDoesNotApplyOrHasNoWindowIsNotJudged() {
        assertEquals(
                List.of(),
                judged("intended: {process: water-a, rest: not applicable}\n").settings());
        IntendedVerdict oil = judged("intended: {process: oil-b, temperature: 300 °C}\n");
        assertEquals("fits", oil.verdict());
        assertEquals("no window", oil.settings().get(0).state());
    }

    @Test
    void aProcessThatHangsOnSomethingFitsIfAndSaysWhatIsNotKnown() {
        IntendedVerdict verdict = judged("soils: [{kind: [soil-a, soil-b]}]\nintended: {process: water-a}\n", OUT);
        assertEquals("fits if", verdict.verdict());
        assertEquals("Water A fits if:", verdict.text());
        assertEquals(1, verdict.reasons().size());
        String reason = reasons(verdict).get(0);
        assertTrue(reason.startsWith("May fall out. No."), reason);
        assertTrue(reason.endsWith("Not known: soil of A or B."), reason);
        IntendedVerdict further = judged("intended: {process: water-a}\n", OUT);
        assertTrue(
                reasons(further).get(0).endsWith("Not known: whether there is a further soil."),
                () -> reasons(further).toString());
    }

    @Test
    void aProcessThatIsOutDoesNotFitAndTheFirstOneIsNamed() {
        FrozenAnswer frozen = frozen("soils: [{kind: soil-a}]\nintended: {process: water-a}\n", OUT);
        IntendedVerdict verdict = frozen.answer().intended().orElseThrow();
        assertEquals("does not fit", verdict.verdict());
        assertEquals("Water A does not fit because:", verdict.text());
        assertEquals(List.of("No."), reasons(verdict));
        assertEquals(frozen.answer().ruledOut().get(0).reasons(), verdict.reasons());
        assertEquals(Optional.empty(), verdict.rank());
        assertEquals(
                frozen.answer().candidates().get(0).process(),
                verdict.first().orElseThrow().process());
    }

    @Test
    void ofAGroupTheBestOneCounts() {
        String soil = "soils: [{kind: soil-a}]\n";
        IntendedVerdict verdict = judged(soil + "intended: {process: water}\n", OUT);
        assertEquals("fits", verdict.verdict());
        assertEquals("water-b", verdict.process());
        assertEquals("Water fits, best as water B.", verdict.text());
        String outToo = "when Soil(kind == \"soil-a\") then ruleOut(\"water-b\", \"main\", \"Nor this.\");";
        IntendedVerdict none = judged(soil + "intended: {process: water}\n", OUT, outToo);
        assertEquals("does not fit", none.verdict());
        assertEquals(List.of("Water A: No.", "Water B: Nor this."), reasons(none));
        // At 85 °C only water B lies within its window, though water A has as many points.
        assertEquals(
                "water-b",
                judged("intended: {process: water, temperature: 85 °C}\n").process());
    }

    @Test
    void ofSeveralAllHaveToFit() {
        String soil = "soils: [{kind: soil-a}]\n";
        assertEquals("fits", judged("intended: {process: [water-a, oil-a]}\n").verdict());
        IntendedVerdict verdict = judged(soil + "intended: {process: [water-a, oil-a]}\n", OUT);
        assertEquals("fits if", verdict.verdict());
        assertEquals("oil-a", verdict.process());
        assertEquals(List.of("It has to be oil A: water A does not fit."), reasons(verdict));
        assertEquals(1, verdict.reasons().get(0).firings().size());
        assertEquals(
                "does not fit",
                judged(soil + "intended: {process: [water-a]}\n", OUT).verdict());
    }

    @Test
    void settingsOfAnUnknownProcessAreNotJudged() {
        IntendedVerdict verdict = judged("intended: {temperature: 60 °C, time: 5 min}\n");
        assertEquals("not judged", verdict.verdict());
        assertTrue(verdict.text().contains("temperature 60 °C"), verdict.text());
        assertTrue(verdict.text().contains("5 min"), verdict.text());
        assertEquals("", verdict.process());
        assertEquals(Optional.empty(), verdict.first());
    }

    @Test
    void theRankIsThatOfTheCandidates() {
        String better = "when Lot() then support(\"oil-a\", \"works\", 3, \"Good.\");";
        FrozenAnswer frozen = frozen("intended: {process: water-a}\n", better);
        IntendedVerdict.Rank rank =
                frozen.answer().intended().orElseThrow().rank().orElseThrow();
        Answer.Candidate own = frozen.answer().candidates().get(rank.place() - 1);
        assertEquals("water-a", own.process());
        assertTrue(rank.place() > 1);
        assertEquals(own.low(), rank.low());
        assertEquals(own.high(), rank.high());
        assertEquals(frozen.answer().candidates().size(), rank.of());
    }

    /** Technology weighs 3 of 9: a step of 20 points of its one criterion moves the whole by 20 / 3. */
    @Test
    void theFirstIsNamedOnlyWhereItHasMorePointsHoweverTheUndecidedTurnsOut() {
        String worse = "when Lot() then oppose(\"water-a\", \"works\", 3, \"Bad.\");";
        String helped = "when Soil(kind == \"soil-b\") then support(\"water-a\", \"works\", 3, \"Good.\");";
        String only = "when Lot() then ruleOut(\"oil\", \"main\", \"No oil.\");";
        String best = "when Lot() then support(\"water-b\", \"works\", 3, \"Best.\");"
                + " support(\"water-b\", \"fine\", 3, \"Best.\"); support(\"water-b\", \"green\", 3, \"Best.\");";
        String intended = "intended: {process: water-a}\n";
        IntendedVerdict clearly = judged(intended, worse, only, best);
        assertEquals("fits", clearly.verdict());
        assertEquals("water-b", clearly.first().orElseThrow().process());
        assertEquals(2, clearly.rank().orElseThrow().place());
        // With less that speaks for it, water B is better only if the soil is not B.
        String little = "when Lot() then support(\"water-b\", \"works\", 1, \"Better.\");";
        IntendedVerdict perhaps = judged(intended, worse, only, helped, little);
        assertEquals(2, perhaps.rank().orElseThrow().place());
        assertEquals(Optional.empty(), perhaps.first());
        assertEquals(
                Optional.empty(),
                judged("intended: {process: water-b}\n", worse, only, best).first());
    }
}
