package org.washwright.explain.whynot;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Outcome;
import org.washwright.assessment.RefusedTask;
import org.washwright.generate.Starter;
import org.washwright.generate.TaskMaker;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;

/** What is said of every rule, held against Drools: the demo tasks and five hundred generated ones. */
class WhyNotIT {

    private static final long SEED = 20261128;
    private static final int TASKS = 500;

    private static Agreeing agreeing() {
        Edition edition = Starter.edition();
        return new Agreeing(edition, Starter.units().prepare(edition.lineRules(), edition.levels(), edition.types()));
    }

    @Test
    void ofEveryDemoTaskAndRuleTheTwoSayTheSame() {
        Agreeing agreeing = agreeing();
        for (CleaningTask task : Starter.demoTasks().values()) {
            Outcome outcome = Starter.compiled().outcome(task, Starter.WISHES);
            assertEquals(List.of(), agreeing.differences(outcome), task.title());
            assertEquals(List.of(), Agreeing.untold(new WhyNot(outcome).rules()), task.title());
        }
    }

    @Test
    void ofFiveHundredGeneratedTasksAndEveryRuleTheTwoSayTheSame() {
        Agreeing agreeing = agreeing();
        TaskMaker maker = new TaskMaker(new Random(SEED), Starter.edition());
        int asked = 0;
        for (int i = 0; asked < TASKS; i++) {
            CleaningTask task = maker.task();
            try {
                Outcome outcome = Starter.compiled().outcome(task, Starter.WISHES);
                assertEquals(List.of(), agreeing.differences(outcome), "task " + i + " of seed " + SEED);
                asked++;
            } catch (RefusedTask contradiction) {
                // Values that contradict each other fire no rules.
                continue;
            }
        }
        assertEquals(TASKS, asked);
    }
}
