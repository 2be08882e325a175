package org.washwright.line.sizing;

import static org.washwright.line.sizing.FigureGroup.BATHS;
import static org.washwright.line.sizing.FigureKind.by;

import java.util.ArrayList;
import java.util.List;
import org.washwright.engine.Fact;
import org.washwright.quantity.Dimension;
import org.washwright.science.Jet;
import org.washwright.science.PipeFlow;
import org.washwright.science.WaterViscosity;

/** What jets and flow through bores do at the part. */
final class Action {

    private static final double WATER_DENSITY = 1000;

    static final FigureKind JET = by(
            "jet",
            "speed of the jet",
            BATHS,
            Dimension.VELOCITY,
            "m/s",
            "√(2 × pressure ÷ density)",
            "Torricelli, textbook",
            "at the nozzle, without loss");
    static final FigureKind FORCE = by(
            "jet-force",
            "force of one jet, in newtons",
            BATHS,
            Dimension.RATIO,
            "",
            "2 × pressure × area of the nozzle",
            "momentum balance, textbook",
            "discharge coefficient of 1");
    static final FigureKind JET_FLOW = by(
            "jet-flow",
            "water of one jet",
            BATHS,
            Dimension.VOLUME_RATE,
            "L/h",
            "speed of the jet × area of the nozzle",
            "Torricelli, textbook",
            "discharge coefficient of 1");
    static final FigureKind REYNOLDS = by(
            "bore-reynolds",
            "Reynolds number of the flow through the narrowest bore",
            BATHS,
            Dimension.RATIO,
            "",
            "speed × diameter ÷ kinematic viscosity",
            "textbook",
            "above 4000 the flow is turbulent and drags particles off");
    static final FigureKind SHEAR = by(
            "bore-shear",
            "shear at the wall of the narrowest bore, in pascals",
            BATHS,
            Dimension.LOW_PRESSURE,
            "Pa",
            "8 × viscosity × speed ÷ diameter",
            "Hagen and Poiseuille, textbook",
            "laminar flow; turbulent flow shears more");
    static final FigureKind DROP = by(
            "bore-drop",
            "pressure that drives the flow through it",
            BATHS,
            Dimension.LOW_PRESSURE,
            "kPa",
            "128 × viscosity × length × flow ÷ (π d⁴)",
            "Hagen and Poiseuille, textbook",
            "laminar flow; turbulent flow needs more");

    static final List<FigureKind> KINDS = List.of(JET, FORCE, JET_FLOW, REYNOLDS, SHEAR, DROP);

    private Action() {}

    static void size(Sheet sheet, Station main) {
        Cell pressure = main.technique("nozzlePressure");
        Cell nozzle = main.technique("nozzleDiameter");
        sheet.figure(JET, main.place(), x -> Jet.velocity(x[0], WATER_DENSITY), pressure);
        sheet.figure(FORCE, main.place(), x -> Jet.force(x[0], x[1]), pressure, nozzle);
        sheet.figure(JET_FLOW, main.place(), x -> Jet.flow(x[0], WATER_DENSITY, x[1]), pressure, nozzle);
        bore(sheet, main);
    }

    private static void bore(Sheet sheet, Station main) {
        Cell speed = main.technique("boreSpeed");
        if (!speed.applies() || !main.watery()) {
            return;
        }
        List<Cell> widths = new ArrayList<>();
        List<Cell> lengths = new ArrayList<>();
        for (Fact feature : sheet.sure("features/")) {
            Cell width = sheet.field(feature, "diameter");
            Cell length = sheet.field(feature, "depth");
            if (!sheet.field(feature, "kind.deadEnd").isYes() && width.isNumber() && length.isNumber()) {
                boolean narrower =
                        widths.isEmpty() || width.middle() < widths.get(0).middle();
                if (narrower) {
                    widths.clear();
                    lengths.clear();
                    widths.add(width);
                    lengths.add(length);
                }
            }
        }
        if (widths.isEmpty()) {
            return;
        }
        Cell width = widths.get(0);
        Cell hot = main.temperature();
        sheet.figure(
                REYNOLDS,
                main.place(),
                x -> WaterViscosity.kinematic(x[2]).then(nu -> PipeFlow.reynolds(x[0], x[1], nu)),
                speed,
                width,
                hot);
        sheet.figure(
                SHEAR,
                main.place(),
                x -> WaterViscosity.dynamic(x[2]).then(mu -> PipeFlow.laminarWallShear(mu, x[0], x[1])),
                speed,
                width,
                hot);
        sheet.figure(
                DROP,
                main.place(),
                x -> WaterViscosity.dynamic(x[2])
                        .then(mu ->
                                PipeFlow.laminarPressureDrop(mu, x[3], x[0] * StrictMath.PI * x[1] * x[1] / 4, x[1])),
                speed,
                width,
                hot,
                lengths.get(0));
    }
}
