package org.washwright.line.sizing;

import static org.washwright.line.sizing.FigureGroup.UPKEEP;
import static org.washwright.line.sizing.FigureKind.by;
import static org.washwright.line.sizing.FigureKind.defined;

import java.util.ArrayList;
import java.util.List;
import org.washwright.engine.Fact;
import org.washwright.quantity.Dimension;
import org.washwright.science.BathContamination;
import org.washwright.science.Estimate;
import org.washwright.science.OilRise;
import org.washwright.science.WaterViscosity;
import org.washwright.task.Value;

/** Oil and grease in the baths: what each takes up, how long it lasts, and what is thrown away with it. */
final class Soil {

    static final FigureKind LOAD = defined(
            "oil-load", "oil and grease that come in", UPKEEP, Dimension.MASS_RATE, "g/h", "sum over the oily soils");
    static final FigureKind TAKEN = defined(
            "oil-taken",
            "oil and grease that the bath takes up",
            UPKEEP,
            Dimension.MASS_RATE,
            "g/h",
            "what comes to it × share that one bath takes");
    static final FigureKind LIFE = by(
            "bath-life",
            "hours at work until the bath is changed",
            UPKEEP,
            Dimension.TIME,
            "h",
            "balance V dC/dt = G − q e C solved for the limit; at most the longest life of a bath",
            "contaminant balance of a mixed bath",
            "well mixed; oil that the separator can't part stays; check by measuring");
    static final FigureKind STEADY = by(
            "oil-steady",
            "oil in the bath if it were never changed",
            UPKEEP,
            Dimension.CONCENTRATION,
            "g/L",
            "G ÷ (q e), G oil taken up, q flow through the separator, e its efficiency",
            "contaminant balance of a mixed bath",
            "well mixed");
    static final FigureKind RISE = by(
            "oil-rise",
            "time for a drop of oil to rise through the bath",
            UPKEEP,
            Dimension.TIME,
            "min",
            "depth ÷ (g d² Δρ ÷ 18 µ)",
            "Stokes 1851",
            "free drops; emulsified oil hardly rises");
    static final FigureKind DUMPED = defined(
            "bath-dumped",
            "bath thrown away",
            UPKEEP,
            Dimension.VOLUME_RATE,
            "L/h",
            "volume × baths ÷ hours until the bath is changed");

    static final List<FigureKind> KINDS = List.of(LOAD, TAKEN, STEADY, LIFE, RISE, DUMPED);

    private static final Cell NOTHING = new Cell("", Value.number(0));

    /** Upkeep of one bath. */
    record Bath(Station station, Cell taken, Cell life, Cell dumped) {}

    private final Sheet sheet;
    private final List<Bath> baths = new ArrayList<>();
    private final Cell load;
    private final boolean oily;
    private Cell density = Cell.NONE;

    Soil(Sheet sheet, List<Station> stations, Baths sizes) {
        this.sheet = sheet;
        List<Cell> loads = new ArrayList<>();
        List<Cell> densities = new ArrayList<>();
        for (Fact soil : sheet.sure("soils/")) {
            Cell flag = sheet.field(soil, "kind.oily");
            if (flag.isYes()) {
                loads.add(sheet.field(soil, "load"));
                densities.add(sheet.field(soil, "kind.density"));
            } else if (flag.mayBeYes()) {
                loads.add(new Cell(flag.ref(), Value.UNKNOWN));
            }
        }
        // What else may be on the part may be oil.
        sheet.unsure("soils/")
                .forEach(s -> loads.add(new Cell(sheet.field(s, "load").ref(), Value.UNKNOWN)));
        oily = !loads.isEmpty();
        density = sheet.hull(densities);
        load = oily ? sheet.sum(LOAD, 0, loads) : NOTHING;
        Cell coming = load;
        Cell share = sheet.assumption("soil-taken");
        for (Station s : stations) {
            if (s.cleans() && s.watery()) {
                Cell taken =
                        oily ? sheet.figure(TAKEN, s.place(), x -> Estimate.of(x[0] * x[1]), coming, share) : NOTHING;
                coming = sheet.after(coming, oily ? rest(coming, share) : NOTHING, s.certain());
                bath(s, taken, sizes);
            }
        }
    }

    /** What one bath leaves for the next. */
    private static Cell rest(Cell coming, Cell share) {
        if (!(coming.value() instanceof Value.Number c) || !(share.value() instanceof Value.Number s)) {
            return coming;
        }
        return new Cell(
                coming.ref(),
                new Value.Number(new org.washwright.quantity.Span(
                        c.span().low() * (1 - s.span().high()),
                        c.span().high() * (1 - s.span().low()))));
    }

    private void bath(Station s, Cell taken, Baths sizes) {
        int place = s.place();
        Cell volume = sizes.volume(s);
        Cell number = sizes.number(s);
        Cell turnover = sheet.assumption("separator-turnover");
        Cell efficiency = sheet.assumption("separator-efficiency");
        Cell longest = sheet.assumption("longest-bath-life");
        if (oily) {
            sheet.figure(
                    STEADY,
                    place,
                    x -> BathContamination.steadyState(x[0], x[1] * x[2] * x[3], x[4]),
                    taken,
                    volume,
                    number,
                    turnover,
                    efficiency);
            sheet.figure(
                    RISE,
                    place,
                    x -> rise(x[0], x[1], x[2], x[3]),
                    s.station("bathDepth"),
                    sheet.assumption("oil-drop"),
                    density,
                    s.temperature());
        }
        Cell life = sheet.figure(
                LIFE,
                place,
                x -> life(x[0] * x[1], x[2], x[3], x[4], x[5], x[6]),
                volume,
                number,
                sheet.assumption("bath-oil-limit"),
                taken,
                turnover,
                efficiency,
                longest);
        Cell dumped = sheet.figure(DUMPED, place, x -> Estimate.of(x[0] * x[1] / x[2]), volume, number, life);
        baths.add(new Bath(s, taken, life, dumped));
    }

    private static Estimate life(
            double volume, double limit, double load, double turnover, double efficiency, double longest) {
        Estimate life =
                BathContamination.timeToLimitWithSideStream(volume, limit, 0, load, volume * turnover, efficiency);
        return life.withValue(Math.min(longest, life.value()));
    }

    private static Estimate rise(double depth, double drop, double density, double temperature) {
        double difference = 1000 - density;
        if (difference <= 0) {
            return Estimate.of(Double.POSITIVE_INFINITY).warn("This soil is as heavy as water and does not rise");
        }
        return WaterViscosity.dynamic(temperature)
                .then(mu -> OilRise.velocity(drop, difference, mu))
                .then(v -> Estimate.of(depth / v));
    }

    /** Oil and grease an hour; nothing when no soil is oily. */
    Cell load() {
        return load;
    }

    /** The baths that take soil up, in order. */
    List<Bath> baths() {
        return baths;
    }
}
