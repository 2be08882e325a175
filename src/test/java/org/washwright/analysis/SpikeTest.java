package org.washwright.analysis;

import java.util.*;
import org.junit.jupiter.api.Test;
import org.washwright.generate.Starter;
import org.washwright.rule.*;
import org.washwright.task.TaskWriter;

class SpikeTest {
    @Test
    void x() {
        Edition e = Starter.edition();
        long t0 = System.nanoTime();
        Examination x = new Examiner(e, "2026-11-25", 2000).examine(List.of());
        System.out.println("EXAMINED in " + (System.nanoTime() - t0) / 1000000 + " ms");
        for (Finding f : x.findings())
            System.out.println("FINDING " + f.kind() + " " + f.rules() + " " + f.words() + " "
                    + f.witness()
                            .map(w -> TaskWriter.yaml(w, e, "").replace("\n", " ; "))
                            .orElse("-"));
        System.out.println(
                "EX " + x.examples().values().stream().mapToInt(List::size).sum());
    }
}
