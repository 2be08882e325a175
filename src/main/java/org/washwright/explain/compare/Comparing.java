package org.washwright.explain.compare;

import java.util.List;
import org.washwright.assessment.Answer;
import org.washwright.assessment.FrozenAnswer;

/** Compares two answers: of two tasks, or of one task by two editions or with other wishes. */
public final class Comparing {

    private static final int FORMAT = 1;

    private Comparing() {}

    /** How the later answer differs from the earlier one. */
    public static Comparison of(FrozenAnswer before, FrozenAnswer after) {
        Side old = new Side(before.answer());
        Side now = new Side(after.answer());
        List<Comparison.AskedChange> asked = AskedChanges.of(old, now);
        Causes causes = new Causes(old, now, asked);
        List<Comparison.ProcessChange> processes = new Processes(causes).changes();
        Findings findings = Findings.of(causes);
        Comparison unsaid = new Comparison(
                FORMAT,
                "",
                side(before, old),
                side(after, now),
                asked,
                processes,
                findings.gained(),
                findings.lost(),
                findings.reworded(),
                findings.held(),
                Passages.between(causes, old.answer().cautions(), now.answer().cautions()),
                Passages.between(causes, old.answer().doubts(), now.answer().doubts()),
                Passages.questions(causes),
                Passages.between(
                        causes, old.answer().verifications(), now.answer().verifications()),
                causes.rules());
        return said(unsaid);
    }

    private static Comparison said(Comparison c) {
        return new Comparison(
                c.format(),
                Summary.of(c.before(), c.after(), c.asked(), c.same(), c.processes()),
                c.before(),
                c.after(),
                c.asked(),
                c.processes(),
                c.gained(),
                c.lost(),
                c.reworded(),
                c.held(),
                c.cautions(),
                c.doubts(),
                c.questions(),
                c.verifications(),
                c.rules());
    }

    private static Comparison.Side side(FrozenAnswer frozen, Side index) {
        Answer answer = frozen.answer();
        int recommended = (int) answer.candidates().stream()
                .filter(c -> c.status().equals("recommended"))
                .count();
        return new Comparison.Side(
                answer.request().edition(),
                answer.request().meaningHash(),
                answer.requestHash(),
                frozen.hash(),
                answer.headline().sentence(),
                index.standing().stream().findFirst().flatMap(index::name).orElse(""),
                recommended,
                answer.candidates().size() - recommended,
                answer.ruledOut().size());
    }
}
