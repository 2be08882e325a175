package org.washwright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.washwright.explain.compare.Comparison;
import org.washwright.explain.compare.Comparison.Cause;
import org.washwright.explain.compare.Comparison.ProcessChange;
import org.washwright.explain.compare.Comparison.Said;
import org.washwright.explain.compare.Comparison.SentenceChange;
import org.washwright.explain.compare.Comparison.Standing;

/** Writes a comparison as text: the sentence first, then what was asked, who stands where, findings, lines and figures. */
final class CompareText {
    private static final int CAUSES = 4;

    private final Comparison comparison;
    private final PrintWriter out;

    CompareText(Comparison comparison, PrintWriter out) {
        this.comparison = comparison;
        this.out = out;
    }

    void write() {
        out.println(comparison.sentence());
        if (comparison.same()) {
            return;
        }
        heading("Asked otherwise", !comparison.asked().isEmpty());
        comparison
                .asked()
                .forEach(a -> out.println(
                        "  " + a.name() + ": " + a.before() + " -> " + a.after() + "  (" + a.place() + ")"));
        processes();
        findings("Found no longer", comparison.lost());
        findings("Found now", comparison.gained());
        out.println();
        out.println(comparison.held() + " findings are the same in both; "
                + comparison.reworded().size() + " say something else.");
        sentences("Take care", comparison.cautions());
        sentences("Look at this again", comparison.doubts());
        sentences("Find out", comparison.questions());
        sentences("Prove it clean", comparison.verifications());
        comparison.processes().forEach(this::line);
        rules();
    }

    private void heading(String text, boolean needed) {
        if (needed) {
            out.println();
            out.println(text);
        }
    }

    private void processes() {
        List<ProcessChange> moved = comparison.processes().stream()
                .filter(p -> !p.before().equals(p.after()))
                .toList();
        heading("Who stands where", !moved.isEmpty());
        for (ProcessChange p : moved) {
            out.println("  " + p.name() + ": " + standing(p.before()) + " -> " + standing(p.after()));
            because(p.causes(), "      ");
        }
    }

    private static String standing(Standing s) {
        return s.stands()
                ? "place " + s.place() + ", " + s.status() + ", " + points(s)
                : s.status().equals("none") ? "not in this edition" : s.status();
    }

    private static String points(Standing s) {
        String low = number(s.low());
        String high = number(s.high());
        return (low.equals(high) ? low : low + " to " + high) + " points";
    }

    private static String number(double points) {
        return String.format(Locale.ROOT, "%.0f", points);
    }

    private void because(List<Cause> causes, String blanks) {
        causes.stream().limit(CAUSES).forEach(c -> out.println(blanks + "because of " + cause(c)));
        if (causes.size() > CAUSES) {
            out.println(blanks + "and " + (causes.size() - CAUSES) + " more");
        }
    }

    private static String cause(Cause c) {
        if (c.kind().equals("process")) {
            return c.name() + (c.side().equals("before") ? ", no longer ahead" : ", now ahead");
        }
        String side = c.side().equals("before") ? ", no longer" : c.side().equals("after") ? ", now" : "";
        String detail = c.detail().isEmpty() ? "" : ": " + c.detail();
        return (c.kind().equals("rule") ? "[" + c.id() + "] " : c.kind() + " ") + c.name() + detail + side;
    }

    private void findings(String title, List<Said> said) {
        heading(title, !said.isEmpty());
        for (Said s : said) {
            String what = (s.verb() + " " + s.detail()).strip();
            out.println("  [" + s.rule() + "] " + s.title() + (s.certain() ? "" : " (not decided)") + ": " + what
                    + (s.text().isEmpty() ? "" : " - " + s.text()));
        }
    }

    private void sentences(String title, List<SentenceChange> changes) {
        heading(title, !changes.isEmpty());
        for (SentenceChange s : changes) {
            out.println("  " + (s.gained() ? "now: " : "no longer: ") + s.text());
        }
    }

    private void line(ProcessChange p) {
        boolean any =
                !p.stages().isEmpty() || !p.windows().isEmpty() || !p.figures().isEmpty();
        heading("Line of " + p.name(), any);
        p.stages().forEach(s -> {
            out.println("  stage " + s.name() + ": " + s.kind());
            s.factors().forEach(f -> out.println("      " + f.factor() + ": " + f.before() + " -> " + f.after()));
            because(s.causes(), "      ");
        });
        p.windows().forEach(w -> {
            out.println(
                    "  " + w.name() + " of " + w.stageName() + ": " + shown(w.before()) + " -> " + shown(w.after()));
            because(w.causes(), "      ");
        });
        p.figures()
                .forEach(f -> out.println("  " + f.label() + (f.stageName().isEmpty() ? "" : ", " + f.stageName())
                        + ": " + shown(f.before()) + " -> " + shown(f.after())));
    }

    private static String shown(String value) {
        return value.isEmpty() ? "none" : value;
    }

    private void rules() {
        heading("Rules that made a difference", !comparison.rules().isEmpty());
        comparison
                .rules()
                .forEach(r -> out.println("  [" + r.id() + "] " + r.title() + " (" + r.basis()
                        + (r.sources().isEmpty() ? "" : ": " + String.join("; ", r.sources())) + ")"));
    }
}
