package org.washwright.explain.replay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Design;
import org.washwright.explain.replay.Step.Added;
import org.washwright.explain.replay.Step.Kind;
import org.washwright.explain.replay.Step.Read;
import org.washwright.quantity.Quantities;

/** What follows for a line that stands: windows, figures, points. */
final class ResultSteps {

    private static final int DIGITS = 3;

    private final ToldAnswer index;
    private final Answer.Candidate candidate;

    ResultSteps(ToldAnswer index, Answer.Candidate candidate) {
        this.index = index;
        this.candidate = candidate;
    }

    /** Every stage with its allowed ranges, and who narrowed them. */
    Optional<Step> windows() {
        List<Added> adds = new ArrayList<>();
        Map<String, Read> reads = new LinkedHashMap<>();
        int place = 0;
        for (Answer.Stage s : candidate.stages()) {
            place++;
            for (Answer.Window w : s.windows()) {
                adds.add(new Added("window", "", place + " " + s.name() + ", " + w.name(), w.text()));
                w.firings().forEach(n -> cite(n, w.name() + " of " + s.name(), reads));
                w.undecided().forEach(n -> cite(n, "may narrow " + w.name() + " of " + s.name(), reads));
            }
        }
        return adds.isEmpty()
                ? Optional.empty()
                : Optional.of(step(
                        "windows/",
                        Kind.WINDOWS,
                        "Windows of " + candidate.name() + " are closed",
                        "Each is what the process allows and every limit leaves.",
                        reads,
                        adds));
    }

    /** Every figure of the line and its stages, and the facts they were computed from. */
    Optional<Step> figures() {
        if (candidate.design().isEmpty()) {
            return Optional.empty();
        }
        List<Added> adds = new ArrayList<>();
        Map<String, Read> reads = new LinkedHashMap<>();
        for (Design.Figure f : candidate.design().get().figures()) {
            String stage = f.stage() == 0
                    ? ""
                    : ", stage " + f.stage() + " "
                            + candidate.stages().get(f.stage() - 1).name();
            adds.add(new Added("figure", "", index.figureName(f.figure()) + stage, f.text()));
            f.inputs().stream()
                    .filter(i -> index.attribute(i).isPresent() || index.fact(i).isPresent())
                    .forEach(i -> reads.putIfAbsent(i, index.read(i)));
        }
        return Optional.of(step(
                "figures/",
                Kind.FIGURES,
                Titles.capital(candidate.name()) + " is sized and costed",
                Titles.count(adds.size(), "figure", "figures")
                        + ", from the line, the task and the edition's assumptions.",
                reads,
                adds));
    }

    /** Points of every area, and what moved them. */
    Step points() {
        List<Added> adds = new ArrayList<>();
        Map<String, Read> reads = new LinkedHashMap<>();
        for (Answer.Area area : candidate.areas()) {
            adds.add(new Added("points", "", area.name(), span(area.low(), area.high())));
            for (Answer.Criterion c : area.criteria()) {
                c.points().stream().filter(Answer.Point::counted).forEach(p -> moved(p, c, reads));
            }
        }
        adds.add(new Added("points", "", "overall", span(candidate.low(), candidate.high())));
        return step(
                "points/",
                Kind.POINTS,
                Titles.capital(candidate.name()) + " is given points",
                "Of what speaks for or against it, the strongest of each criterion counts.",
                reads,
                adds);
    }

    private void moved(Answer.Point p, Answer.Criterion c, Map<String, Read> reads) {
        String by = (p.points() < 0 ? "−" : "+") + Quantities.number(Math.abs(p.points()), DIGITS) + " for " + c.name();
        if (p.firing() > 0) {
            cite(p.firing(), by, reads);
        } else if (index.attribute(p.figure()).isPresent()) {
            reads.putIfAbsent(p.figure() + by, index.read(p.figure()));
        } else {
            String ref = "figures/" + candidate.process();
            String[] figure = p.figure().split("/");
            String name = figure.length > 1 ? index.figureName(figure[1]) : p.text();
            reads.putIfAbsent(ref + p.figure() + by, new Read(ref, name, by, true));
        }
    }

    private static String span(double low, double high) {
        String from = Quantities.number(Math.floor(low + 0.5), DIGITS);
        String to = Quantities.number(Math.floor(high + 0.5), DIGITS);
        return from.equals(to) ? from + " points" : from + " to " + to + " points";
    }

    private void cite(int n, String value, Map<String, Read> reads) {
        Read read = index.read(index.firing(n), value);
        reads.putIfAbsent(read.ref() + value, read);
    }

    private Step step(String id, Kind kind, String title, String says, Map<String, Read> reads, List<Added> adds) {
        return LineSteps.step(
                id + candidate.process(), kind, candidate.process(), title, says, List.copyOf(reads.values()), adds);
    }
}
