package org.washwright.line.sizing;

import static org.washwright.line.sizing.FigureGroup.AIR;
import static org.washwright.line.sizing.FigureKind.by;
import static org.washwright.line.sizing.FigureKind.defined;

import java.util.ArrayList;
import java.util.List;
import org.washwright.quantity.Dimension;
import org.washwright.science.Estimate;
import org.washwright.science.RimExhaust;

/** Air drawn off over open baths and booths. */
final class AirUse {

    static final FigureKind RIM = by(
            "exhaust",
            "air drawn off",
            AIR,
            Dimension.AIR_FLOW,
            "m³/h",
            "open surface × baths × air for each area",
            "ACGIH, Industrial Ventilation, open surface tanks, 100 to 250 cfm/ft² by hazard (from memory)",
            "slots along the rim; a designer of ventilation sizes the plant");
    static final FigureKind BOOTH = defined(
            "exhaust-booth",
            "air drawn off the station",
            AIR,
            Dimension.AIR_FLOW,
            "m³/h",
            "air of one station × stations");
    static final FigureKind ALL =
            defined("exhaust-air", "exhaust air of the line", AIR, Dimension.AIR_FLOW, "m³/h", "sum over the stages");
    static final FigureKind FANS = by(
            "fans",
            "power of the fans",
            FigureGroup.POWER,
            Dimension.POWER,
            "kW",
            "exhaust air × pressure rise ÷ efficiency",
            "power of a fan, textbook",
            "");

    static final List<FigureKind> KINDS = List.of(RIM, BOOTH, ALL, FANS);

    private final Cell fans;

    AirUse(Sheet sheet, List<Station> stations, Baths baths) {
        List<Cell> flows = new ArrayList<>();
        for (Station s : stations) {
            Cell rim = sheet.figure(
                    RIM,
                    s.place(),
                    x -> RimExhaust.flow(x[0] * x[1], x[2]),
                    baths.surface(s),
                    baths.number(s),
                    s.station("exhaust"));
            Cell booth = sheet.figure(
                    BOOTH, s.place(), x -> Estimate.of(x[0] * x[1]), s.station("boothAir"), baths.number(s));
            flows.add(Sheet.perhaps(rim, s.certain()));
            flows.add(Sheet.perhaps(booth, s.certain()));
        }
        Cell all = sheet.sum(ALL, 0, flows);
        fans = sheet.figure(
                FANS,
                0,
                x -> Estimate.of(x[0] * x[1] / x[2]),
                all,
                sheet.assumption("fan-pressure"),
                sheet.assumption("fan-efficiency"));
    }

    /** Power of the fans. */
    Cell fans() {
        return fans;
    }
}
