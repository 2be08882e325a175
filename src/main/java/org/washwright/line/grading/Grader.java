package org.washwright.line.grading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.washwright.engine.Fact;
import org.washwright.engine.Firing;
import org.washwright.line.Evidence;
import org.washwright.line.sizing.Sized;
import org.washwright.quantity.Span;
import org.washwright.rule.Effect;
import org.washwright.rule.Grading;
import org.washwright.task.Value;

/**
 * Turns findings and figures into points. Of each criterion only the strongest for and the strongest against count; what is
 * undecided makes a range from the worst to the best.
 */
public final class Grader {

    private final Grading grading;
    private final Map<String, Double> weights;

    /**
     * A grader.
     *
     * @param weights weight of each area by id; all five are there
     */
    public Grader(Grading grading, Map<String, Double> weights) {
        this.grading = grading;
        this.weights = weights;
    }

    /** Points of a process. */
    public record Grade(Span total, List<AreaGrade> areas) {}

    /** Points of one area. */
    public record AreaGrade(Grading.Area area, double weight, Span points, List<CriterionGrade> criteria) {}

    /**
     * Points of one criterion.
     *
     * @param start where it starts
     * @param figure reference of the attribute or figure that set the start; empty when none did
     * @param marks what moved it
     */
    public record CriterionGrade(
            Grading.Criterion criterion, Span start, String figure, Span points, List<Mark> marks) {}

    /** One thing that moved a criterion; {@code counted} is false for those that a stronger one covers. */
    public record Mark(Evidence<Effect.Score> evidence, double points, boolean counted) {}

    /** Grades a process by all firings that concern it and by the figures of its line. */
    public Grade grade(String process, Fact processFact, List<Firing> firings, Sized sized) {
        List<Evidence<Effect.Score>> scores = Evidence.about(process, firings, Effect.Score.class);
        List<AreaGrade> areas = new ArrayList<>();
        for (Grading.Area area : grading.areas()) {
            List<CriterionGrade> criteria = area.criteria().stream()
                    .map(c -> criterion(
                            c,
                            processFact,
                            sized,
                            scores.stream()
                                    .filter(s -> s.effect().criterion().equals(c.id()))
                                    .toList()))
                    .toList();
            Span points = mean(
                    criteria.stream().map(c -> c.criterion().weight()).toList(),
                    criteria.stream().map(CriterionGrade::points).toList());
            areas.add(new AreaGrade(area, weights.get(area.id()), points, criteria));
        }
        return new Grade(
                mean(
                        areas.stream().map(AreaGrade::weight).toList(),
                        areas.stream().map(AreaGrade::points).toList()),
                areas);
    }

    private CriterionGrade criterion(
            Grading.Criterion c, Fact process, Sized sized, List<Evidence<Effect.Score>> scores) {
        Span start = Span.of(c.start());
        String figure = "";
        if (c.figure().isPresent()) {
            Grading.Figure over = c.figure().get();
            Value value = over.field()
                    .map(process::value)
                    .orElseGet(() -> sized.ofLine(over.line()).orElse(Value.NOT_APPLICABLE));
            if (!(value instanceof Value.NotApplicable)) {
                start = curve(over, value);
                figure = over.field().map(process::ref).orElse("figure/" + over.line() + "/0");
            }
        }
        double sureFor = strongest(scores, true, true);
        double sureAgainst = strongest(scores, false, true);
        double mayFor = Math.max(sureFor, strongest(scores, true, false));
        double mayAgainst = Math.max(sureAgainst, strongest(scores, false, false));
        Span points = new Span(clamp(start.low() + sureFor - mayAgainst), clamp(start.high() + mayFor - sureAgainst));
        return new CriterionGrade(c, start, figure, points, marks(scores, sureFor, sureAgainst));
    }

    private List<Mark> marks(List<Evidence<Effect.Score>> scores, double sureFor, double sureAgainst) {
        List<Mark> marks = new ArrayList<>();
        List<String> taken = new ArrayList<>();
        List<Evidence<Effect.Score>> strongestFirst = scores.stream()
                .sorted(Comparator.comparingInt(
                                (Evidence<Effect.Score> s) -> -s.effect().points())
                        .thenComparing(s -> !s.certain())
                        .thenComparingInt(Evidence::n))
                .toList();
        for (Evidence<Effect.Score> s : strongestFirst) {
            double size = grading.steps().get(s.effect().points());
            boolean support = s.effect().support();
            boolean matters = s.certain() || size > (support ? sureFor : sureAgainst);
            String side = support + " " + s.certain();
            boolean counted = matters && !taken.contains(side);
            if (counted) {
                taken.add(side);
            }
            marks.add(new Mark(s, support ? size : -size, counted));
        }
        return marks;
    }

    private double strongest(List<Evidence<Effect.Score>> scores, boolean support, boolean certain) {
        return scores.stream()
                .filter(s -> s.effect().support() == support && s.certain() == certain)
                .mapToDouble(s -> grading.steps().get(s.effect().points()))
                .max()
                .orElse(0);
    }

    private static Span curve(Grading.Figure figure, Value value) {
        if (!(value instanceof Value.Number n)) {
            double low = figure.curve().stream()
                    .mapToDouble(Grading.Breakpoint::points)
                    .min()
                    .orElse(0);
            double high = figure.curve().stream()
                    .mapToDouble(Grading.Breakpoint::points)
                    .max()
                    .orElse(100);
            return new Span(low, high);
        }
        Span out = Span.of(Grading.points(figure, n.span().low()))
                .hull(Span.of(Grading.points(figure, n.span().high())));
        for (Grading.Breakpoint b : figure.curve()) {
            if (n.span().low() < b.si() && b.si() < n.span().high()) {
                out = out.hull(Span.of(b.points()));
            }
        }
        return out;
    }

    private static Span mean(List<Double> weights, List<Span> spans) {
        double sum = 0;
        double low = 0;
        double high = 0;
        for (int i = 0; i < spans.size(); i++) {
            sum += weights.get(i);
            low += weights.get(i) * spans.get(i).low();
            high += weights.get(i) * spans.get(i).high();
        }
        return sum == 0 ? Span.of(0) : new Span(low / sum, Math.max(low / sum, high / sum));
    }

    private static double clamp(double points) {
        return Math.max(0, Math.min(100, points));
    }
}
