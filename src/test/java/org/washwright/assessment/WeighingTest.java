package org.washwright.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.washwright.generate.Starter;
import org.washwright.task.CleaningTask;

class WeighingTest {

    private static final CleaningTask RINGS = Starter.task(Starter.demoTexts().get("bearing-rings.yaml"));

    private static FrozenAnswer asked(Map<String, Double> weights, Map<String, Double> comparisons, long seed) {
        return Starter.swept().assess(RINGS, new Wishes(weights, comparisons, Map.of(), "2026-11-25", seed));
    }

    private static Map<String, Double> weights(Answer answer) {
        Map<String, Double> out = new java.util.TreeMap<>();
        answer.request().weights().forEach(w -> out.put(w.area(), w.weight()));
        return out;
    }

    @Test
    void without_a_wish_the_weights_are_those_of_the_edition() {
        Ranking ranking = asked(Map.of(), Map.of(), 0).answer().ranking().orElseThrow();
        assertEquals("weights of the edition", ranking.weighing());
        assertNull(ranking.consistency());
        assertEquals(List.of(), ranking.notes());
    }

    /**
     * Comparisons made from given weights lead back to them: Saaty's eigenvector of a consistent matrix. Ratios 2, 4, 4, 4 of 1, so 8
     * : 4 : 2 : 2 : 2 of 18.
     */
    @Test
    void comparisons_that_agree_lead_to_the_weights_they_came_from() {
        Map<String, Double> pairs = Map.of(
                "technology/quality", 2.0,
                "technology/health-and-safety", 4.0,
                "technology/environment", 4.0,
                "technology/cost", 4.0,
                "quality/health-and-safety", 2.0,
                "quality/environment", 2.0,
                "cost/quality", 0.5);
        Answer answer = asked(Map.of(), pairs, 0).answer();
        Map<String, Double> weights = weights(answer);
        assertEquals(100 * 8 / 18.0, weights.get("technology"), 1e-6);
        assertEquals(100 * 4 / 18.0, weights.get("quality"), 1e-6);
        assertEquals(100 * 2 / 18.0, weights.get("cost"), 1e-6);
        assertEquals(0, answer.ranking().orElseThrow().consistency(), 1e-9);
        assertTrue(answer.ranking().orElseThrow().notes().get(0).contains("health and safety with environment"));
    }

    /** A circle of nines is Saaty's example of what no weights can meet (CR 6.13 with three areas); here two areas stay equal. */
    @Test
    void comparisons_that_contradict_each_other_are_said_to() {
        Answer answer = asked(
                        Map.of(),
                        Map.of(
                                "technology/quality", 9.0,
                                "quality/cost", 9.0,
                                "technology/cost", 1 / 9.0),
                        0)
                .answer();
        Ranking ranking = answer.ranking().orElseThrow();
        assertTrue(ranking.consistency() > 0.1);
        assertTrue(
                ranking.notes().get(0).startsWith("The comparisons contradict each other"),
                ranking.notes().toString());
    }

    @Test
    void wrong_comparisons_are_refused_all_at_once_with_their_places() {
        RefusedTask refused = assertThrows(
                RefusedTask.class,
                () -> asked(
                        Map.of("cost", 10.0),
                        Map.of(
                                "technology/speed",
                                2.0,
                                "quality/cost",
                                12.0,
                                "technology/cost",
                                2.0,
                                "cost/technology",
                                2.0),
                        0));
        List<String> places = refused.diagnostics().stream()
                .map(d -> d.place().pointer())
                .sorted()
                .toList();
        assertEquals(
                List.of(
                        "/comparisons/quality~1cost",
                        "/comparisons/technology~1cost",
                        "/comparisons/technology~1speed",
                        "/weights"),
                places);
    }

    @Test
    void shares_of_weightings_are_the_same_for_the_same_seed_and_near_for_another() {
        Ranking one = asked(Map.of(), Map.of(), 1).answer().ranking().orElseThrow();
        assertEquals(one, asked(Map.of(), Map.of(), 1).answer().ranking().orElseThrow());
        Ranking two = asked(Map.of(), Map.of(), 2).answer().ranking().orElseThrow();
        assertEquals(one.shares().get(0).process(), two.shares().get(0).process());
        // Two thousand draws: four standard errors of a share are 0.045 at most.
        assertEquals(one.shares().get(0).share(), two.shares().get(0).share(), 0.065);
    }

    @Test
    void why_the_first_leads_adds_up_to_its_lead() {
        Answer answer = Starter.swept()
                .assess(
                        Starter.task(Starter.demoTexts().get("valve-block.yaml")),
                        new Wishes(Map.of(), Map.of(), "2026-11-25", 0))
                .answer();
        Answer.Candidate a = answer.candidates().get(0);
        Answer.Candidate b = answer.candidates().get(1);
        double lead = (a.low() + a.high() - b.low() - b.high()) / 2;
        String reason = answer.ranking().orElseThrow().reason();
        assertTrue(
                reason.contains("by " + org.washwright.quantity.Quantities.number(lead, 2) + " points"),
                reason + " " + lead);
        assertTrue(reason.contains("it gains 2.4 in quality"), reason);
    }
}
