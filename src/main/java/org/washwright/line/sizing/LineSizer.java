package org.washwright.line.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.washwright.catalogue.Term;
import org.washwright.engine.FactBase;
import org.washwright.line.PlacedStage;
import org.washwright.line.ProcessLine;
import org.washwright.rule.Edition;
import org.washwright.task.Value;

/** Sizes and costs lines of one task. */
public final class LineSizer {

    /** All kinds of figures, in the order in which they are shown. */
    public static final List<FigureKind> KINDS = Stream.of(
                    Throughput.KINDS,
                    Baths.KINDS,
                    Action.KINDS,
                    Protection.KINDS,
                    DragOut.KINDS,
                    Rinses.KINDS,
                    WaterUse.KINDS,
                    Heat.KINDS,
                    Drying.KINDS,
                    AirUse.KINDS,
                    SolventUse.KINDS,
                    Soil.KINDS,
                    Chemistry.KINDS,
                    PowerUse.KINDS,
                    Prices.KINDS)
            .flatMap(List::stream)
            .toList();

    private static final Value MANY = Value.number(1e9);

    private final Edition edition;
    private final FactBase facts;
    private final Map<String, Value> changed;

    /**
     * A sizer.
     *
     * @param facts all facts of the task
     * @param changed assumptions changed for this request, by id
     */
    public LineSizer(Edition edition, FactBase facts, Map<String, Value> changed) {
        this.edition = edition;
        this.facts = facts;
        this.changed = changed;
    }

    /** Figures and balances of a line; nothing when the edition says nothing to size by. */
    public Sized size(ProcessLine line) {
        if (line.steps().isEmpty()) {
            return Sized.NOTHING;
        }
        Sheet sheet = new Sheet(edition, facts, changed, false);
        List<Sized.Balance> balances = size(sheet, line);
        if (sheet.figures().isEmpty()) {
            return Sized.NOTHING;
        }
        if (sheet.ranges()) {
            // Ends of ranges belong to different plants; only one plant, that in the middle, balances.
            balances = size(new Sheet(edition, facts, changed, true), line);
        }
        return new Sized(sheet.figures(), balances);
    }

    private List<Sized.Balance> size(Sheet sheet, ProcessLine line) {
        List<Station> stations = new ArrayList<>();
        int place = 1;
        for (PlacedStage stage : line.steps()) {
            stations.add(new Station(sheet, line.process(), stage, place++));
        }
        Station main = stations.stream().filter(Station::main).findFirst().orElseThrow();
        Throughput throughput = new Throughput(sheet, stations, partsAtOnce(sheet));
        DragOut dragOut = new DragOut(sheet);
        Rinses rinses = new Rinses(sheet, stations, dragOut);
        Baths baths = new Baths(sheet, stations, throughput, rinses);
        Action.size(sheet, main);
        Protection.size(sheet, stations);
        rinses.unsteady(sheet, stations, dragOut, baths);
        WaterUse water = new WaterUse(sheet, stations, baths, rinses, dragOut);
        Heat heat = new Heat(sheet, stations, throughput, baths, water);
        Drying drying = new Drying(sheet, stations, water, heat);
        AirUse air = new AirUse(sheet, stations, baths);
        Soil soil = new Soil(sheet, stations, baths);
        SolventUse solvent = new SolventUse(sheet, line.process().id(), main, baths, soil, heat);
        Chemistry chemistry = new Chemistry(sheet, stations, baths, water, soil);
        PowerUse power = new PowerUse(sheet, stations, throughput, baths, heat, drying, air);
        new Prices(
                sheet,
                stations,
                throughput,
                baths,
                Running.of(sheet, stations, power, water, soil, chemistry, solvent));
        return new Balances()
                .water(water, soil)
                .heat(heat, drying)
                .oil(soil)
                .solvent(solvent)
                .all();
    }

    /** Parts that go through at once by the charging; where it does not say, as many as there is room for. */
    private static Cell partsAtOnce(Sheet sheet) {
        Cell charging = sheet.fact("lot", "charging");
        List<Cell> all = new ArrayList<>();
        for (Term term : sheet.possible(charging, "charging")) {
            all.add(sheet.property(term, "partsAtOnce").or(new Cell(charging.ref(), MANY)));
        }
        return all.isEmpty() ? new Cell("", MANY) : sheet.hull(all);
    }
}
