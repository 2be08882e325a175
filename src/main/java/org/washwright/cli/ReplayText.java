package org.washwright.cli;

import java.io.PrintWriter;
import org.washwright.explain.replay.Chapter;
import org.washwright.explain.replay.Replay;
import org.washwright.explain.replay.Step;

/** Writes a walk through an answer for people. */
final class ReplayText {

    private final Replay replay;
    private final PrintWriter out;

    ReplayText(Replay replay, PrintWriter out) {
        this.replay = replay;
        this.out = out;
    }

    /** The chapters with the number of their steps. */
    void chapters() {
        int width = String.valueOf(replay.size()).length();
        for (Chapter c : replay.chapters()) {
            out.printf("%" + width + "d to %" + width + "d  %s%n", c.from(), c.from() + c.count() - 1, c.title());
            if (!replay.process().isEmpty()) {
                c.parts().forEach(p -> out.println("  " + " ".repeat(2 * width + 4) + p.title()));
            }
        }
    }

    /** Every step, chapter by chapter. */
    void all() {
        for (Chapter c : replay.chapters()) {
            out.println();
            out.println(c.title());
            for (int n = c.from(); n < c.from() + c.count(); n++) {
                step(n);
            }
        }
    }

    /** One step: what happens, what it read and what it adds. */
    void step(int n) {
        Step step = replay.steps().get(n - 1);
        out.println();
        String rule = step.rule().isEmpty() ? "" : " [" + step.rule() + "]";
        out.println("step " + n + " of " + replay.size() + ": " + step.title() + rule
                + (step.certain() ? "" : " (undecided)"));
        out.println("  " + step.id());
        if (!step.says().isEmpty()) {
            out.println("  " + step.says());
        }
        step.reads()
                .forEach(r -> out.println("  read   " + r.name() + (r.value().isEmpty() ? "" : ": " + r.value())
                        + (r.known() ? "" : " (holds it)")));
        step.adds()
                .forEach(a -> out.println(
                        "  added  " + a.kind() + " " + a.name() + (a.value().isEmpty() ? "" : ": " + a.value())));
        int before = replay.known(n - 1).size();
        out.println("  known  " + before + " before, " + replay.known(n).size() + " after");
    }
}
