package org.washwright.line.sizing;

import static org.washwright.line.sizing.FigureGroup.HEAT;
import static org.washwright.line.sizing.FigureKind.by;
import static org.washwright.line.sizing.FigureKind.defined;

import java.util.ArrayList;
import java.util.List;
import org.washwright.engine.Fact;
import org.washwright.quantity.Dimension;
import org.washwright.science.Estimate;
import org.washwright.science.HeatUp;
import org.washwright.science.TankSurfaceLoss;
import org.washwright.science.TankWallLoss;
import org.washwright.science.ThroughputHeat;

/** Heat of every bath: to warm it up at the start, and at work for loads, surface, walls and fresh water. */
final class Heat {

    private static final double WATER_HEAT = 4190;
    private static final double WATER_DENSITY = 1000;
    private static final double STEEL_HEAT = 490;

    static final FigureKind GOODS = defined(
            "goods",
            "parts and baskets an hour",
            HEAT,
            Dimension.MASS_RATE,
            "kg/h",
            "loads an hour × (mass of a load + basket)");
    static final FigureKind START = by(
            "heat-up",
            "heat to warm up one bath",
            HEAT,
            Dimension.POWER,
            "kW",
            "(volume × density × specific heat + mass of the tank × 0.49 kJ/(kg·K)) × rise ÷ time ÷ efficiency",
            "heat balance",
            "losses while warming up not counted");
    static final FigureKind LOAD = by(
            "heat-load",
            "heat that the loads take up",
            HEAT,
            Dimension.POWER,
            "kW",
            "parts and baskets an hour × specific heat × (bath − stage before)",
            "heat balance",
            "nothing where the stage before was hotter");
    static final FigureKind SURFACE = by(
            "heat-surface",
            "heat lost by the open surface",
            HEAT,
            Dimension.POWER,
            "kW",
            "evaporation, radiation and convection at the bath's temperature × open surface × baths",
            "table of heat losses of open water tanks, still air at 15.6 °C (engineeringtoolbox)",
            "rough estimate, 32 to 99 °C; a draught more than doubles it");
    static final FigureKind WALLS = by(
            "heat-walls",
            "heat lost by the walls",
            HEAT,
            Dimension.POWER,
            "kW",
            "loss by thickness of insulation × (bath − hall) × walls × baths",
            "table of wall losses at 65.6 °C, bare and 1 to 3 inch of insulation (engineeringtoolbox)",
            "");
    static final FigureKind WATER = defined(
            "heat-water",
            "heat of the fresh water",
            HEAT,
            Dimension.POWER,
            "kW",
            "fresh water × density × specific heat × (bath − supply)");
    static final FigureKind WORK =
            defined("heat-work", "heat at work", HEAT, Dimension.POWER, "kW", "loads + surface + walls + fresh water");
    static final FigureKind INSTALLED = defined(
            "heat-installed",
            "heating to install",
            HEAT,
            Dimension.POWER,
            "kW",
            "the larger of warming up all baths of the stage and heat at work");

    static final List<FigureKind> KINDS = List.of(GOODS, START, LOAD, SURFACE, WALLS, WATER, WORK, INSTALLED);

    /** Heat at work of one stage, by where it goes. */
    record Bath(Station station, Cell load, Cell surface, Cell walls, Cell water, Cell work, Cell installed) {}

    private final Sheet sheet;
    private final Cell massRate;
    private final Cell specificHeat;
    private final List<Bath> baths = new ArrayList<>();

    Heat(Sheet sheet, List<Station> stations, Throughput throughput, Baths sizes, WaterUse water) {
        this.sheet = sheet;
        massRate = sheet.figure(
                GOODS,
                0,
                x -> Estimate.of(x[0] * (x[1] + x[2])),
                throughput.loads(),
                throughput.loadMass(),
                sheet.assumption("basket-own-mass"));
        List<Cell> heats = new ArrayList<>();
        for (Fact material : sheet.sure("materials/")) {
            heats.add(sheet.field(material, "substrate.specificHeat").or(sheet.assumption("part-specific-heat")));
        }
        // Of what else the part may be made nobody knows.
        sheet.unsure("materials/").forEach(m -> heats.add(sheet.field(m, "substrate.specificHeat")));
        specificHeat = heats.isEmpty() ? sheet.assumption("part-specific-heat") : sheet.hull(heats);
        Cell before = sheet.assumption("part-temperature-in");
        for (Station s : stations) {
            if (s.hasBath() && s.temperature().applies()) {
                bath(s, before, sizes, water);
            }
            before = sheet.after(before, s.temperature().or(before), s.certain());
        }
    }

    private void bath(Station s, Cell before, Baths sizes, WaterUse water) {
        int place = s.place();
        Cell hot = s.temperature();
        Cell hall = sheet.assumption("hall-temperature");
        Cell volume = sizes.volume(s);
        Cell number = sizes.number(s);
        boolean watery = s.watery();
        Cell density = watery ? new Cell("", org.washwright.task.Value.number(WATER_DENSITY)) : s.medium("density");
        Cell heat = watery ? new Cell("", org.washwright.task.Value.number(WATER_HEAT)) : s.medium("specificHeat");
        Cell start = sheet.figure(
                START,
                place,
                x -> HeatUp.power(x[0] * x[1] * x[2] + x[0] * x[3] * STEEL_HEAT, Math.max(0, x[4] - x[5]), x[6], x[7]),
                volume,
                density,
                heat,
                sheet.assumption("tank-mass"),
                hot,
                hall,
                sheet.assumption("heat-up-time"),
                sheet.assumption("heating-efficiency"));
        Cell load = sheet.figure(
                LOAD,
                place,
                x -> ThroughputHeat.power(x[0], x[1], Math.max(0, x[2] - x[3])),
                massRate,
                specificHeat,
                hot,
                before);
        Cell surface = watery
                ? sheet.figure(
                        SURFACE,
                        place,
                        x -> x[0] <= x[1]
                                ? Estimate.of(0)
                                : TankSurfaceLoss.total(x[0]).then(q -> Estimate.of(q * x[2] * x[3])),
                        hot,
                        hall,
                        sizes.surface(s),
                        number)
                : Cell.NONE;
        Cell walls = sheet.figure(
                WALLS,
                place,
                x -> x[0] <= x[1]
                        ? Estimate.of(0)
                        : TankWallLoss.flux(x[0], x[1], x[2]).then(q -> Estimate.of(q * x[3] * x[4])),
                hot,
                hall,
                sheet.assumption("insulation"),
                sizes.walls(s),
                number);
        Cell fresh = water.of(s)
                .map(b -> sheet.figure(
                        WATER,
                        place,
                        x -> Estimate.of(Math.max(0, x[0]) * WATER_DENSITY * WATER_HEAT * Math.max(0, x[1] - x[2])),
                        b.fresh(),
                        hot,
                        sheet.assumption("supply-temperature")))
                .orElse(Cell.NONE);
        Cell work = sheet.sum(WORK, place, Sheet.list(load, surface, walls, fresh));
        Cell installed =
                sheet.figure(INSTALLED, place, x -> Estimate.of(Math.max(x[0] * x[1], x[2])), start, number, work);
        baths.add(new Bath(s, load, surface, walls, fresh, work, installed));
    }

    /** Parts and baskets an hour, in kg/s. */
    Cell massRate() {
        return massRate;
    }

    /** Specific heat of the parts. */
    Cell specificHeat() {
        return specificHeat;
    }

    /** The heated baths in order. */
    List<Bath> baths() {
        return baths;
    }
}
