package org.washwright.explain.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Answer.Candidate;
import org.washwright.assessment.Design;
import org.washwright.explain.AnswerIndex;

/** What an answer says of the design of a line: its figures, each with what it was computed from, and how cleanliness is proven. */
final class FigureThings {

    private final AnswerIndex index;
    private final Answer answer;

    FigureThings(AnswerIndex index) {
        this.index = index;
        this.answer = index.answer();
    }

    Optional<Thing> at(Candidate c, Pointer p) {
        if (p.is("candidates", "#", "design", "figures", "#") && c.design().isPresent()) {
            return Optional.of(figure(c, p.in(c.design().get().figures(), 4), p.text()));
        }
        if (p.is("candidates", "#", "design", "proofs", "#") && c.design().isPresent()) {
            Design.Proof proof = p.in(c.design().get().proofs(), 4);
            List<String> on = new ArrayList<>(
                    proof.firings().stream().map(index::firingAt).toList());
            index.at(proof.reference()).ifPresent(on::add);
            String text = "Prove " + proof.sees() + " by " + proof.name() + ": " + proof.acceptance();
            return Optional.of(new Thing(
                    c.process() + "/proof/" + proof.method(), Kind.SAID, text, proof.sampling(), p.text(), on));
        }
        return Optional.empty();
    }

    private Thing figure(Candidate c, Design.Figure f, String at) {
        Design.Kind kind = index.kind(f.figure()).orElseThrow();
        List<String> on = new ArrayList<>();
        f.inputs().forEach(ref -> on.addAll(input(c, ref)));
        String where =
                f.stage() == 0 ? "" : " of " + c.stages().get(f.stage() - 1).name();
        String warned = f.warnings().isEmpty() ? "" : "; mind: " + String.join("; ", f.warnings());
        return new Thing(
                c.process() + "/figure/" + f.figure() + (f.stage() == 0 ? "" : "/" + LineThings.name(c, f.stage() - 1)),
                on.isEmpty() ? Kind.FORMULA : Kind.FIGURE,
                Why.capital(kind.label()) + where + ": " + f.text(),
                kind.formula() + (kind.source().isEmpty() ? "" : "; " + kind.source()) + warned,
                at,
                on);
    }

    private List<String> input(Candidate c, String ref) {
        String[] parts = ref.split("/");
        if (parts[0].equals("figure")) {
            return figureAt(c, parts[1], Integer.parseInt(parts[2]));
        }
        if (parts[0].equals("window")) {
            int stage = Integer.parseInt(parts[1]) - 1;
            List<Answer.Window> windows = c.stages().get(stage).windows();
            for (int i = 0; i < windows.size(); i++) {
                if (windows.get(i).parameter().equals(parts[2])) {
                    return List.of(base(c) + "/stages/" + stage + "/windows/" + i);
                }
            }
            return List.of();
        }
        return index.inputAt(ref).or(() -> index.at(ref)).stream().toList();
    }

    /** Where a figure that set points stands: an attribute of a fact, or a figure of the line. */
    List<String> of(Candidate c, String ref) {
        String[] parts = ref.split("/");
        if (!parts[0].equals("figure")) {
            return index.at(ref).stream().toList();
        }
        return figureAt(c, parts[1], parts.length > 2 ? Integer.parseInt(parts[2]) : 0);
    }

    private List<String> figureAt(Candidate c, String figure, int stage) {
        List<Design.Figure> all = c.design().map(Design::figures).orElse(List.of());
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).figure().equals(figure) && all.get(i).stage() == stage) {
                return List.of(base(c) + "/design/figures/" + i);
            }
        }
        return List.of();
    }

    private String base(Candidate c) {
        return "/candidates/" + answer.candidates().indexOf(c);
    }
}
