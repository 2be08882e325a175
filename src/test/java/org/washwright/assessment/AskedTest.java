package org.washwright.assessment;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.washwright.generate.Starter;
import org.washwright.task.CleaningTask;

/** What an answer says it was asked, asked again, gives the same bytes: each run is checked against another run of the program. */
class AskedTest {

    @TestFactory
    Stream<DynamicTest> everyDemoTaskComesOutOfItsAnswerAndIsAnsweredAlike() {
        return Starter.demoTasks().entrySet().stream()
                .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> again(e.getValue(), Starter.WISHES)));
    }

    @Test
    void wishesComeOutOfTheAnswerToo() throws IOException {
        CleaningTask task = Starter.demoTasks().values().iterator().next();
        again(task, new Wishes(Map.of("cost", 60.0), Map.of(), "2026-03-01", 7));
        again(
                task,
                new Wishes(
                        Map.of(), Map.of("technology/cost", 3.0, "cost/environment", 2.0), Map.of(), "2026-03-01", 0));
        again(task, new Wishes(Map.of(), Map.of("electricity-price", "0.31 EUR/kWh"), "2026-03-01", 0));
    }

    @Test
    void unknownWrittenOutIsTheSameQuestionAsNothingWritten() {
        String silent = "title: Plate\nmaterials: [{substrate: carbon-steel}]\n";
        String said =
                "title: Plate\npart: {mass: unknown}\nmaterials: [{substrate: carbon-steel, hardness: unknown}]\n";
        assertEquals(
                Starter.swept().assess(Starter.task(silent), Starter.WISHES).hash(),
                Starter.swept().assess(Starter.task(said), Starter.WISHES).hash());
    }

    @Test
    void anIntendedProcessLeftUnknownIsAnotherQuestionThanNone() throws IOException {
        CleaningTask open = Starter.task("title: Plate\nintended: unknown\n");
        again(open, Starter.WISHES);
        again(Starter.task("title: Plate\n"), Starter.WISHES);
    }

    @Test
    void aRequestThatNobodyWritesIsRefusedWithItsPlace() {
        Answer.Request request = Starter.swept()
                .assess(Starter.task("title: Plate\n"), Starter.WISHES)
                .answer()
                .request();
        Answer.Request odd = new Answer.Request(
                Map.of("part", Map.of("mass", List.of(3, 1))),
                request.edition(),
                request.meaningHash(),
                request.textHash(),
                request.weights(),
                request.comparisons(),
                request.assumptions(),
                request.asOf(),
                request.seed(),
                request.program());
        Asked.UnreadableRequest refusal = assertThrows(
                Asked.UnreadableRequest.class,
                () -> Asked.of(odd, Starter.edition().catalogue()));
        assertEquals("The request of the answer can't be read at /request/task/part/mass.", refusal.getMessage());
    }

    private static void again(CleaningTask task, Wishes wishes) throws IOException {
        FrozenAnswer first = Starter.swept().assess(task, wishes);
        Answer read = FrozenAnswer.read(first.bytes()).answer();
        Asked asked = Asked.of(read.request(), Starter.edition().catalogue());
        assertArrayEquals(
                first.bytes(),
                Starter.swept().assess(asked.task(), asked.wishes()).bytes());
    }
}
