package org.washwright.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Design;

/** Writes the figures, balances and plans of the first line as plain text. */
final class DesignText {

    private static final List<String> KEY =
            List.of("cost-per-part", "investment", "power-installed", "fresh-water", "exhaust-air", "cycle");

    private final Answer answer;
    private final PrintWriter out;
    private final Map<String, Design.Kind> kinds = new TreeMap<>();

    DesignText(Answer answer, PrintWriter out) {
        this.answer = answer;
        this.out = out;
        answer.figures().forEach(k -> kinds.put(k.id(), k));
    }

    /** The figures that one looks at first, in one line; nothing when the line was not sized. */
    static List<String> key(Answer.Candidate candidate, Answer answer) {
        List<String> parts = new ArrayList<>();
        for (String id : KEY) {
            candidate.design().stream()
                    .flatMap(d -> d.figures().stream())
                    .filter(f -> f.stage() == 0 && f.figure().equals(id))
                    .forEach(f -> parts.add(label(answer, id) + " " + f.text()));
        }
        return parts.isEmpty() ? List.of() : List.of(String.join("; ", parts));
    }

    private static String label(Answer answer, String id) {
        return answer.figures().stream()
                .filter(k -> k.id().equals(id))
                .map(Design.Kind::label)
                .findFirst()
                .orElse(id);
    }

    /** Everything about the first line. */
    void write() {
        if (answer.candidates().isEmpty()) {
            return;
        }
        Answer.Candidate first = answer.candidates().get(0);
        out.println();
        out.println("Figures of " + first.name());
        if (first.design().isEmpty()) {
            out.println("  The edition says nothing to size by.");
            return;
        }
        Design design = first.design().get();
        String group = "";
        for (Design.Figure f : design.figures()) {
            Design.Kind kind = kinds.get(f.figure());
            if (!kind.group().equals(group)) {
                group = kind.group();
                out.println("  " + group);
            }
            String stage = f.stage() == 0 ? "" : " of stage " + f.stage();
            out.println("    " + kind.label() + stage + " = " + f.text() + "  (" + kind.formula() + "; " + kind.source()
                    + ")");
            if (!f.inputs().isEmpty()) {
                out.println("      from " + String.join(", ", f.inputs()));
            }
            f.warnings().forEach(w -> out.println("      mind: " + w));
        }
        design.balances().forEach(this::balance);
        out.println("  keep the baths in hand");
        design.control()
                .forEach(c -> out.println("    stage " + c.stage() + ": " + c.measure() + " " + c.limits() + ", "
                        + c.every() + ". " + c.how()));
        out.println("  prove it clean");
        design.proofs()
                .forEach(p ->
                        out.println("    " + p.name() + ": " + p.sees() + " " + p.acceptance() + "; " + p.sampling()
                                + ", " + p.frequency() + (p.limit().isEmpty() ? "" : "; " + p.limit())
                                + (p.enough() ? "" : "; sees too little")));
        out.println("  taken for granted");
        answer.inputs().stream()
                .filter(i -> i.ref().startsWith("assumption/"))
                .forEach(i -> out.println("    " + i.ref().substring("assumption/".length()) + " = " + i.value() + " ("
                        + i.label() + "; " + i.source() + ")" + (i.changed() ? ", changed" : "")));
    }

    private void balance(Design.Balance b) {
        out.println("  " + b.name() + " in " + b.unit());
        b.in().forEach(f -> out.println("    in  " + flow(f)));
        b.out().forEach(f -> out.println("    out " + flow(f)));
    }

    private static String flow(Design.Flow f) {
        return org.washwright.quantity.Quantities.number(f.amount(), 3) + "  " + f.name()
                + (f.stage() == 0 ? "" : ", stage " + f.stage());
    }
}
