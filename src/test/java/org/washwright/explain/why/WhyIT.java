package org.washwright.explain.why;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.RefusedTask;
import org.washwright.generate.Starter;
import org.washwright.generate.TaskMaker;
import org.washwright.task.CleaningTask;

/** The same for five hundred generated tasks. */
@Tag("load")
class WhyIT {

    private static final long SEED = 20261128;
    private static final int TASKS = 500;

    @Test
    void everyFindingOfFiveHundredTasksIsReachedAndStandsOnGround() {
        TaskMaker maker = new TaskMaker(new Random(SEED), Starter.edition());
        int answered = 0;
        for (int i = 0; answered < TASKS; i++) {
            CleaningTask task = maker.task();
            try {
                var answer = Starter.swept().assess(task, Starter.WISHES).answer();
                assertEquals(List.of(), WhyCheck.faults(answer), "task " + i + " of seed " + SEED);
                answered++;
            } catch (RefusedTask contradiction) {
                // Values that contradict each other have no answer, and so no reasons.
                continue;
            }
        }
        assertEquals(TASKS, answered);
    }
}
