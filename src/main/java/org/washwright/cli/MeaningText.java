package org.washwright.cli;

import java.io.PrintWriter;
import java.util.List;
import org.washwright.document.Place;
import org.washwright.impact.meaning.Detail;
import org.washwright.impact.meaning.Difference;
import org.washwright.impact.meaning.MeaningComparison;

/** Writes how two editions differ as text: the sentence, what changes answers, what is wording, what only moved. */
final class MeaningText {

    private final MeaningComparison comparison;
    private final PrintWriter out;

    MeaningText(MeaningComparison comparison, PrintWriter out) {
        this.comparison = comparison;
        this.out = out;
    }

    void write() {
        out.println(comparison.sentence());
        side("before", comparison.before());
        side("after ", comparison.after());
        section("By this answers may change", comparison.changing(), true);
        section("Words and cases: no answer changes by them", comparison.wording(), true);
        section("Only stands elsewhere", comparison.moved(), false);
        out.flush();
    }

    private void side(String when, MeaningComparison.Side side) {
        out.println("  " + when + "  " + side.title() + ": " + side.rules() + " rules, " + side.cases()
                + " cases, meaning " + side.meaningHash().substring(0, 12) + ", text "
                + side.textHash().substring(0, 12));
    }

    private void section(String title, List<Difference> differences, boolean details) {
        if (differences.isEmpty()) {
            return;
        }
        out.println();
        out.println(title);
        for (Difference d : differences) {
            out.println(
                    "  " + d.subject().word() + " " + d.what().word() + ": [" + d.id() + "] " + d.name() + where(d));
            if (details) {
                d.details().forEach(this::detail);
            }
        }
    }

    private static String where(Difference d) {
        if (d.place().file().isEmpty()) {
            return "";
        }
        return d.movesFile()
                        || d.details().isEmpty()
                                && !d.before().file().isEmpty()
                                && !d.after().file().isEmpty()
                ? "  (" + at(d.before()) + " -> " + at(d.after()) + ")"
                : "  (" + at(d.place()) + ")";
    }

    private static String at(Place place) {
        return place.line() == 0 ? place.file() : place.file() + ":" + place.line();
    }

    private void detail(Detail d) {
        if (!d.before().isEmpty()) {
            out.println("    - " + d.what() + ": " + d.before());
        }
        if (!d.after().isEmpty()) {
            out.println("    + " + d.what() + ": " + d.after());
        }
    }
}
