package org.washwright.bench;

import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.Wishes;
import org.washwright.cli.QuietLog;
import org.washwright.document.Diagnostics;
import org.washwright.drools.DrlReader;
import org.washwright.engine.Fact;
import org.washwright.engine.FactBuilder;
import org.washwright.engine.Inference;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.exchange.EditionFiles;
import org.washwright.exchange.EditionReader;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;
import org.washwright.task.TaskReader;

/**
 * Times the tasks of a folder by an edition, in a JVM of its own. Prints microseconds a task for the rules alone, every match
 * recorded, and for the whole answer; then the numbers of rules, of processes and of tasks.
 */
public final class EditionCost {

    private static final long WARM_UP_NANOS = 6_000_000_000L;
    private static final int ROUNDS = 7;
    private static final long ROUND_NANOS = 600_000_000L;
    private static final Wishes WISHES = Wishes.on("2026-11-25");

    private EditionCost() {}

    /** Arguments: folder of the edition, folder of tasks. */
    public static void main(String[] args) throws Exception {
        QuietLog.apply();
        Edition edition = new EditionReader(new DrlReader())
                .read(EditionFiles.ofFolder(Path.of(args[0]), new Diagnostics()))
                .edition()
                .orElseThrow();
        List<CleaningTask> tasks = tasks(Path.of(args[1]), edition);
        Inference rules = SweepInference.factory().prepare(edition.taskRules(), edition.levels(), edition.types());
        List<List<Fact>> facts = tasks.stream()
                .map(t -> FactBuilder.build(t, edition, Map.of(), new Diagnostics())
                        .all())
                .toList();
        Assessor assessor = Assessor.of(edition, SweepInference.factory());
        double alone = micros(tasks.size(), i -> rules.run(facts.get(i)).matches().size());
        double whole =
                micros(tasks.size(), i -> assessor.assess(tasks.get(i), WISHES).answer().firings().size());
        System.out.println(alone + " " + whole + " " + edition.rules().size() + " "
                + edition.catalogue().leaves().size() + " " + tasks.size());
        System.exit(0);
    }

    private static List<CleaningTask> tasks(Path folder, Edition edition) throws java.io.IOException {
        List<CleaningTask> out = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.sorted().toList()) {
                // An older edition may not know every word.
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
            long cpu = thread();
            int done = 0;
            while (thread() - cpu < ROUND_NANOS) {
                for (int i = 0; i < tasks; i++) {
                    contender.run(i);
                }
                done += tasks;
            }
            micros[round] = (thread() - cpu) / 1e3 / done;
        }
        Arrays.sort(micros);
        return micros[ROUNDS / 2];
    }

    private static long thread() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
