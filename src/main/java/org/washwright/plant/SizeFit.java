package org.washwright.plant;

import java.util.List;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;
import org.washwright.quantity.Span;
import org.washwright.task.Value;

/** Holds one part against the longest part and the mass that the plant takes. */
final class SizeFit {

    private static final int FIGURES = 3;

    private final Grounds grounds;

    SizeFit(Grounds grounds) {
        this.grounds = grounds;
    }

    void judge(Plant plant, PartFacts part) {
        judge("length", part.length(), "longest part that the plant takes", plant.largestPart(), Dimension.LENGTH);
        judge("mass", part.mass(), "mass that a basket takes", plant.basket().mass(), Dimension.MASS);
    }

    private void judge(String what, Value part, String bound, Value limit, Dimension dimension) {
        if (part instanceof Value.NotApplicable || limit instanceof Value.NotApplicable) {
            return;
        }
        if (!(part instanceof Value.Number p)) {
            grounds.condition(
                    "The " + what + " of a part is not known"
                            + (limit instanceof Value.Number l
                                    ? "; the " + bound + " is " + text(l.span(), dimension) + "."
                                    : ", nor the " + bound + "."),
                    List.of());
        } else if (!(limit instanceof Value.Number l)) {
            grounds.condition(
                    "The " + bound + " is not known; a part has " + text(p.span(), dimension) + ".", List.of());
        } else if (p.span().high() > l.span().low()) {
            grounds.blockIf(
                    p.span().low() > l.span().high(),
                    "The " + what + " of a part is " + text(p.span(), dimension) + "; the " + bound + " is "
                            + text(l.span(), dimension) + ".",
                    List.of());
        }
    }

    /** Parts that plants ask about are weighed in kilograms. */
    private static String text(Span span, Dimension dimension) {
        if (dimension != Dimension.MASS || span.low() < 1 || Double.isInfinite(span.high())) {
            return Quantities.write(span, dimension, FIGURES);
        }
        String low = Quantities.number(span.low(), FIGURES);
        return (span.isPoint() ? low : low + " to " + Quantities.number(span.high(), FIGURES)) + " kg";
    }
}
