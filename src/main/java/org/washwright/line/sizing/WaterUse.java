package org.washwright.line.sizing;

import static org.washwright.line.sizing.FigureGroup.WATER;
import static org.washwright.line.sizing.FigureKind.by;
import static org.washwright.line.sizing.FigureKind.defined;

import java.util.ArrayList;
import java.util.List;
import org.washwright.quantity.Dimension;
import org.washwright.science.Estimate;
import org.washwright.science.EvaporationFromWater;
import org.washwright.science.HumidAir;
import org.washwright.science.TankSurfaceLoss;
import org.washwright.science.WaterVapourPressure;
import org.washwright.task.Value;

/** Water of every bath: what evaporates, what has to come in and what runs off. */
final class WaterUse {

    private static final double WATER_DENSITY = 1000;
    private static final double AIR_PRESSURE = 101325;
    private static final Cell NOTHING = new Cell("", Value.number(0));

    static final FigureKind EVAPORATION = by(
            "evaporation",
            "water that evaporates from the bath",
            WATER,
            Dimension.VOLUME_RATE,
            "L/h",
            "evaporative loss of heat at the bath's temperature ÷ heat of evaporation × open surface",
            "table of heat losses of open water tanks, still air at 15.6 °C (engineeringtoolbox)",
            "rough estimate in still air, 32 to 99 °C; a draught more than doubles it");
    static final FigureKind MOVED = by(
            "evaporation-moved",
            "the same in moving air",
            WATER,
            Dimension.VOLUME_RATE,
            "L/h",
            "(25 + 19 v) × open surface × (xs − x), v air over the bath in m/s, x humidity ratios",
            "evaporation from water surfaces, as printed by several handbooks of building services",
            "to about 70 °C; another model, agrees within 30 %");
    static final FigureKind MAKE_UP = defined(
            "make-up",
            "water to keep the level",
            WATER,
            Dimension.VOLUME_RATE,
            "L/h",
            "water that evaporates + liquid carried out − liquid carried in");
    static final FigureKind OVERFLOW = defined(
            "overflow",
            "water that runs off",
            WATER,
            Dimension.VOLUME_RATE,
            "L/h",
            "fresh water + liquid carried in − liquid carried out − water that evaporates");
    static final FigureKind FRESH =
            defined("fresh-water", "fresh water at work", WATER, Dimension.VOLUME_RATE, "L/h", "sum over the stages");
    static final FigureKind RUN_OFF =
            defined("run-off", "rinse water that runs off", WATER, Dimension.VOLUME_RATE, "L/h", "sum over the rinses");

    static final FigureKind PER_AREA = defined(
            "water-per-area",
            "fresh water of the line for each area",
            WATER,
            Dimension.VOLUME_PER_AREA,
            "L/m²",
            "fresh water at work ÷ area an hour");

    static final List<FigureKind> KINDS = List.of(EVAPORATION, MOVED, MAKE_UP, OVERFLOW, FRESH, RUN_OFF, PER_AREA);

    /**
     * Water of one bath or of all baths of a stage, at work.
     *
     * @param fresh fresh water
     * @param in carried in with the parts
     * @param evaporated to the air
     * @param out carried out with the parts
     * @param runsOff to the drain
     */
    record Bath(Station station, Cell fresh, Cell in, Cell evaporated, Cell out, Cell runsOff) {}

    private final Sheet sheet;
    private final List<Bath> wet = new ArrayList<>();
    private final Cell fresh;
    private final Cell runOff;

    WaterUse(Sheet sheet, List<Station> stations, Baths baths, Rinses rinses, DragOut dragOut) {
        this.sheet = sheet;
        Cell carriedIn = NOTHING;
        for (Station s : stations) {
            if (s.watery()) {
                bath(s, carriedIn, baths, rinses, dragOut.rate());
            }
            carriedIn = sheet.after(carriedIn, s.watery() ? dragOut.rate() : NOTHING, s.certain());
        }
        fresh = sheet.sum(FRESH, 0, all(Bath::fresh));
        runOff = sheet.sum(RUN_OFF, 0, all(Bath::runsOff));
        sheet.quotient(PER_AREA, fresh, sheet.fact("part", "areaPerHour"));
    }

    private List<Cell> all(java.util.function.Function<Bath, Cell> part) {
        return wet.stream()
                .map(b -> Sheet.perhaps(part.apply(b), b.station().certain()))
                .toList();
    }

    private void bath(Station s, Cell in, Baths baths, Rinses rinses, Cell carried) {
        int place = s.place();
        Cell surface = baths.surface(s);
        Cell number = baths.number(s);
        Cell hall = sheet.assumption("hall-temperature");
        Cell evaporated = sheet.figure(
                EVAPORATION,
                place,
                x -> x[0] <= x[1]
                        ? Estimate.of(0)
                        : TankSurfaceLoss.evaporatedMass(x[0]).then(m -> Estimate.of(m * x[2] * x[3] / WATER_DENSITY)),
                s.temperature(),
                hall,
                surface,
                number);
        sheet.figure(
                MOVED,
                place,
                x -> moved(x[0], x[1], x[2] * x[3], x[4], x[5]),
                s.temperature(),
                hall,
                surface,
                number,
                sheet.assumption("hall-humidity"),
                sheet.assumption("hall-draught"));
        Cell gone = evaporated.or(NOTHING);
        if (s.rinses()) {
            Cell flow = rinses.flow(s);
            Cell runsOff =
                    sheet.figure(OVERFLOW, place, x -> Estimate.of(x[0] + x[1] - x[2] - x[3]), flow, in, carried, gone);
            wet.add(new Bath(s, flow, in, gone, carried, runsOff));
        } else {
            Cell makeUp = sheet.figure(MAKE_UP, place, x -> Estimate.of(x[0] + x[1] - x[2]), gone, carried, in);
            wet.add(new Bath(s, makeUp, in, gone, carried, Cell.NONE));
        }
    }

    private static Estimate moved(double bath, double hall, double surface, double humidity, double draught) {
        if (bath <= hall) {
            return Estimate.of(0);
        }
        Estimate saturated = HumidAir.saturated(bath, AIR_PRESSURE);
        double vapour = WaterVapourPressure.pressure(hall).value() * humidity;
        double ratio = HumidAir.humidityRatio(vapour, AIR_PRESSURE).value();
        return saturated
                .then(xs -> EvaporationFromWater.massRate(surface, draught, xs, Math.min(xs, ratio)))
                .then(m -> Estimate.of(m / WATER_DENSITY));
    }

    /** The wet stages in order. */
    List<Bath> wet() {
        return wet;
    }

    /** Fresh water at work, first fillings not included. */
    Cell fresh() {
        return fresh;
    }

    /** Rinse water that runs off. */
    Cell runOff() {
        return runOff;
    }

    /** Water of a stage; empty for one that is not wet. */
    java.util.Optional<Bath> of(Station s) {
        return wet.stream().filter(b -> b.station().place() == s.place()).findFirst();
    }
}
