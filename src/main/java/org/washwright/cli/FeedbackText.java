package org.washwright.cli;

import java.io.PrintWriter;
import java.util.List;
import org.washwright.explain.exercise.Feedback;

/** Writes a prediction beside the answer for people. */
final class FeedbackText {

    private final PrintWriter out;

    FeedbackText(PrintWriter out) {
        this.out = out;
    }

    void write(Feedback feedback) {
        out.println(feedback.inWords());
        String first = feedback.first();
        out.println("first: " + first
                + (feedback.firstRight()
                        ? ", as predicted"
                        : ", predicted: "
                                + (feedback.firstPredicted().isEmpty() ? "nothing" : feedback.firstPredicted())));
        for (Feedback.Judged p : feedback.processes()) {
            out.println();
            out.println(p.name() + ": " + p.actual()
                    + (p.isStatusRight()
                            ? ", as predicted"
                            : ", predicted: " + (p.predicted().isEmpty() ? "nothing" : p.predicted())));
            reasons("right  ", p.right());
            reasons("missed ", p.missed());
            reasons("in vain", p.inVain());
        }
    }

    private void reasons(String kind, List<Feedback.Reason> reasons) {
        for (Feedback.Reason r : reasons) {
            out.println("  " + kind + " " + r.title() + " [" + r.rule() + "]");
            out.println("          " + (r.whyNot().isEmpty() ? r.text() : r.whyNot()));
            out.println(
                    "          " + r.basis() + (r.sources().isEmpty() ? "" : ": " + String.join("; ", r.sources())));
        }
    }
}
