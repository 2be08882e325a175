package org.washwright.line.sizing;

import static org.washwright.line.sizing.FigureGroup.HEAT;
import static org.washwright.line.sizing.FigureKind.by;

import java.util.ArrayList;
import java.util.List;
import org.washwright.quantity.Dimension;
import org.washwright.science.BlowOff;
import org.washwright.science.Estimate;
import org.washwright.science.VacuumDrying;
import org.washwright.science.WaterLatentHeat;
import org.washwright.science.WaterVapourPressure;

/** Drying: what is blown off, what has to evaporate, and whether the parts' own heat is enough under vacuum. */
final class Drying {

    private static final double WATER_HEAT = 4190;
    private static final double WATER_DENSITY = 1000;

    static final FigureKind LEFT = by(
            "water-left",
            "water left to evaporate",
            HEAT,
            Dimension.MASS_RATE,
            "kg/h",
            "liquid carried out × what blowing leaves",
            "blowing off takes 70 to 95 %, common practice, no source",
            "parts that drain; trapped water comes on top");
    static final FigureKind DRYER = by(
            "dryer-heat",
            "heat of the dryer",
            HEAT,
            Dimension.POWER,
            "kW",
            "(water left × (heat of evaporation + warming) + warming of the load) ÷ share of the heat that reaches them",
            "heat balance; heat of evaporation of water from steam tables",
            "");
    static final FigureKind OWN_HEAT = by(
            "own-heat",
            "water that the load's own heat takes off under vacuum, against what is left",
            HEAT,
            Dimension.RATIO,
            "",
            "mass × specific heat × cooling to the boiling point ÷ heat of evaporation ÷ water left",
            "heat balance",
            "above 1 the load dries by its own heat; below, it has to be warmed or blown off first");

    static final List<FigureKind> KINDS = List.of(LEFT, DRYER, OWN_HEAT);

    private static final Cell DRY = new Cell("", org.washwright.task.Value.number(0));

    private final Sheet sheet;
    private final List<Cell> heats = new ArrayList<>();

    Drying(Sheet sheet, List<Station> stations, WaterUse water, Heat heat) {
        this.sheet = sheet;
        Cell left = Cell.NONE;
        Cell cold = sheet.assumption("hall-temperature");
        for (Station s : stations) {
            if (s.watery()) {
                Cell out = water.of(s).map(WaterUse.Bath::out).orElse(Cell.NONE);
                left = sheet.after(left, sheet.scaled(out, WATER_DENSITY), s.certain());
            } else if (left.applies() && (s.dries() || s.own("blowsOff").applies())) {
                Cell blown = blown(s, left);
                if (s.dries()) {
                    dry(s, blown, cold, heat);
                }
                left = sheet.after(left, s.dries() ? DRY : blown, s.certain());
            }
            cold = sheet.after(cold, s.temperature().or(cold), s.certain());
        }
    }

    /** What a stage leaves to evaporate. */
    private Cell blown(Station s, Cell carried) {
        return s.own("blowsOff").applies()
                ? sheet.figure(LEFT, s.place(), x -> BlowOff.left(x[0], x[1]), carried, s.own("blowsOff"))
                : sheet.figure(LEFT, s.place(), x -> Estimate.of(x[0]), carried);
    }

    private void dry(Station s, Cell mass, Cell cold, Heat heat) {
        if (s.station("vacuum").isYes()) {
            sheet.figure(
                    OWN_HEAT,
                    s.place(),
                    x -> ownHeat(x[0], x[1], x[2], x[3], x[4]),
                    heat.massRate(),
                    heat.specificHeat(),
                    cold,
                    s.station("pressure"),
                    mass);
        }
        heats.add(Sheet.perhaps(
                sheet.figure(
                        DRYER,
                        s.place(),
                        x -> dryer(x[0], x[1], x[2], x[3], x[4], x[5]),
                        mass,
                        cold,
                        s.temperature(),
                        heat.massRate(),
                        heat.specificHeat(),
                        s.station("efficiency")),
                s.certain()));
    }

    private static Estimate ownHeat(double mass, double specificHeat, double hot, double pressure, double water) {
        double boiling = WaterVapourPressure.boilingTemperature(pressure).value();
        Estimate latent = WaterLatentHeat.at(boiling);
        return latent.then(h -> VacuumDrying.evaporatedByOwnHeat(mass, specificHeat, Math.max(0, hot - boiling), h))
                .then(m -> Estimate.of(water == 0 ? Double.POSITIVE_INFINITY : m / water));
    }

    private static Estimate dryer(
            double water, double cold, double hot, double massRate, double specificHeat, double efficiency) {
        double rise = Math.max(0, hot - cold);
        return WaterLatentHeat.at(cold)
                .then(h ->
                        Estimate.of((water * (h + WATER_HEAT * rise) + massRate * specificHeat * rise) / efficiency));
    }

    /** Heat of the dryers. */
    List<Cell> heats() {
        return heats;
    }
}
