package org.washwright.pages;

import io.quarkus.qute.TemplateExtension;
import java.util.ArrayList;
import java.util.List;
import org.washwright.assessment.Answer.Criterion;
import org.washwright.assessment.Answer.Point;

/** The points of a criterion as steps from where it starts to where it ends. */
@TemplateExtension
public final class Waterfall {

    private Waterfall() {}

    /**
     * One point and the stretch it moves the criterion by; a point that is only shown moves nothing.
     *
     * @param point the point
     * @param from lower end of the stretch, 0 to 100
     * @param to upper end of the stretch, 0 to 100
     */
    public record Step(Point point, double from, double to) {

        /** Which way it moves: {@code for} or {@code against}. */
        public String way() {
            return point.points() < 0 ? "against" : "for";
        }

        /** Its standing in words; empty for a point that simply counts. */
        public String standing() {
            if (!point.counted()) {
                return "shown only, a stronger one counts";
            }
            return point.certain() ? "" : "undecided";
        }
    }

    /** The steps of a criterion: certain ones run on from each other, undecided ones reach out from where those end. */
    public static List<Step> steps(Criterion criterion) {
        double end = criterion.start();
        for (Point point : criterion.points()) {
            if (point.counted() && point.certain()) {
                end += point.points();
            }
        }
        List<Step> steps = new ArrayList<>();
        double at = criterion.start();
        for (Point point : criterion.points()) {
            double from = point.certain() ? at : end;
            double to = point.counted() ? from + point.points() : from;
            steps.add(new Step(point, Math.min(from, to), Math.max(from, to)));
            if (point.counted() && point.certain()) {
                at = to;
            }
        }
        return List.copyOf(steps);
    }
}
