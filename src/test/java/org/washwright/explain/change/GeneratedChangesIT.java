package org.washwright.explain.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Outcome;
import org.washwright.assessment.RefusedTask;
import org.washwright.generate.Starter;
import org.washwright.generate.TaskMaker;
import org.washwright.line.ProcessLine;
import org.washwright.task.CleaningTask;

/** Single changes proposed for every demo task and for five hundred generated ones, each held against the whole answer to it. */
@Tag("load")
class GeneratedChangesIT {

    private static final long SEED = 20261128;
    private static final int TASKS = 500;
    private static final ChangeFinder.Scope WHOLE = new ChangeFinder.Scope(Set.of(), 1, 300);
    private static final ChangeFinder.Scope BRIEF = new ChangeFinder.Scope(Set.of(), 1, 40);

    private final ChangeFinder finder = new ChangeFinder(Starter.swept());
    private final Random random = new Random(SEED);

    @Test
    void every_change_proposed_for_a_demo_task_keeps_its_promise() {
        int proposals = 0;
        for (Map.Entry<String, CleaningTask> e : Starter.demoTasks().entrySet()) {
            for (int i = 0; i < 3; i++) {
                Changes changes = changes(e.getValue(), WHOLE);
                assertEquals(List.of(), Promises.broken(changes, e.getValue(), Starter.swept()), e.getKey());
                proposals += changes.proposals().size();
            }
        }
        assertTrue(proposals > 10, proposals + " proposals");
    }

    @Test
    void every_change_proposed_for_five_hundred_tasks_keeps_its_promise() {
        TaskMaker maker = new TaskMaker(random, Starter.edition());
        int asked = 0;
        int contradictions = 0;
        int proposals = 0;
        for (int i = 0; asked < TASKS; i++) {
            CleaningTask task = maker.task();
            try {
                Changes changes = changes(task, BRIEF);
                assertEquals(List.of(), unkept(changes, task), "task " + i + " of seed " + SEED);
                proposals += changes.proposals().size();
                asked++;
            } catch (RefusedTask contradiction) {
                // Values that contradict each other have no answer that could be changed; another task takes their
                // place.
                contradictions++;
            }
        }
        assertEquals(TASKS, asked);
        assertTrue(proposals > 50, proposals + " proposals, " + contradictions + " contradictions");
    }

    /** Single changes that let one of the ruled-out processes stand. */
    private Changes changes(CleaningTask task, ChangeFinder.Scope scope) {
        Outcome outcome = Starter.swept().outcome(task, Starter.WISHES);
        List<ProcessLine> out = new ArrayList<>(outcome.lines());
        out.removeIf(l -> l.status() != ProcessLine.Status.RULED_OUT);
        // Where nothing is ruled out, any process will do: nothing is proposed for it.
        List<ProcessLine> from = out.isEmpty() ? outcome.lines() : out;
        String process = from.get(random.nextInt(from.size())).process().id();
        Changes changes = finder.find(task, Starter.WISHES, new Goal(Goal.Kind.LET_STAND, process), scope, n -> {});
        assertTrue(changes.search().evaluations() <= scope.evaluations(), process);
        return changes;
    }

    /** Proposals after which the process still does not stand, by the rules alone: quicker than whole answers. */
    private static List<String> unkept(Changes changes, CleaningTask task) {
        List<String> out = new ArrayList<>();
        for (Changes.Proposal p : changes.proposals()) {
            CleaningTask changed = Applied.to(task, p.changes(), Starter.edition());
            Outcome outcome = Starter.swept().outcome(changed, Starter.WISHES);
            if (outcome.line(changes.process()).orElseThrow().status() == ProcessLine.Status.RULED_OUT) {
                out.add(changes.process() + " does not stand after " + p.changes());
            }
        }
        return out;
    }
}
