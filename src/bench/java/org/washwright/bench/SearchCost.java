package org.washwright.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.Wishes;
import org.washwright.cli.QuietLog;
import org.washwright.document.Diagnostics;
import org.washwright.drools.DrlReader;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.exchange.EditionFiles;
import org.washwright.exchange.EditionReader;
import org.washwright.explain.change.ChangeFinder;
import org.washwright.explain.change.Goal;
import org.washwright.explain.vary.Moves;
import org.washwright.explain.vary.Place;
import org.washwright.explain.vary.Places;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;
import org.washwright.task.TaskReader;

/**
 * Times, in a JVM of its own, what a search for changes does thousands of times against what an answer costs. Prints microseconds of
 * processor time: statuses of a task as it stands; the same with its order; statuses with nothing known of what may change; an
 * evaluation in a short search for single changes; a whole answer.
 */
public final class SearchCost {

    private static final long WARM_UP_NANOS = 6_000_000_000L;
    private static final int ROUNDS = 5;
    private static final long ROUND_NANOS = 800_000_000L;
    private static final Wishes WISHES = Wishes.on("2026-11-25");

    private SearchCost() {}

    private interface Contender {
        /** Tries a task; how many evaluations that took. */
        int run(int task);
    }

    /** Arguments: folder of the edition, folder of tasks. */
    public static void main(String[] args) throws Exception {
        QuietLog.apply();
        Edition edition = new EditionReader(new DrlReader())
                .read(EditionFiles.ofFolder(Path.of(args[0]), new Diagnostics()))
                .edition()
                .orElseThrow();
        Assessor assessor = Assessor.of(edition, SweepInference.factory());
        ChangeFinder finder = new ChangeFinder(assessor);
        List<CleaningTask> tasks = tasks(Path.of(args[1]), edition);
        Goal goal = new Goal(Goal.Kind.DISPLACE_FIRST, "");
        List<CleaningTask> letGo = new ArrayList<>();
        for (CleaningTask task : tasks) {
            List<Place> places = finder.choices(task, goal, ChangeFinder.FIXED).stream()
                    .map(Places.Choice::place)
                    .toList();
            letGo.add(Moves.apply(task, List.of(), places));
        }
        ChangeFinder.Scope scope = new ChangeFinder.Scope(Set.of(), 1, 20);
        double[] micros = {
            micros(tasks.size(), i -> evaluated(assessor.outcome(tasks.get(i), WISHES))),
            micros(tasks.size(), i -> evaluated(assessor.standing(tasks.get(i), WISHES))),
            micros(tasks.size(), i -> evaluated(assessor.outcome(letGo.get(i), WISHES))),
            micros(
                    tasks.size(),
                    i -> finder.find(tasks.get(i), WISHES, goal, scope, n -> {})
                            .search()
                            .evaluations()),
            micros(tasks.size(), i -> evaluated(assessor.assess(tasks.get(i), WISHES)))
        };
        System.out.println(String.join(" ", Arrays.stream(micros).mapToObj(String::valueOf).toList()));
        System.exit(0);
    }

    private static int evaluated(Object result) {
        return result == null ? 0 : 1;
    }

    private static List<CleaningTask> tasks(Path folder, Edition edition) throws IOException {
        List<CleaningTask> out = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.sorted().toList()) {
                TaskReader.read(file.toString(), Files.readAllBytes(file), edition, new Diagnostics())
                        .ifPresent(out::add);
            }
        }
        return out;
    }

    private static double micros(int tasks, Contender contender) {
        long until = System.nanoTime() + WARM_UP_NANOS;
        for (int n = 0; System.nanoTime() < until; n++) {
            contender.run(n % tasks);
        }
        double[] micros = new double[ROUNDS];
        for (int round = 0; round < ROUNDS; round++) {
            long from = thread();
            long done = 0;
            while (thread() - from < ROUND_NANOS) {
                // Whole passes only: tasks differ.
                for (int i = 0; i < tasks; i++) {
                    done += contender.run(i);
                }
            }
            micros[round] = (thread() - from) / 1e3 / done;
        }
        Arrays.sort(micros);
        return micros[ROUNDS / 2];
    }

    private static long thread() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
