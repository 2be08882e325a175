package org.washwright.line.sizing;

import static org.washwright.line.sizing.FigureGroup.THROUGHPUT;
import static org.washwright.line.sizing.FigureKind.defined;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.quantity.Dimension;
import org.washwright.science.Estimate;

/** Loads, takt, and how many stations stand side by side so that the takt is kept. */
final class Throughput {

    static final FigureKind PARTS = defined(
            "parts-per-load",
            "parts in a load",
            THROUGHPUT,
            Dimension.RATIO,
            "",
            "as many as pass neither the mass nor the area that a basket takes, nor what the charging lets through at once; at"
                    + " least one");
    static final FigureKind MASS = defined(
            "load-mass", "mass of a load", THROUGHPUT, Dimension.MASS, "kg", "parts in a load × mass of one part");
    static final FigureKind VOLUME = defined(
            "load-volume",
            "room that a load takes",
            THROUGHPUT,
            Dimension.VOLUME,
            "L",
            "volume of a basket; for a part that is larger, the box around it: share of the cube of its largest dimension");
    static final FigureKind LOADS = defined(
            "loads",
            "loads an hour",
            THROUGHPUT,
            Dimension.RATE,
            "1/h",
            "parts an hour ÷ parts in a load ÷ availability");
    static final FigureKind TAKT =
            defined("takt", "takt of a load", THROUGHPUT, Dimension.TIME, "min", "1 ÷ loads an hour");
    static final FigureKind OCCUPIED = defined(
            "occupied",
            "time that a load holds a station",
            THROUGHPUT,
            Dimension.TIME,
            "min",
            "times of the stages in it, for each part where it takes them one by one, + transfer");
    static final FigureKind PARALLEL = defined(
            "parallel",
            "stations side by side",
            THROUGHPUT,
            Dimension.RATIO,
            "",
            "time that a load holds a station ÷ takt, rounded up");
    static final FigureKind CYCLE = defined(
            "cycle", "time of a load through the line", THROUGHPUT, Dimension.TIME, "min", "sum over its stations");
    static final FigureKind BASKETS = defined(
            "baskets",
            "baskets in circulation",
            THROUGHPUT,
            Dimension.RATIO,
            "",
            "time through the line ÷ takt, rounded up, and one being filled");

    static final List<FigureKind> KINDS = List.of(PARTS, MASS, VOLUME, LOADS, TAKT, OCCUPIED, PARALLEL, CYCLE, BASKETS);

    private final Sheet sheet;
    private final Map<Integer, Cell> parallel = new TreeMap<>();
    private final Cell parts;
    private final Cell loadMass;
    private final Cell volume;
    private final Cell loads;

    Throughput(Sheet sheet, List<Station> stations, Cell partsAtOnce) {
        this.sheet = sheet;
        Cell mass = sheet.fact("part", "mass");
        boolean batch =
                stations.stream().anyMatch(s -> s.main() && s.station("batch").isYes());
        parts = sheet.figure(
                PARTS,
                0,
                x -> partsInLoad(x[0], x[1], x[2], x[3], x[4], batch),
                sheet.assumption("basket-mass"),
                mass,
                sheet.assumption("basket-area"),
                sheet.fact("part", "wettedArea"),
                partsAtOnce);
        loadMass = sheet.figure(MASS, 0, x -> Estimate.of(x[0] * x[1]), parts, mass);
        Cell largest = sheet.fact("part", "largestDimension");
        Cell basket = sheet.assumption("basket-volume");
        volume = largest.applies()
                ? sheet.figure(
                        VOLUME,
                        0,
                        x -> Estimate.of(Math.max(x[0], x[1] * x[2] * x[2] * x[2])),
                        basket,
                        sheet.assumption("part-box"),
                        largest)
                : sheet.figure(VOLUME, 0, x -> Estimate.of(x[0]), basket);
        loads = sheet.figure(
                LOADS,
                0,
                x -> Estimate.of(x[0] / x[1] / x[2]),
                sheet.fact("part", "rate"),
                parts,
                sheet.assumption("availability"));
        Cell takt = sheet.figure(TAKT, 0, x -> Estimate.of(1 / x[0]), loads);
        Cell cycle = sheet.sum(CYCLE, 0, occupied(stations, takt));
        sheet.figure(BASKETS, 0, x -> Estimate.of(Math.ceil(x[0] / x[1]) + 1), cycle, takt);
    }

    private List<Cell> occupied(List<Station> stations, Cell takt) {
        Cell transfer = sheet.assumption("transfer-time");
        List<Cell> all = new ArrayList<>();
        for (Station s : stations) {
            if (s.inChamber()) {
                continue;
            }
            if (!s.time().applies()) {
                untimed(s);
                continue;
            }
            Cell own = s.station("eachPart").isYes() ? sheet.times(s.time(), parts) : s.time();
            List<Cell> times = new ArrayList<>(List.of(own, transfer));
            if (s.main()) {
                stations.stream()
                        .filter(Station::inChamber)
                        .forEach(in -> times.add(Sheet.perhaps(in.time(), in.certain())));
            }
            Cell occupied = sheet.sum(OCCUPIED, s.place(), times);
            all.add(Sheet.perhaps(occupied, s.certain()));
            parallel.put(
                    s.place(),
                    sheet.figure(PARALLEL, s.place(), x -> Estimate.of(Math.ceil(x[0] / x[1])), occupied, takt));
        }
        return all;
    }

    /** A stage without a time still needs its place. */
    private void untimed(Station s) {
        if (s.placed()) {
            parallel.put(
                    s.place(),
                    sheet.figure(
                            PARALLEL,
                            s.place(),
                            x -> Estimate.of(1)
                                    .warn("How long a load stays here is not stated; one station is taken")));
        }
    }

    private static Estimate partsInLoad(
            double basketMass, double partMass, double basketArea, double partArea, double atOnce, boolean batch) {
        double parts = Math.floor(Math.min(basketMass / partMass, basketArea / partArea));
        if (parts < 1) {
            return Estimate.of(1).warn("One part is more than a usual basket takes; it goes through by itself");
        }
        if (!batch) {
            return Estimate.of(Math.min(parts, atOnce));
        }
        return atOnce < parts
                ? Estimate.of(parts)
                        .warn(
                                "Parts come one by one and this process works in batches: they are set on a fixture that holds"
                                        + " as many as a basket")
                : Estimate.of(parts);
    }

    Cell parts() {
        return parts;
    }

    Cell loadMass() {
        return loadMass;
    }

    /** Room that a load takes. */
    Cell volume() {
        return volume;
    }

    Cell loads() {
        return loads;
    }

    /** Stations side by side for a stage. */
    Cell parallel(Station station) {
        return parallel.getOrDefault(station.place(), Cell.NONE);
    }
}
