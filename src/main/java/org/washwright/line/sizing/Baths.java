package org.washwright.line.sizing;

import static org.washwright.line.sizing.FigureGroup.BATHS;
import static org.washwright.line.sizing.FigureKind.by;
import static org.washwright.line.sizing.FigureKind.defined;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.quantity.Dimension;
import org.washwright.science.Estimate;
import org.washwright.science.UltrasonicLoad;

/** Volume, surface and walls of each bath, and how many stand there. */
final class Baths {

    private static final double WATER_DENSITY = 1000;

    static final FigureKind VOLUME = by(
            "bath-volume",
            "volume of one bath",
            BATHS,
            Dimension.VOLUME,
            "L",
            "room of a load × litres of bath for each litre of it; with ultrasonics at least the water that the mass of"
                    + " a load asks for",
            "Metal Finishing Guidebook 2013, ultrasonic cleaning, parts at most a third of the water's mass",
            "");
    static final FigureKind NUMBER = defined(
            "baths",
            "baths or chambers",
            BATHS,
            Dimension.RATIO,
            "",
            "stations side by side × tanks one behind the other");
    static final FigureKind SURFACE = defined(
            "open-surface",
            "open surface of one bath",
            BATHS,
            Dimension.AREA,
            "m²",
            "volume ÷ depth × share of the surface that is open");
    static final FigureKind WALLS = defined(
            "walls",
            "walls and bottom of one bath",
            BATHS,
            Dimension.AREA,
            "m²",
            "4 × √(volume ÷ depth) × depth + volume ÷ depth, as of a square tank");
    static final FigureKind LIQUID = defined(
            "liquid", "liquid in all baths", BATHS, Dimension.VOLUME, "L", "sum of number × volume of one bath");

    static final List<FigureKind> KINDS = List.of(VOLUME, NUMBER, SURFACE, WALLS, LIQUID);

    private final Sheet sheet;
    private final Throughput throughput;
    private final Map<Integer, Cell> volumes = new TreeMap<>();
    private final Map<Integer, Cell> numbers = new TreeMap<>();
    private final Map<Integer, Cell> surfaces = new TreeMap<>();
    private final Map<Integer, Cell> walls = new TreeMap<>();

    /** Sizes the baths of all stations. */
    Baths(Sheet sheet, List<Station> stations, Throughput throughput, Rinses rinses) {
        this.sheet = sheet;
        this.throughput = throughput;
        stations.forEach(s -> size(s, rinses.tanks(s)));
        sheet.sum(
                LIQUID,
                0,
                stations.stream()
                        .map(s -> Sheet.perhaps(times(volume(s), number(s)), s.certain()))
                        .toList());
    }

    private void size(Station s, Cell tanks) {
        Cell parallel = throughput.parallel(s);
        if (!s.inChamber() && parallel.applies()) {
            numbers.put(
                    s.place(),
                    tanks.applies()
                            ? sheet.figure(NUMBER, s.place(), x -> Estimate.of(x[0] * x[1]), parallel, tanks)
                            : sheet.figure(NUMBER, s.place(), x -> Estimate.of(x[0]), parallel));
        }
        if (!s.hasBath()) {
            return;
        }
        Cell volume = s.technique("sound").isYes()
                ? sheet.figure(
                        VOLUME,
                        s.place(),
                        x -> withSound(x[0] * x[1], x[2], x[3]),
                        throughput.volume(),
                        s.station("bathRatio"),
                        throughput.loadMass(),
                        sheet.assumption("sound-load"))
                : sheet.figure(
                        VOLUME, s.place(), x -> Estimate.of(x[0] * x[1]), throughput.volume(), s.station("bathRatio"));
        volumes.put(s.place(), volume);
        Cell depth = s.station("bathDepth");
        surfaces.put(
                s.place(),
                sheet.figure(
                        SURFACE,
                        s.place(),
                        x -> Estimate.of(x[0] / x[1] * x[2]),
                        volume,
                        depth,
                        s.station("openShare")));
        walls.put(s.place(), sheet.figure(WALLS, s.place(), x -> Estimate.of(walls(x[0], x[1])), volume, depth));
    }

    private static Estimate withSound(double usual, double loadMass, double share) {
        Estimate least = UltrasonicLoad.smallestWaterVolume(loadMass, share, WATER_DENSITY);
        return least.withValue(Math.max(usual, least.value()));
    }

    private static double walls(double volume, double depth) {
        double bottom = volume / depth;
        return 4 * StrictMath.sqrt(bottom) * depth + bottom;
    }

    private static Cell times(Cell a, Cell b) {
        if (!a.applies() || !b.applies()) {
            return Cell.NONE;
        }
        return new Cell(a.ref(), org.washwright.engine.derive.Derivation.product(a.value(), b.value()));
    }

    /** Volume of one bath. */
    Cell volume(Station s) {
        return volumes.getOrDefault(s.place(), Cell.NONE);
    }

    /** How many baths, chambers or stations. */
    Cell number(Station s) {
        return numbers.getOrDefault(s.place(), Cell.NONE);
    }

    /** Open surface of one bath. */
    Cell surface(Station s) {
        return surfaces.getOrDefault(s.place(), Cell.NONE);
    }

    /** Walls and bottom of one bath. */
    Cell walls(Station s) {
        return walls.getOrDefault(s.place(), Cell.NONE);
    }
}
