package org.washwright.line.sizing;

import java.util.ArrayList;
import java.util.List;
import org.washwright.line.sizing.Sized.Balance;
import org.washwright.line.sizing.Sized.Flow;

/** Balances of water, heat, oil and solvent over the line, at the middle of every range. */
final class Balances {

    private static final double SMALLEST = 1e-15;

    private final List<Balance> balances = new ArrayList<>();

    private static double amount(Cell cell) {
        return cell.isNumber() && Double.isFinite(cell.middle()) ? cell.middle() : 0;
    }

    private static void add(List<Flow> side, List<Flow> other, String name, Station s, double amount) {
        if (amount > SMALLEST) {
            side.add(new Flow(name, s == null ? 0 : s.place(), amount));
        } else if (amount < -SMALLEST) {
            other.add(new Flow(name, s == null ? 0 : s.place(), -amount));
        }
    }

    /** Water: fresh water and first fillings in; run-off, evaporation, baths thrown away and what the parts carry off out. */
    Balances water(WaterUse water, Soil soil) {
        List<Flow> in = new ArrayList<>();
        List<Flow> out = new ArrayList<>();
        List<WaterUse.Bath> wet = water.wet();
        for (WaterUse.Bath b : wet) {
            add(in, out, "fresh water", b.station(), amount(b.fresh()));
            add(out, in, "evaporates", b.station(), amount(b.evaporated()));
            add(out, in, "runs off", b.station(), amount(b.runsOff()));
            int at = wet.indexOf(b);
            double goesOn = at + 1 < wet.size() ? amount(wet.get(at + 1).in()) : 0;
            add(out, in, "leaves on the parts", b.station(), amount(b.out()) - goesOn);
        }
        for (Soil.Bath b : soil.baths()) {
            add(in, out, "new bath", b.station(), amount(b.dumped()));
            add(out, in, "bath thrown away", b.station(), amount(b.dumped()));
        }
        return keep(new Balance("water", "water at work", WaterUse.FRESH, in, out));
    }

    /** Heat of the baths and dryers at work. */
    Balances heat(Heat heat, Drying drying) {
        List<Flow> in = new ArrayList<>();
        List<Flow> out = new ArrayList<>();
        for (Heat.Bath b : heat.baths()) {
            add(in, out, "heating", b.station(), amount(b.work()));
            add(out, in, "into the loads", b.station(), amount(b.load()));
            add(out, in, "off the surface", b.station(), amount(b.surface()));
            add(out, in, "through the walls", b.station(), amount(b.walls()));
            add(out, in, "into fresh water", b.station(), amount(b.water()));
        }
        double dryers = drying.heats().stream().mapToDouble(Balances::amount).sum();
        add(in, out, "dryers", null, dryers);
        add(out, in, "with the dryers' air and water", null, dryers);
        return keep(new Balance("heat", "heat at work", Heat.WORK, in, out));
    }

    /** Oil and grease: what comes in, what each bath takes up, what stays on the parts. */
    Balances oil(Soil soil) {
        List<Flow> in = new ArrayList<>();
        List<Flow> out = new ArrayList<>();
        double load = amount(soil.load());
        add(in, out, "on the parts", null, load);
        double rest = load;
        for (Soil.Bath b : soil.baths()) {
            add(out, in, "into the bath", b.station(), amount(b.taken()));
            rest -= amount(b.taken());
        }
        add(
                out,
                in,
                soil.baths().isEmpty() ? "taken by the process" : "to later stages and left on the parts",
                null,
                rest);
        return keep(new Balance("oil", "oil and grease", Soil.LOAD, in, out));
    }

    /** Solvent: bought against escaped and left in the bottoms. */
    Balances solvent(SolventUse solvent) {
        List<Flow> in = new ArrayList<>();
        List<Flow> out = new ArrayList<>();
        add(in, out, "bought", null, amount(solvent.use()));
        add(out, in, "escapes", null, amount(solvent.loss()));
        add(out, in, "leaves in the bottoms", null, solvent.inBottoms());
        return keep(new Balance("solvent", "solvent", SolventUse.USE, in, out));
    }

    private Balances keep(Balance balance) {
        if (!balance.in().isEmpty() && !balance.out().isEmpty()) {
            balances.add(balance);
        }
        return this;
    }

    /** Those that have something on both sides. */
    List<Balance> all() {
        return balances;
    }
}
