package org.washwright.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.Wishes;
import org.washwright.engine.ReferenceInterpreter;
import org.washwright.exchange.EditionFiles;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;

/** How lines are composed and graded. What is expected follows from the design of lines and grading, not from the trade. */
class ComposedLinesTest {

    private static final String TASK = "bearing-rings.yaml";
    private static final String PROCESS = "neutral-spray";

    /** The demo task of the bearing rings, of unknown appearance, answered by the starter and these further rules. */
    private static Answer with(Map<String, Double> weights, String... rules) {
        StringBuilder drl = new StringBuilder();
        for (int i = 0; i < rules.length; i++) {
            drl.append("rule \"r")
                    .append(i)
                    .append("\" @id(\"ZZ-")
                    .append(i)
                    .append("\") @basis(\"common practice\")\n");
            drl.append(rules[i]).append("\nend\n");
        }
        Map<String, byte[]> files = new TreeMap<>(Starter.files().files());
        files.put("rules/zz.drl", drl.toString().getBytes(StandardCharsets.UTF_8));
        Edition edition = SmallEdition.read(new EditionFiles(files));
        return Assessor.of(edition, ReferenceInterpreter.factory())
                .assess(
                        Starter.task(
                                edition,
                                Starter.demoTexts().get(TASK).replace("demand: {", "demand: {appearance: unknown, ")),
                        new Wishes(weights, Map.of(), "2026-11-25", 0))
                .answer();
    }

    private static Answer with(String... rules) {
        return with(Map.of(), rules);
    }

    private static Answer.Candidate candidate(Answer answer) {
        return answer.candidates().stream()
                .filter(c -> c.process().equals(PROCESS))
                .findFirst()
                .orElseThrow(() -> new AssertionError(answer.ruledOut()));
    }

    private static String whyOut(Answer answer) {
        return answer.ruledOut().stream()
                .filter(r -> r.process().equals(PROCESS))
                .flatMap(r -> r.reasons().stream())
                .map(Answer.Sentence::text)
                .findFirst()
                .orElse("");
    }

    private static List<String> stages(Answer answer) {
        return candidate(answer).stages().stream().map(Answer.Stage::stage).toList();
    }

    @Test
    void rulesThatAskForStagesWithoutEndRuleTheLineOutInsteadOfStoppingSilently() {
        Answer answer = with(
                "when Stage(id == \"dry\") then require(\"any\", \"rinse\", after(\"dry\"), \"Rinse it.\");",
                "when $r : Stage(id == \"rinse\") then require(\"any\", \"dry\", after($r), \"Dry it.\");",
                "when $d : Stage(id == \"dry\") then require(\"any\", \"rinse\", after($d), \"Rinse it again.\");");
        assertTrue(whyOut(answer).contains("keep asking for one more stage"), () -> whyOut(answer));
    }

    @Test
    void aStageAskedForTwiceInOnePlaceIsOneStage() {
        List<String> before = stages(with("when Lot() then caution(\"noise\", \"Loud.\");"));
        List<String> after = stages(
                with("when Lot() then require(\"any\", \"rinse\", after(\"main\"), \"Rinse for another reason.\");"));
        assertEquals(before, after);
    }

    @Test
    void aStageAskedForInTwoPlacesThatExcludeEachOtherStandsTwice() {
        List<String> stages = stages(
                with("when Lot() then require(\"any\", \"rinse\", before(\"main\"), \"Rinse dust off first.\");"));
        assertEquals(2, stages.stream().filter("rinse"::equals).count(), stages::toString);
        assertTrue(stages.indexOf("rinse") < stages.indexOf(PROCESS));
        assertTrue(stages.lastIndexOf("rinse") > stages.indexOf(PROCESS));
    }

    @Test
    void aProcessThatMayNotStandAloneNeedsAStageThatCleans() {
        String alone = "when Lot() then ruleOut(\"neutral-spray\", \"alone\", \"It is too weak alone.\");";
        assertTrue(whyOut(with(alone)).contains("too weak alone"));
        Answer helped = with(
                alone,
                "when Lot() then require(\"neutral-spray\", \"degrease\", before(\"main\"), \"Degrease first.\");");
        assertTrue(stages(helped).contains("degrease"));
    }

    @Test
    void aProcessThatMayNotComeFirstOrLastNeedsAStageThatCleansOnThatSide() {
        String first = "when Lot() then ruleOut(\"neutral-spray\", \"first\", \"Not first.\");";
        String last = "when Lot() then ruleOut(\"neutral-spray\", \"last\", \"Not last.\");";
        String before =
                "when Lot() then require(\"neutral-spray\", \"degrease\", before(\"main\"), \"Degrease first.\");";
        assertFalse(whyOut(with(first)).isEmpty());
        assertTrue(whyOut(with(first, before)).isEmpty());
        assertFalse(whyOut(with(last, before)).isEmpty());
    }

    @Test
    void twoLimitsThatLeaveNothingNameBothEnds() {
        Answer answer = with(
                "when Lot() then limit(\"neutral-spray\", \"main\", \"temperature\", max(\"50 °C\"), \"The part warps.\");",
                "when Lot() then limit(\"neutral-spray\", \"main\", \"temperature\", min(\"60 °C\"), \"The soil is stiff.\");");
        String why = whyOut(answer);
        assertTrue(why.contains("The part warps") && why.contains("The soil is stiff"), why);
        assertTrue(why.contains("50 °C") && why.contains("60 °C"), why);
    }

    @Test
    void onlyTheStrongestForAndTheStrongestAgainstCount() {
        double one = points(with(score("support", 3)));
        double two = points(with(score("support", 3), score("support", 2), score("support", 1)));
        assertEquals(one, two);
        double both = points(with(score("support", 3), score("oppose", 1), score("support", 2)));
        assertEquals(one - Starter.edition().grading().steps().get(1), both, 1e-9);
    }

    @Test
    void anUndecidedPointMakesARangeFromTheWorstToTheBest() {
        // Mass, soil and particle code are given, so none of these is open; the appearance is not known.
        Answer.Criterion c = plantCost(with(
                "when Part(mass > \"1 kg\" || mass < \"1 g\") then oppose(\"neutral-spray\", \"plant-cost\", 1, \"x\");",
                "when Soil(kind.meltingPoint > \"200 °C\") then oppose(\"neutral-spray\", \"plant-cost\", 1, \"x\");",
                "when Demand(largestParticle > \"1 m\") then oppose(\"neutral-spray\", \"plant-cost\", 1, \"x\");"));
        assertEquals(c.low(), c.high(), "nothing is open about what is known");
        Answer.Criterion open = plantCost(with(
                "when Attribute(id == \"food-contact\", value == true) then caution(\"noise\", \"x\");",
                "when Demand(appearance == \"even\") then oppose(\"neutral-spray\", \"plant-cost\", 2, \"x\");"));
        assertEquals(Starter.edition().grading().steps().get(2), open.high() - open.low(), 1e-9);
    }

    @Test
    void aConditionalLineNeverRanksAboveARecommendedOne() {
        Starter.demoTasks().forEach((name, task) -> {
            List<String> order = Starter.interpreted().assess(task, Starter.WISHES).answer().candidates().stream()
                    .map(Answer.Candidate::status)
                    .toList();
            assertEquals(
                    order.stream().sorted(java.util.Comparator.reverseOrder()).toList(), order, name);
        });
        Answer answer = with(
                "when Demand(appearance == \"even\") then require(\"neutral-spray\", \"degrease\", before(\"main\"), \"x\");"
                        + " support(\"neutral-spray\", \"plant-cost\", 3, \"x\"); support(\"neutral-spray\", \"soil-removal\", 3, \"x\");");
        List<String> order =
                answer.candidates().stream().map(Answer.Candidate::process).toList();
        assertEquals("conditional", candidate(answer).status());
        assertEquals(order.size() - 1, order.indexOf(PROCESS));
    }

    @Test
    void theOverallPointsAreTheMeanOfTheAreasByTheirWeights() {
        Map<String, Double> onlyCost =
                Map.of("technology", 0.0, "quality", 0.0, "health-and-safety", 0.0, "environment", 0.0, "cost", 1.0);
        Answer.Candidate c = candidate(with(onlyCost, "when Lot() then caution(\"noise\", \"x\");"));
        Answer.Area cost = c.areas().get(4);
        assertEquals("cost", cost.area());
        assertEquals(cost.low(), c.low(), 1e-9);
        assertEquals(cost.high(), c.high(), 1e-9);
    }

    private static String score(String verb, int points) {
        return "when Lot() then " + verb + "(\"neutral-spray\", \"plant-cost\", " + points + ", \"Because of " + verb
                + points + ".\");";
    }

    private static Answer.Criterion plantCost(Answer answer) {
        return candidate(answer).areas().stream()
                .flatMap(a -> a.criteria().stream())
                .filter(c -> c.criterion().equals("plant-cost"))
                .findFirst()
                .orElseThrow();
    }

    private static double points(Answer answer) {
        assertEquals(plantCost(answer).low(), plantCost(answer).high());
        return plantCost(answer).low();
    }
}
