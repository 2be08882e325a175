package org.washwright.bench;

import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.washwright.assessment.Assessor;
import org.washwright.drools.DroolsInference;
import org.washwright.cli.QuietLog;
import org.washwright.drools.Units;
import org.washwright.engine.Fact;
import org.washwright.generate.SmallEdition;
import org.washwright.rule.Edition;

/** Heap of a held edition, and heap and classes while editions are loaded and dropped. */
public final class MemoryCost {

    private static final int RULES = 300;
    private static final int HELD = 4;
    private static final int CYCLES = 200;

    private MemoryCost() {}

    /** No arguments. */
    public static void main(String[] args) throws Exception {
        QuietLog.apply();
        Synthetic synthetic = new Synthetic(RULES, 1);
        Path store = Files.createTempDirectory("units").resolve("units");
        use(load(synthetic, store), synthetic);
        // The edition's own text is read anew each time, so rule tree and catalogue count too.
        long before = heap();
        Assessor[] held = new Assessor[HELD];
        for (int i = 0; i < HELD; i++) {
            held[i] = load(synthetic, store);
            use(held[i], synthetic);
        }
        double megabytes = (heap() - before) / 1e6 / HELD;
        use(held[0], synthetic);
        Arrays.fill(held, null);
        double[] heap = new double[4];
        double[] classes = new double[4];
        for (int i = 0; i < CYCLES; i++) {
            use(load(synthetic, store), synthetic);
            if (i % 10 == 9) {
                heap[i * 4 / CYCLES] += heap() / 1e6 / 5;
                classes[i * 4 / CYCLES] +=
                        ManagementFactory.getClassLoadingMXBean().getLoadedClassCount() / 5.0;
            }
        }
        System.out.println(megabytes + " " + heap[1] + " " + heap[3] + " " + classes[1] + " " + classes[3]);
        System.exit(0);
    }

    private static Assessor load(Synthetic synthetic, Path store) {
        Edition edition = SmallEdition.read(SmallEdition.files(synthetic.editionTexts()));
        return Assessor.of(edition, DroolsInference.factory(Units.in(store)));
    }

    private static void use(Assessor assessor, Synthetic synthetic) {
        Edition edition = assessor.edition();
        List<Fact> facts = synthetic.facts(edition).get(0);
        if (facts.isEmpty()) {
            throw new IllegalStateException("a task without facts");
        }
        assessor.assess(
                org.washwright.generate.Starter.task(edition, synthetic.texts().get(0)),
                org.washwright.generate.Starter.WISHES);
    }

    private static long heap() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }
}
