package org.washwright.bench;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import org.washwright.cli.QuietLog;

/** Times one contender in a JVM of its own and prints microseconds of its thread per task, and the matches found. */
public final class Rate {

    private static final int WARM_UP_SECONDS = 4;
    private static final int ROUNDS = 5;
    private static final long ROUND_NANOS = 400_000_000L;

    private Rate() {}

    /** Arguments: name of the contender, number of rules (0: the starter), spread. */
    public static void main(String[] args) throws Exception {
        QuietLog.apply();
        Synthetic synthetic = new Synthetic(Integer.parseInt(args[1]), Integer.parseInt(args[2]));
        Contender contender = Contenders.make(args[0], synthetic);
        long matches = 0;
        for (int i = 0; i < Synthetic.TASKS; i++) {
            matches += contender.run(i);
        }
        long until = System.nanoTime() + WARM_UP_SECONDS * 1_000_000_000L;
        int n = 0;
        while (System.nanoTime() < until) {
            contender.run(n++ % Synthetic.TASKS);
        }
        double[] micros = new double[ROUNDS];
        for (int round = 0; round < ROUNDS; round++) {
            long cpu = thread();
            int done = 0;
            while (thread() - cpu < ROUND_NANOS) {
                // Whole passes only: tasks differ.
                for (int i = 0; i < Synthetic.TASKS; i++) {
                    contender.run(i);
                }
                done += Synthetic.TASKS;
            }
            micros[round] = (thread() - cpu) / 1e3 / done;
        }
        Arrays.sort(micros);
        System.out.println(micros[ROUNDS / 2] + " " + matches);
        System.exit(0);
    }

    private static long thread() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
