package org.washwright.fuzz;

import org.washwright.document.Diagnostics;
import org.washwright.generate.SmallEdition;
import org.washwright.rule.Edition;
import org.washwright.task.TaskReader;

/** Tasks in YAML and JSON. */
public final class TaskFuzz {

    private static final Edition EDITION = SmallEdition.with("""
            rule "many"
              @id("M") @basis("common practice")
            when
              $s : Soil(amount > "1 g/m2")
              $m : Material(hardness >= "31 HRC" || porous == true)
              not Feature(slenderness > 10)
            then
              support("water", "works", 2, "{$s.kind} at {$s.amount} on {$m}, {$m.hardness}.");
              ruleOut("oil-a", "main", "{$m.substrate.family} and {$s}.");
            end
            """);

    private TaskFuzz() {}

    /** Called by the fuzzer once. */
    public static void fuzzerInitialize() {
        Promise.warmUp();
    }

    /** One input of the fuzzer. */
    public static void fuzzerTestOneInput(byte[] data) {
        for (String file : new String[] {"task.yaml", "task.json"}) {
            Diagnostics diagnostics = new Diagnostics();
            TaskReader.read(file, data, EDITION, diagnostics).ifPresent(task -> Promise.answered(EDITION, task));
            Promise.complete(diagnostics.all());
        }
    }
}
