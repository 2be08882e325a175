package org.washwright.assessment;

import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.washwright.cli.QuietLog;
import org.washwright.document.Diagnostics;
import org.washwright.drools.DrlReader;
import org.washwright.drools.DroolsInference;
import org.washwright.engine.FactBuilder;
import org.washwright.engine.Firings;
import org.washwright.engine.Inference;
import org.washwright.engine.InferenceFactory;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.exchange.EditionFiles;
import org.washwright.exchange.EditionReader;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;
import org.washwright.task.TaskReader;

/**
 * Times what comes after the rules, in a JVM of its own: composing, sizing and grading the lines of all processes that stand, against the
 * rules themselves, every match recorded. Prints microseconds of processor time a task: facts, rules over task and lines, recording of
 * firings, composing, sizing with grading; then the whole answer with its wording.
 */
public final class LineCost {

    private static final long WARM_UP_NANOS = 8_000_000_000L;
    private static final int ROUNDS = 7;
    private static final long ROUND_NANOS = 800_000_000L;
    private static final Wishes WISHES = Wishes.on("2026-11-25");

    private LineCost() {}

    /** Counts the processor time that rules take. */
    private static final class Counted implements InferenceFactory {
        private final InferenceFactory of;
        private long nanos;

        Counted(InferenceFactory of) {
            this.of = of;
        }

        @Override
        public Inference prepare(
                List<org.washwright.rule.Rule> rules,
                Map<String, Integer> levels,
                org.washwright.rule.FactTypes types) {
            Inference inner = of.prepare(rules, levels, types);
            return facts -> {
                long from = thread();
                Inference.Inferred inferred = inner.run(facts);
                nanos += thread() - from;
                return inferred;
            };
        }
    }

    /** Arguments: engine ({@code compiled} or {@code indexed}), folder of the edition, folder of tasks. */
    public static void main(String[] args) throws Exception {
        QuietLog.apply();
        Edition edition = new EditionReader(new DrlReader())
                .read(EditionFiles.ofFolder(Path.of(args[1]), new Diagnostics()))
                .edition()
                .orElseThrow();
        List<CleaningTask> tasks = tasks(Path.of(args[2]), edition);
        Counted counted =
                new Counted(args[0].equals("compiled") ? DroolsInference.factory() : SweepInference.factory());
        Assessor assessor = Assessor.of(edition, counted);
        FactBuilder builder = new FactBuilder(edition);
        double facts = micros(tasks.size(), i -> builder.build(tasks.get(i), Map.of(), org.washwright.task.Value.UNKNOWN, new Diagnostics())
                .all()
                .size());
        double outcome = micros(tasks.size(), i -> assessor.outcome(tasks.get(i), WISHES).firings().size());
        double rules = rules(counted, tasks.size(), i -> assessor.outcome(tasks.get(i), WISHES).firings().size());
        List<Inference.Inferred> inferred = new ArrayList<>();
        List<org.washwright.engine.FactBase> bases = new ArrayList<>();
        Inference plain = SweepInference.factory().prepare(edition.taskRules(), edition.levels(), edition.types());
        for (CleaningTask task : tasks) {
            var base = builder.build(task, Map.of(), org.washwright.task.Value.UNKNOWN, new Diagnostics());
            Inference.Inferred in = plain.run(base.all());
            inferred.add(in);
            bases.add(base.with(in.conclusions()));
        }
        double recording = micros(
                tasks.size(), i -> new Firings(edition).of(inferred.get(i), bases.get(i), "", 1).size());
        double designs = micros(tasks.size(), i -> assessor.designs(tasks.get(i), WISHES).grades().size());
        double whole = micros(tasks.size(), i -> assessor.assess(tasks.get(i), WISHES).bytes().length);
        System.out.println(facts + " " + rules + " " + recording + " " + (outcome - facts - rules - recording) + " "
                + (designs - outcome) + " " + whole);
        System.exit(0);
    }

    private static List<CleaningTask> tasks(Path folder, Edition edition) throws java.io.IOException {
        List<CleaningTask> out = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.sorted().toList()) {
                TaskReader.read(file.toString(), Files.readAllBytes(file), edition, new Diagnostics())
                        .ifPresent(out::add);
            }
        }
        return out;
    }

    private interface Contender {
        int run(int task);
    }

    private static double rules(Counted counted, int tasks, Contender contender) {
        double[] micros = new double[ROUNDS];
        for (int round = 0; round < ROUNDS; round++) {
            counted.nanos = 0;
            long from = thread();
            int done = 0;
            while (thread() - from < ROUND_NANOS) {
                for (int i = 0; i < tasks; i++) {
                    contender.run(i);
                }
                done += tasks;
            }
            micros[round] = counted.nanos / 1e3 / done;
        }
        Arrays.sort(micros);
        return micros[ROUNDS / 2];
    }

    private static double micros(int tasks, Contender contender) {
        long until = System.nanoTime() + WARM_UP_NANOS;
        for (int n = 0; System.nanoTime() < until; n++) {
            contender.run(n % tasks);
        }
        double[] micros = new double[ROUNDS];
        for (int round = 0; round < ROUNDS; round++) {
            long from = thread();
            int done = 0;
            while (thread() - from < ROUND_NANOS) {
                for (int i = 0; i < tasks; i++) {
                    contender.run(i);
                }
                done += tasks;
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
