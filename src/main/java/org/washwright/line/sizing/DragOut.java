package org.washwright.line.sizing;

import static org.washwright.line.sizing.FigureGroup.WATER;
import static org.washwright.line.sizing.FigureKind.by;
import static org.washwright.line.sizing.FigureKind.defined;

import java.util.ArrayList;
import java.util.List;
import org.washwright.catalogue.Term;
import org.washwright.quantity.Dimension;
import org.washwright.science.DripCurve;
import org.washwright.science.Estimate;

/** Liquid that the parts carry out of a bath: by charging or shape, and by how long they drain. */
final class DragOut {

    /** Drain time for which films on shapes are printed, in seconds [common practice, no source]. */
    private static final double PRINTED_DRAIN = 10;

    static final FigureKind FILM = by(
            "drag-out-film",
            "liquid carried out on each area",
            WATER,
            Dimension.VOLUME_PER_AREA,
            "L/m²",
            "film of the charging or shape × what is left after the drain time ÷ what is left after 10 s",
            "Metal Finishing Guidebook 2011-12, pretreatment table; drip curve of the NCMS rinsing manual, appendix D",
            "parts that drain; trapped liquid comes on top");
    static final FigureKind RATE = defined(
            "drag-out", "liquid carried out", WATER, Dimension.VOLUME_RATE, "L/h", "film on each area × area an hour");

    static final List<FigureKind> KINDS = List.of(FILM, RATE);

    private final Cell film;
    private final Cell rate;

    DragOut(Sheet sheet) {
        Cell byShape = printed(sheet, "part", "shape", sheet.assumption("drag-out"));
        Cell printed = printed(sheet, "lot", "charging", byShape);
        film = sheet.figure(
                FILM,
                0,
                x -> drained(x[0], x[1], x[2], x[3]),
                printed,
                sheet.assumption("drain-time"),
                sheet.assumption("drip-rate"),
                sheet.assumption("drip-share"));
        rate = sheet.figure(RATE, 0, x -> Estimate.of(x[0] * x[1]), film, sheet.fact("part", "areaPerHour"));
    }

    /** The drip curve tells what a longer or shorter drain makes of the film; the printed film is that after ten seconds. */
    private static Estimate drained(double printed, double time, double dripRate, double dripShare) {
        Estimate now = DripCurve.retained(1, dripShare, dripRate, time);
        Estimate then = DripCurve.retained(1, dripShare, dripRate, PRINTED_DRAIN);
        return now.withValue(printed * now.value() / then.value());
    }

    /** The film of every term that the attribute may name; of one that says none, another. */
    private static Cell printed(Sheet sheet, String fact, String kind, Cell otherwise) {
        List<Cell> films = new ArrayList<>();
        for (Term term : sheet.possible(sheet.fact(fact, kind), kind)) {
            films.add(sheet.property(term, "dragOut").or(otherwise));
        }
        return films.isEmpty() ? otherwise : sheet.hull(films);
    }

    Cell film() {
        return film;
    }

    Cell rate() {
        return rate;
    }
}
