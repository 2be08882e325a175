package org.washwright.explain.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.assessment.RefusedTask;
import org.washwright.generate.Starter;
import org.washwright.generate.TaskMaker;
import org.washwright.task.CleaningTask;

/** The proof check on the starter rulebook: answers by compiled rules, checked by the interpreter. */
class ProofCheckIT {

    private static final long SEED = 20261128;
    private static final int TASKS = 500;
    private static final int TAMPERINGS = 200;

    private final ProofCheck check = new ProofCheck(Starter.edition());

    @Test
    void everyDemoAnswerHoldsAndEachOfTwoHundredTamperingsIsFound() throws IOException {
        List<byte[]> answers = new ArrayList<>();
        for (CleaningTask task : Starter.demoTasks().values()) {
            byte[] bytes = Starter.compiled().assess(task, Starter.WISHES).bytes();
            Verdict verdict = check.check(bytes, 5);
            assertTrue(verdict.holds(), task.title() + " " + verdict.breaches());
            answers.add(bytes);
        }
        Tampering tampering = new Tampering(new Random(SEED));
        int found = 0;
        for (int i = 0; i < TAMPERINGS; i++) {
            Tampering.Tampered tampered = tampering.tamper(answers.get(i % answers.size()));
            Verdict verdict = check.check(tampered.bytes(), 5);
            assertFalse(verdict.holds(), "tampering " + i + ": " + tampered.what());
            found++;
        }
        assertEquals(TAMPERINGS, found);
    }

    @Test
    @Tag("load")
    void theAnswersToFiveHundredGeneratedTasksHold() throws IOException {
        TaskMaker maker = new TaskMaker(new Random(SEED), Starter.edition());
        int asked = 0;
        for (int i = 0; asked < TASKS; i++) {
            CleaningTask task = maker.task();
            FrozenAnswer answer;
            try {
                answer = Starter.compiled().assess(task, Starter.WISHES);
            } catch (RefusedTask contradiction) {
                // Values that contradict each other have no answer to check.
                continue;
            }
            Verdict verdict = check.check(answer.bytes(), 5);
            assertTrue(verdict.holds(), "task " + i + " of seed " + SEED + " " + verdict.breaches());
            asked++;
        }
        assertEquals(TASKS, asked);
    }
}
