package org.washwright.explain.why;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Wishes;
import org.washwright.generate.Starter;
import org.washwright.task.CleaningTask;

/** Reasons of everything that answers say, held against the answer's own firings and facts, which other tests check. */
class WhyTest {

    private static final String TASK = "manifold";

    private static Answer answer(CleaningTask task) {
        return Starter.swept().assess(task, Starter.WISHES).answer();
    }

    private static CleaningTask demo() {
        return Starter.demoTasks().entrySet().stream()
                .filter(e -> e.getKey().contains(TASK))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElseThrow();
    }

    @TestFactory
    Stream<DynamicTest> everyFindingOfADemoTaskIsReachedAndStandsOnGround() {
        return Starter.demoTasks().entrySet().stream()
                .map(e -> DynamicTest.dynamicTest(
                        e.getKey(), () -> assertEquals(List.of(), WhyCheck.faults(answer(e.getValue())))));
    }

    @Test
    void reasonsAreTheSameHoweverPointsAreWeighed() {
        Answer one = answer(demo());
        Answer other = Starter.swept()
                .assess(demo(), new Wishes(Map.of("cost", 90.0), Map.of(), Starter.WISHES.asOf(), 5))
                .answer();
        assertNotEquals(one.candidates().get(0).low(), other.candidates().get(0).low());
        String process = one.ruledOut().get(0).process();
        Why first = new Why(one);
        Why second = new Why(other);
        assertEquals(
                first.of(first.process(process)).identity(),
                second.of(second.process(process)).identity());
    }

    @Test
    void reasonsDifferWhereAnotherValueIsRead() {
        Answer one = answer(Starter.task("title: Plate\nmaterials: [{substrate: alumina}]\n"));
        Answer other = answer(Starter.task("title: Plate\nmaterials: [{substrate: carbon-steel}]\n"));
        assertNotEquals(new Why(one).of("").identity(), new Why(other).of("").identity());
    }

    @Test
    void aProcessIsFoundByIdAndByNameInAnyCase() {
        Answer answer = answer(demo());
        Why why = new Why(answer);
        Answer.RuledOut out = answer.ruledOut().get(2);
        assertEquals("/ruledOut/2", why.process(out.process()));
        assertEquals("/ruledOut/2", why.process(out.name().toUpperCase(java.util.Locale.ROOT)));
        assertEquals("/candidates/0", why.process(answer.candidates().get(0).process()));
    }

    @Test
    void whatTheAnswerDoesNotHoldIsRefusedByName() {
        Why why = new Why(answer(demo()));
        for (String nowhere : List.of(
                "/candidates/999",
                "/nothing",
                "cautions/0",
                "/cautions/x",
                "/candidates/0/stages/0/windows/77",
                "/firings/-1",
                "/request/task/..",
                "/sources/0/title",
                "/candidates/0/design/figures/99999999999")) {
            NothingThere refusal = assertThrows(NothingThere.class, () -> why.of(nowhere), nowhere);
            assertEquals(nowhere, refusal.asked());
        }
        assertThrows(NothingThere.class, () -> why.process("no such process"));
    }

    @Test
    void theTextSaysEachThingOnceAndEndsAtTheDepthAskedFor() {
        Why why = new Why(answer(demo()));
        Explanation explanation = why.of("/ruledOut/0");
        String all = WhyText.of(explanation, 99);
        explanation.things().forEach(t -> assertTrue(all.contains(t.text()), t.text()));
        String brief = WhyText.of(explanation, 1);
        assertEquals(1 + explanation.root().on().size(), brief.lines().count());
        assertTrue(brief.contains("further down)"), brief);
    }
}
