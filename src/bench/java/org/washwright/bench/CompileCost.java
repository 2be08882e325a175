package org.washwright.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import org.washwright.assessment.Assessor;
import org.washwright.drools.DroolsInference;
import org.washwright.cli.QuietLog;
import org.washwright.drools.Units;
import org.washwright.drools.Variants;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.generate.SmallEdition;
import org.washwright.rule.Edition;

/**
 * Processor seconds of the whole process until an edition can be evaluated, in a JVM of its own that has compiled something
 * small before: all rules in one text, shared out, one rule changed, taken from the store, indexed.
 */
public final class CompileCost {

    private CompileCost() {}

    /** Argument: number of rules. */
    public static void main(String[] args) throws Exception {
        QuietLog.apply();
        Synthetic synthetic = new Synthetic(Integer.parseInt(args[0]), 1);
        Edition edition = synthetic.edition();
        Edition changed = SmallEdition.read(SmallEdition.files(changed(synthetic)));
        Path store = Files.createTempDirectory("units").resolve("units");
        // Warms the compiler up, so that the first contender does not pay for all.
        DroolsInference.factory().prepare(new Synthetic(10, 1).edition().rules(), edition.levels(), edition.types());
        Units units = Units.in(store);
        Assessor[] held = new Assessor[3];
        double one = Cpu.seconds(() -> Variants.compile(Variants.oneText(edition.taskRules(), edition.levels())));
        double shared = Cpu.seconds(() -> held[0] = Assessor.of(edition, DroolsInference.factory(units)));
        long before = units.compiled();
        double change = Cpu.seconds(() -> held[1] = Assessor.of(changed, DroolsInference.factory(units)));
        long compiled = units.compiled() - before;
        double stored = Cpu.seconds(() -> held[2] = Assessor.of(edition, DroolsInference.factory(Units.in(store))));
        double indexed = Cpu.seconds(() -> held[2] = Assessor.of(edition, SweepInference.factory()));
        System.out.println(one + " " + shared + " " + change + " " + stored + " " + indexed + " " + compiled);
        System.exit(0);
    }

    private static java.util.Map<String, String> changed(Synthetic synthetic) {
        java.util.Map<String, String> texts = synthetic.editionTexts();
        texts.computeIfPresent("rules/r0.drl", (k, text) -> text.replaceFirst("amount > \"\\d", "amount > \"9"));
        return texts;
    }
}
