package org.washwright.starter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.washwright.assessment.Answer;
import org.washwright.assessment.IntendedVerdict;
import org.washwright.generate.Starter;

/**
 * Acid charges hydrogen into steel. From about 31 HRC on the part is baked (ASTM B850, table of strength and bake time; ASTM
 * B849, scope); that nobody pickles steel of 40 HRC and more is common in customers' specifications.
 */
class IntendedProcessTest {

    private static Answer bearingSteel(String hardness, String intended) {
        String task = Starter.demoTexts().get("bearing-rings.yaml");
        assertTrue(task.contains("hardness: 62 HRC"));
        return Starter.answer(task.replace("hardness: 62 HRC", "hardness: '" + hardness + "'") + "intended: {"
                        + intended + ", rest: not applicable}\n")
                .answer();
    }

    @ParameterizedTest
    @CsvSource({"62 HRC", "45 HRC", ">= 41 HRC"})
    void picklingHardBearingSteelDoesNotFit(String hardness) {
        Answer answer = bearingSteel(hardness, "process: acid-pickling");
        IntendedVerdict verdict = answer.intended().orElseThrow();
        assertEquals("does not fit", verdict.verdict());
        List<String> rules = verdict.reasons().stream()
                .flatMap(s -> s.firings().stream())
                .flatMap(n -> answer.firings().stream().filter(f -> f.n() == n && f.certain()))
                .map(Answer.Firing::rule)
                .toList();
        assertTrue(rules.contains("MA-06"), rules::toString);
        assertEquals(
                answer.candidates().get(0).process(),
                verdict.first().orElseThrow().process());
    }

    @Test
    void whetherItIsSoHardIsWhatThePicklingOfCarbonSteelHangsOn() {
        // Between 30 and 45 HRC the limit of 40 HRC may be passed or not.
        String task = "title: t\nmaterials: [{substrate: carbon-steel, hardness: 30..45 HRC, rest: not applicable}]\n"
                + "soils: [{kind: rust, rest: not applicable}]\nfeatures: []\n"
                + "intended: {process: acid-pickling, rest: not applicable}\n";
        IntendedVerdict verdict = Starter.answer(task).answer().intended().orElseThrow();
        assertEquals("fits if", verdict.verdict());
        assertTrue(
                verdict.reasons().stream()
                        .map(Answer.Sentence::text)
                        .anyMatch(t -> t.contains("Not known:") && t.contains("hardness")),
                () -> verdict.reasons().toString());
    }

    @Test
    void aRecommendedProcessFitsInItsOwnWindow() {
        Answer plain = bearingSteel("62 HRC", "process: acid-pickling");
        Answer.Candidate first = plain.candidates().get(0);
        assertEquals("recommended", first.status());
        Answer.Window heat = first.stages().stream()
                .filter(Answer.Stage::main)
                .flatMap(s -> s.windows().stream())
                .filter(w -> w.parameter().equals("temperature"))
                .findFirst()
                .orElseThrow();
        double middle = (heat.low() + heat.high()) / 2;
        String process = "process: " + first.process() + ", temperature: ";
        IntendedVerdict fits =
                bearingSteel("62 HRC", process + middle + " °C").intended().orElseThrow();
        assertEquals("fits", fits.verdict());
        assertEquals(1, fits.rank().orElseThrow().place());
        assertFalse(fits.first().isPresent());
        IntendedVerdict hot = bearingSteel("62 HRC", process + (heat.high() + 20) + " °C")
                .intended()
                .orElseThrow();
        assertEquals("fits if", hot.verdict());
        assertTrue(
                hot.reasons().stream().anyMatch(s -> s.text().contains("keep it within " + heat.text())),
                () -> hot.reasons().toString());
    }
}
