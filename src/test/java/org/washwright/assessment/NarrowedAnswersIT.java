package org.washwright.assessment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.generate.Starter;
import org.washwright.generate.TaskMaker;
import org.washwright.task.CleaningTask;

/**
 * The law of not knowing, seen from outside: saying more never makes a process that was out come back, never takes back a
 * recommendation, and never moves points out of the range that was shown.
 */
@Tag("slow")
class NarrowedAnswersIT {

    private static final int TASKS = 40;
    private static final int TRIES = 25;

    @ParameterizedTest
    @ValueSource(longs = {41, 42, 43})
    void sayingMoreNeverTakesBackAVerdict(long seed) {
        Random random = new Random(seed);
        TaskMaker maker = new TaskMaker(random, Starter.edition());
        List<CleaningTask> demo = List.copyOf(Starter.demoTasks().values());
        List<String> broken = new ArrayList<>();
        int steps = 0;
        for (int t = 0; t < TASKS; t++) {
            CleaningTask task = t % 2 == 0 ? maker.task() : maker.mutated(demo.get(random.nextInt(demo.size())));
            Optional<Answer> before = answer(task);
            for (int i = 0; i < TRIES && before.isPresent(); i++) {
                Optional<TaskMaker.Narrowed> next = maker.narrower(task);
                Optional<Answer> after = next.flatMap(n -> answer(n.task()));
                if (after.isPresent()) {
                    for (String b : broken(before.get(), after.get())) {
                        broken.add(next.get().what() + ": " + b);
                    }
                    steps++;
                    task = next.get().task();
                    before = after;
                }
            }
        }
        assertEquals(List.of(), broken.stream().limit(10).toList());
        // Own earlier output, half of it.
        assertTrue(steps > 150, steps + " steps");
    }

    private static List<String> broken(Answer before, Answer after) {
        List<String> broken = new ArrayList<>();
        Map<String, String> old = statuses(before);
        Map<String, String> now = statuses(after);
        old.forEach((process, status) -> {
            if (!status.equals("conditional") && !status.equals(now.get(process))) {
                broken.add(process + " was " + status + " and is " + now.get(process));
            }
        });
        for (Answer.Candidate c : after.candidates()) {
            before.candidates().stream()
                    .filter(b -> b.process().equals(c.process()))
                    .filter(b -> c.low() < b.low() - 1e-9 || c.high() > b.high() + 1e-9)
                    .forEach(b -> broken.add(c.process() + " had " + b.low() + " to " + b.high() + " points and has "
                            + c.low() + " to " + c.high()));
        }
        return broken;
    }

    private static Map<String, String> statuses(Answer answer) {
        Map<String, String> out = new TreeMap<>();
        answer.candidates().forEach(c -> out.put(c.process(), c.status()));
        answer.ruledOut().forEach(r -> out.put(r.process(), "ruled out"));
        return out;
    }

    private static Optional<Answer> answer(CleaningTask task) {
        try {
            return Optional.of(Starter.swept().assess(task, Starter.WISHES).answer());
        } catch (RefusedTask e) {
            return Optional.empty();
        }
    }
}
