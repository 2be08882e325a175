package org.washwright.line.sizing;

import static org.washwright.line.sizing.FigureGroup.BATHS;
import static org.washwright.line.sizing.FigureKind.defined;

import java.util.List;
import org.washwright.quantity.Dimension;
import org.washwright.science.Estimate;

/** How long a protected part stays free of rust, against how long that is wanted. */
final class Protection {

    static final FigureKind MARGIN = defined(
            "protection",
            "time that the protection lasts over the time wanted",
            BATHS,
            Dimension.RATIO,
            "",
            "time that the stage protects under cover ÷ time wanted");

    static final List<FigureKind> KINDS = List.of(MARGIN);

    private Protection() {}

    static void size(Sheet sheet, List<Station> stations) {
        for (Station s : stations) {
            sheet.figure(
                    MARGIN,
                    s.place(),
                    x -> margin(x[0] / x[1]),
                    s.own("protects"),
                    sheet.fact("demand", "corrosionProtection"));
        }
    }

    private static Estimate margin(double margin) {
        return margin >= 1
                ? Estimate.of(margin)
                : Estimate.of(margin)
                        .warn(
                                "The protection does not last as long as is wanted: take a stronger film or pack with a vapour"
                                        + " inhibitor, and try it");
    }
}
