package org.washwright.assessment;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.washwright.line.ProcessLine;
import org.washwright.line.grading.Grader;
import org.washwright.line.sizing.Sized;
import org.washwright.rule.Edition;

/** Shows processes that stand, with their points and where each comes from. */
final class CandidateCards {

    private final StageCards stages;
    private final Sentences sentences;
    private final DesignCards designs;
    private final Set<String> figures;

    /**
     * Cards.
     *
     * @param figures takes the references of attributes that set points
     */
    CandidateCards(Edition edition, Sentences sentences, DesignCards designs, Set<String> figures) {
        this.stages = new StageCards(edition.catalogue());
        this.sentences = sentences;
        this.designs = designs;
        this.figures = figures;
    }

    Answer.Candidate of(ProcessLine line, Grader.Grade grade, Sized sized) {
        return new Answer.Candidate(
                line.process().id(),
                line.process().term().name(),
                line.status().word(),
                grade.total().low(),
                grade.total().high(),
                grade.areas().stream().map(this::area).toList(),
                stages.of(line),
                Sentences.of(line.conditions()),
                sentences.cautions(line.process().id()),
                design(line, sized));
    }

    private Optional<Design> design(ProcessLine line, Sized sized) {
        return sized.figures().isEmpty() ? Optional.empty() : Optional.of(designs.of(line, sized));
    }

    private Answer.Area area(Grader.AreaGrade a) {
        return new Answer.Area(
                a.area().id(),
                a.area().name(),
                a.weight(),
                a.points().low(),
                a.points().high(),
                a.criteria().stream().map(this::criterion).toList());
    }

    private Answer.Criterion criterion(Grader.CriterionGrade c) {
        if (!c.figure().isEmpty() && !c.figure().startsWith("figure/")) {
            figures.add(c.figure());
        }
        List<Answer.Point> points = new java.util.ArrayList<>();
        double start = (c.start().low() + c.start().high()) / 2;
        if (!c.figure().isEmpty()) {
            points.add(new Answer.Point(
                    "Starts from a figure instead of "
                            + org.washwright.quantity.Quantities.number(
                                    c.criterion().start(), 3) + " points.",
                    start - c.criterion().start(),
                    true,
                    c.start().isPoint(),
                    0,
                    c.figure()));
        }
        c.marks()
                .forEach(m -> points.add(new Answer.Point(
                        m.evidence().finding().text(),
                        m.points(),
                        m.counted(),
                        m.evidence().certain(),
                        m.evidence().n(),
                        "")));
        return new Answer.Criterion(
                c.criterion().id(),
                c.criterion().name(),
                c.criterion().weight(),
                c.criterion().start(),
                c.points().low(),
                c.points().high(),
                points);
    }
}
