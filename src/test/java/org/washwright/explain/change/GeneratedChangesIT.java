package org.washwright.explain.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Outcome;
import org.washwright.assessment.RefusedTask;
import org.washwright.generate.Starter;
import org.washwright.generate.TaskMaker;
import org.washwright.line.ProcessLine;
import org.washwright.task.CleaningTask;

/** Single changes proposed for every demo task and for five hundred generated ones, each held against the whole answer to it. */
class GeneratedChangesIT {

    private static final long SEED = 20261128;
    private static final int TASKS = 500;
    private static final ChangeFinder.Scope SINGLE = new ChangeFinder.Scope(Set.of(), 1, 300);

    private final ChangeFinder finder = new ChangeFinder(Starter.swept());
    private final Random random = new Random(SEED);

    @Test
    void every_change_proposed_for_a_demo_task_keeps_its_promise() {
        int proposals = 0;
        for (Map.Entry<String, CleaningTask> e : Starter.demoTasks().entrySet()) {
            for (int i = 0; i < 3; i++) {
                proposals += promised(e.getValue(), e.getKey());
            }
        }
        assertTrue(proposals > 10, proposals + " proposals");
    }

    @Test
    void every_change_proposed_for_five_hundred_tasks_keeps_its_promise() {
        TaskMaker maker = new TaskMaker(random, Starter.edition());
        int asked = 0;
        int proposals = 0;
        for (int i = 0; asked < TASKS; i++) {
            CleaningTask task = maker.task();
            try {
                proposals += promised(task, "task " + i + " of seed " + SEED);
                asked++;
            } catch (RefusedTask contradiction) {
                // Values that contradict each other have no answer that could be changed.
                continue;
            }
        }
        assertEquals(TASKS, asked);
        assertTrue(proposals > 50, proposals + " proposals");
    }

    /** Looks for single changes that let one of the ruled-out processes stand; tells how many were proposed. */
    private int promised(CleaningTask task, String name) {
        Outcome outcome = Starter.swept().outcome(task, Starter.WISHES);
        List<ProcessLine> out = new ArrayList<>(outcome.lines());
        out.removeIf(l -> l.status() != ProcessLine.Status.RULED_OUT);
        if (out.isEmpty()) {
            return 0;
        }
        String process = out.get(random.nextInt(out.size())).process().id();
        Changes changes = finder.find(task, Starter.WISHES, new Goal(Goal.Kind.LET_STAND, process), SINGLE, n -> {});
        assertTrue(changes.search().evaluations() <= SINGLE.evaluations(), name);
        assertEquals(List.of(), Promises.broken(changes, task, Starter.swept()), name + ", " + process);
        return changes.proposals().size();
    }
}
