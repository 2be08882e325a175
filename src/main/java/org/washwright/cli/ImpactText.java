package org.washwright.cli;

import java.io.PrintWriter;
import java.util.List;
import org.washwright.impact.replay.By;
import org.washwright.impact.replay.Impact;

/** Writes what a change does to answers as text: the sentence, cases that turned, answers that change, and what does nothing. */
final class ImpactText {

    private final Impact impact;
    private final PrintWriter out;

    ImpactText(Impact impact, PrintWriter out) {
        this.impact = impact;
        this.out = out;
    }

    void write() {
        out.println(impact.sentence());
        heading("Reference cases that turned", impact.cases());
        impact.cases().forEach(this::turn);
        heading("Refused", impact.refused());
        impact.refused().forEach(this::refused);
        heading("Answers that change", impact.changed());
        impact.changed().forEach(this::changed);
        heading("What each part of the change does", impact.parts());
        impact.parts().forEach(this::part);
        out.flush();
    }

    private void heading(String text, List<?> needed) {
        if (!needed.isEmpty()) {
            out.println();
            out.println(text);
        }
    }

    private void turn(Impact.CaseTurn turn) {
        out.println("  [" + turn.id() + "] " + turn.title() + ": " + turn.before() + " -> " + turn.after()
                + (turn.edited() ? " (the case was edited)" : ""));
        turn.unmet().forEach(u -> out.println("      " + u));
    }

    private void refused(Impact.Refused refused) {
        String by = refused.onlyNow() ? "only now" : refused.after().isEmpty() ? "no longer" : "by both";
        out.println("  " + refused.title() + ": refused " + by);
        (refused.after().isEmpty() ? refused.before() : refused.after()).forEach(d -> out.println("      " + d));
    }

    private void changed(Impact.AnswerChange c) {
        out.println("  " + c.title() + " (" + c.origin().word() + "): " + c.sentence());
        c.processes().forEach(p -> out.println("      " + p.name() + ": " + p.before() + " -> " + p.after()));
        if (c.moreProcesses() > 0) {
            out.println("      and " + c.moreProcesses() + " more processes");
        }
        c.said().forEach(s -> out.println("      " + s));
        c.by().forEach(by -> out.println("      by " + named(by)));
        if (c.by().isEmpty()) {
            out.println("      by no single part of the change");
        }
    }

    private static String named(By by) {
        return by.subject().word() + " [" + by.id() + "] " + by.name();
    }

    private void part(Impact.Part p) {
        String does = p.changes() > 0
                ? "changes " + p.changes() + (p.changes() == 1 ? " answer" : " answers")
                : p.reached() > 0
                        ? "fires on " + p.reached() + " of the tasks tried and changes no answer"
                        : "touches no task tried";
        out.println("  " + named(p.by()) + ", " + p.what().word() + ": " + does);
    }
}
