package org.washwright.explain.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Answer.Candidate;
import org.washwright.explain.AnswerIndex;
import org.washwright.quantity.Quantities;

/** What an answer says of a process that may clean: its status, stages, windows, points and figures. */
final class LineThings {

    private static final int FIGURES = 3;

    private final AnswerIndex index;
    private final Answer answer;
    private final FigureThings figures;

    LineThings(AnswerIndex index) {
        this.index = index;
        this.answer = index.answer();
        this.figures = new FigureThings(index);
    }

    Optional<Thing> at(Pointer p) {
        if (p.size() < 2 || !p.is("candidates", "#") && !p.step(1).matches("[0-9]{1,6}")) {
            return Optional.empty();
        }
        Candidate c = p.in(answer.candidates(), 1);
        String base = "/candidates/" + p.step(1);
        if (p.size() == 2) {
            return Optional.of(candidate(c, base));
        }
        if (p.is("candidates", "#", "status")) {
            return Optional.of(status(c, base));
        }
        if (p.is("candidates", "#", "else")) {
            return Optional.of(Things.whatElse(index, c.process(), c.name(), p.text()));
        }
        if (p.is("candidates", "#", "conditions", "#")) {
            return Optional.of(own(c, p.in(c.conditions(), 3), "condition", p.text()));
        }
        if (p.is("candidates", "#", "cautions", "#")) {
            return Optional.of(own(c, p.in(c.cautions(), 3), "caution", p.text()));
        }
        if (p.is("candidates", "#", "stages", "#")) {
            return Optional.of(stage(c, Integer.parseInt(p.step(3)), p.in(c.stages(), 3), p.text()));
        }
        if (p.is("candidates", "#", "stages", "#", "windows", "#")) {
            Answer.Stage stage = p.in(c.stages(), 3);
            return Optional.of(window(c, stage, p.in(stage.windows(), 5), p.text()));
        }
        return p.step(2).equals("areas") ? points(c, p) : figures.at(c, p);
    }

    private Thing candidate(Candidate c, String base) {
        List<String> on = new ArrayList<>(List.of(base + "/status"));
        places(base + "/stages", c.stages().size(), on);
        places(base + "/areas", c.areas().size(), on);
        places(base + "/cautions", c.cautions().size(), on);
        c.design().ifPresent(d -> {
            places(base + "/design/figures", d.figures().size(), on);
            places(base + "/design/proofs", d.proofs().size(), on);
        });
        on.add(base + Things.ELSE);
        String text =
                Why.capital(c.name()) + " is " + c.status() + ", with " + span(c.low(), c.high()) + " of 100 points.";
        return new Thing("process/" + c.process(), Kind.SAID, text, "process", base, on);
    }

    private static void places(String list, int size, List<String> on) {
        for (int i = 0; i < size; i++) {
            on.add(list + "/" + i);
        }
    }

    private Thing status(Candidate c, String base) {
        List<String> on = new ArrayList<>();
        places(base + "/conditions", c.conditions().size(), on);
        places(base + "/stages", c.stages().size(), on);
        String text = c.conditions().isEmpty()
                ? Why.capital(c.name()) + " is recommended: no rule rules it out, and its line can be composed."
                : Why.capital(c.name()) + " is conditional: it hangs on what is not known.";
        return new Thing("status/" + c.process(), Kind.SAID, text, "status", base + "/status", on);
    }

    private Thing own(Candidate c, Answer.Sentence sentence, String what, String at) {
        Thing said = Things.sentence(index, sentence, what, at);
        return new Thing(
                c.process() + "/" + said.id(), said.kind(), said.text(), what + " for " + c.name(), at, said.on());
    }

    private Thing stage(Candidate c, int place, Answer.Stage s, String at) {
        List<String> on = new ArrayList<>(said(c, s.firings(), "require"));
        places(at + "/windows", s.windows().size(), on);
        String detail = s.main()
                ? "the process itself"
                : s.certain() ? "placed by rules" : "would be placed by rules that are not decided";
        return new Thing(
                c.process() + "/stage/" + name(c, place),
                Kind.STAGE,
                "Stage " + (place + 1) + " of " + c.name() + ": " + s.name(),
                detail,
                at,
                on);
    }

    /** A stage by its term; one that stands twice in a line by its turn too. */
    static String name(Candidate c, int place) {
        String id = c.stages().get(place).stage();
        long turn = c.stages().subList(0, place).stream()
                .filter(s -> s.stage().equals(id))
                .count();
        return turn == 0 ? id : id + "#" + (turn + 1);
    }

    private Thing window(Candidate c, Answer.Stage stage, Answer.Window w, String at) {
        List<String> on = new ArrayList<>(said(c, w.firings(), "limit"));
        on.addAll(said(c, w.undecided(), "limit"));
        int place = c.stages().indexOf(stage);
        String detail =
                w.firings().isEmpty() ? "the range of the stage itself, from the catalogue" : "narrowed by rules";
        return new Thing(
                c.process() + "/window/" + name(c, place) + "/" + w.parameter(),
                on.isEmpty() ? Kind.CATALOGUE : Kind.WINDOW,
                Why.capital(w.name()) + " of " + stage.name() + ": " + w.text(),
                detail + (w.undecided().isEmpty() ? "" : "; open rules may narrow it further"),
                at,
                on);
    }

    private Optional<Thing> points(Candidate c, Pointer p) {
        if (p.is("candidates", "#", "areas", "#")) {
            Answer.Area a = p.in(c.areas(), 3);
            List<String> on = new ArrayList<>();
            places(p.text() + "/criteria", a.criteria().size(), on);
            String text = a.name() + ": " + span(a.low(), a.high()) + " points";
            String detail = on.isEmpty() ? "nothing moved this area" : "from its criteria";
            return Optional.of(new Thing(
                    c.process() + "/area/" + a.area(),
                    on.isEmpty() ? Kind.GRADING : Kind.POINTS,
                    text,
                    detail + ", weight " + Quantities.number(a.weight(), FIGURES),
                    p.text(),
                    on));
        }
        if (p.is("candidates", "#", "areas", "#", "criteria", "#")) {
            Answer.Criterion k = p.in(p.in(c.areas(), 3).criteria(), 5);
            List<String> on = new ArrayList<>();
            places(p.text() + "/points", k.points().size(), on);
            return Optional.of(new Thing(
                    c.process() + "/criterion/" + k.criterion(),
                    on.isEmpty() ? Kind.GRADING : Kind.POINTS,
                    k.name() + ": " + span(k.low(), k.high()) + " points",
                    "starts at " + Quantities.number(k.start(), FIGURES) + " by the rulebook's grading",
                    p.text(),
                    on));
        }
        if (p.is("candidates", "#", "areas", "#", "criteria", "#", "points", "#")) {
            Answer.Criterion k = p.in(p.in(c.areas(), 3).criteria(), 5);
            return Optional.of(point(c, k, p.in(k.points(), 7), p.text()));
        }
        return Optional.empty();
    }

    private Thing point(Candidate c, Answer.Criterion k, Answer.Point x, String at) {
        boolean ofRule = x.firing() > 0;
        List<String> on = ofRule ? List.of(index.firingAt(x.firing())) : figures.of(c, x.figure());
        String by = ofRule ? GroundThings.identity(index.firing(x.firing())) : x.figure();
        String way = (x.points() < 0 ? "against" : "for")
                + (x.counted() ? "" : ", shown only because a stronger one counts")
                + (x.certain() ? "" : ", not decided");
        return new Thing(c.process() + "/point/" + k.criterion() + "(" + by + ")", Kind.POINTS, x.text(), way, at, on);
    }

    /** What firings say of the process by a verb. */
    private List<String> said(Candidate c, List<Integer> numbers, String verb) {
        return numbers.stream()
                .flatMap(n -> index.findingsAt(n, c.process(), f -> f.verb().equals(verb)).stream())
                .toList();
    }

    private List<String> firings(List<Integer> numbers) {
        return numbers.stream().map(index::firingAt).toList();
    }

    private static String span(double low, double high) {
        String from = Quantities.number(Math.rint(low), FIGURES);
        String to = Quantities.number(Math.rint(high), FIGURES);
        return from.equals(to) ? from : from + " to " + to;
    }
}
