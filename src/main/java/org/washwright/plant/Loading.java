package org.washwright.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.washwright.catalogue.StageTerm;
import org.washwright.catalogue.Term;
import org.washwright.line.PlacedStage;
import org.washwright.line.ProcessLine;
import org.washwright.line.Window;
import org.washwright.plant.PlantWeek.Load;
import org.washwright.plant.PlantWeek.Range;
import org.washwright.quantity.Span;
import org.washwright.rule.Edition;
import org.washwright.task.Value;

/** Reckons what a task takes of the week: parts a week, parts in a load, the time of a load and the hours. */
final class Loading {

    private static final double YEAR = 365 * 24 * 3600.0;
    private static final double WEEKS_A_YEAR = 52;
    private static final double HOUR = 3600;
    private static final double MINUTE = 60;

    /** Less than any rounding of units, more than that of a division: 20 whole parts stay 20. */
    private static final double ROUNDING = 1e-9;

    private final Edition edition;
    private final Map<String, Value> assumptions;
    private final Plant plant;
    private final List<String> notKnown = new ArrayList<>();
    private final List<String> assumed = new ArrayList<>();

    Loading(Edition edition, Map<String, Value> assumptions, Plant plant) {
        this.edition = edition;
        this.assumptions = assumptions;
        this.plant = plant;
    }

    /** Parts a week, and whether they come in whole loads: an hourly rate fills one load after the other without end. */
    private record Parts(Optional<Range> aWeek, String from, boolean wholeLoads) {}

    /** The station that a load holds longest. */
    private record Slowest(Range seconds, String name) {}

    Load of(Value given, PartFacts part, ProcessLine line) {
        Parts parts = parts(given, part);
        Optional<Range> inLoad = inLoad(part);
        Optional<Range> loads = parts.aWeek().flatMap(p -> inLoad.map(l -> loads(p, l, parts.wholeLoads())));
        Optional<Slowest> slowest = slowest(line);
        Range working = orAssumed(plant.availability(), "availability", new Range(1, 1));
        Optional<Range> hours = loads.flatMap(l -> slowest.map(s -> new Range(
                l.low() * s.seconds().low() / working.high() / HOUR,
                l.high() * s.seconds().high() / working.low() / HOUR)));
        return new Load(
                parts.aWeek(),
                parts.from(),
                inLoad,
                loads,
                slowest.map(
                        s -> new Range(s.seconds().low() / MINUTE, s.seconds().high() / MINUTE)),
                slowest.map(Slowest::name).orElse(""),
                hours,
                notKnown.stream().distinct().toList(),
                assumed.stream().distinct().toList());
    }

    private Parts parts(Value given, PartFacts part) {
        Optional<Range> said = known(given);
        if (said.isPresent()) {
            return new Parts(said, "given", true);
        }
        Optional<Range> year = known(part.annualQuantity());
        if (year.isPresent()) {
            return new Parts(year.map(y -> times(y, YEAR / WEEKS_A_YEAR)), "parts a year ÷ 52", true);
        }
        Optional<Range> rate = known(part.rate());
        Optional<Range> hours = known(plant.hours());
        if (rate.isPresent() && hours.isPresent()) {
            Range r = rate.get();
            Range h = hours.get();
            return new Parts(
                    Optional.of(new Range(r.low() * h.low(), r.high() * h.high())),
                    "parts an hour × hours of the plant",
                    false);
        }
        notKnown.add(rate.isPresent() ? "hours a week of the plant" : "parts a week");
        return new Parts(Optional.empty(), "not known", false);
    }

    /** As many as neither mass nor area of a basket is passed, at least one; one where the charging says so. */
    private Optional<Range> inLoad(PartFacts part) {
        Optional<Range> byCharging = byCharging(part.charging());
        if (byCharging.isPresent()) {
            return byCharging;
        }
        Range most = new Range(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
        Optional<Range> byMass =
                share(plant.basket().mass(), "mass that a basket takes", part.mass(), "mass of a part");
        Optional<Range> byArea =
                share(plant.basket().area(), "area that a basket takes", part.area(), "wetted area of a part");
        Optional<Range> both = byMass.flatMap(m ->
                byArea.map(a -> new Range(Math.min(m.low(), a.low()), Math.min(m.high(), a.high()))));
        if (both.equals(Optional.of(most))) {
            notKnown.add("what limits the parts in a basket");
            return Optional.empty();
        }
        return both.map(b -> new Range(whole(b.low()), whole(b.high())));
    }

    private static double whole(double parts) {
        return Math.max(1, Math.floor(parts * (1 + ROUNDING)));
    }

    /** How often a part goes into what a basket takes; without end where there is no such limit. */
    private Optional<Range> share(Value limit, String limitName, Value part, String partName) {
        if (limit instanceof Value.NotApplicable || part instanceof Value.NotApplicable) {
            return Optional.of(new Range(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY));
        }
        Optional<Range> all = known(limit);
        Optional<Range> one = known(part).filter(p -> p.low() > 0);
        if (all.isEmpty()) {
            notKnown.add(limitName);
        }
        if (one.isEmpty()) {
            notKnown.add(partName);
        }
        return all.flatMap(a -> one.map(p -> new Range(a.low() / p.high(), a.high() / p.low())));
    }

    private Optional<Range> byCharging(Value charging) {
        if (charging instanceof Value.OneOf o && o.terms().size() == 1) {
            return edition.catalogue()
                    .term("charging", o.terms().first())
                    .flatMap(t -> known(t.property("partsAtOnce")));
        }
        return Optional.empty();
    }

    private static Range loads(Range parts, Range inLoad, boolean whole) {
        double low = parts.low() / inLoad.high();
        double high = parts.high() / inLoad.low();
        return whole ? new Range(up(low), up(high)) : new Range(low, high);
    }

    private static double up(double loads) {
        return Math.ceil(loads * (1 - ROUNDING));
    }

    private Optional<Slowest> slowest(ProcessLine line) {
        Optional<Range> chambers = known(plant.chambers());
        if (chambers.isEmpty()) {
            notKnown.add("chambers of the main stage");
            return Optional.empty();
        }
        Range transfer = orAssumed(plant.transfer(), "transfer-time", new Range(0, 0));
        Range inMain = new Range(0, 0);
        for (PlacedStage step : line.steps()) {
            if (sharesChamber(step)) {
                inMain = inMain.plus(perhaps(time(step).orElse(new Range(0, 0)), step.certain()));
            }
        }
        Slowest slowest = null;
        for (PlacedStage step : line.steps()) {
            Optional<Range> time = time(step);
            if (sharesChamber(step) || time.isEmpty()) {
                continue;
            }
            boolean main = step.stage().isEmpty();
            Range held = time.get().plus(transfer).plus(main ? inMain : new Range(0, 0));
            if (main) {
                held = new Range(
                        held.low() / chambers.get().high(),
                        held.high() / chambers.get().low());
            }
            slowest = slower(slowest, perhaps(held, step.certain()), name(step, line));
        }
        if (slowest == null) {
            notKnown.add("time of the stages");
        }
        return Optional.ofNullable(slowest);
    }

    private static Slowest slower(Slowest before, Range held, String name) {
        if (before == null) {
            return new Slowest(held, name);
        }
        Range seconds = new Range(
                Math.max(before.seconds().low(), held.low()),
                Math.max(before.seconds().high(), held.high()));
        return new Slowest(seconds, held.high() > before.seconds().high() ? name : before.name());
    }

    private static Range perhaps(Range range, boolean certain) {
        return certain ? range : new Range(0, range.high());
    }

    private boolean sharesChamber(PlacedStage step) {
        return step.stage().map(StageTerm::term).map(Loading::inChamber).orElse(false);
    }

    private static boolean inChamber(Term term) {
        return term.property("inChamber").equals(Value.flag(true));
    }

    private static String name(PlacedStage step, ProcessLine line) {
        return step.stage()
                .map(s -> s.term().name())
                .orElse(line.process().term().name());
    }

    /** How long a load stays: where both the window of the task and the plant's own setting are kept. */
    private Optional<Range> time(PlacedStage step) {
        return time(step, "time").or(() -> time(step, "bake-time"));
    }

    private Optional<Range> time(PlacedStage step, String parameter) {
        Window window = step.windows().get(parameter);
        if (window == null || window.isClosed()) {
            return Optional.empty();
        }
        Span span = new Span(window.low(), window.high());
        Value own = plant.setting(StageFit.id(step), parameter);
        if (own instanceof Value.Number n) {
            double low = Math.max(span.low(), n.span().low());
            double high = Math.min(span.high(), n.span().high());
            span = low <= high ? new Span(low, high) : span;
        } else {
            assumed.add("time of " + step.stage().map(s -> s.term().name()).orElse("the main stage"));
        }
        if (!Double.isFinite(span.low()) || !Double.isFinite(span.high())) {
            return Optional.empty();
        }
        if (!window.undecided().isEmpty()) {
            return Optional.of(new Range(span.low(), span.high()));
        }
        Range share = assumption("operating-point").orElse(new Range(0.5, 0.5));
        double width = span.high() - span.low();
        return Optional.of(new Range(span.low() + share.low() * width, span.low() + share.high() * width));
    }

    private Range orAssumed(Value own, String id, Range without) {
        Optional<Range> said = known(own);
        if (said.isPresent()) {
            return said.get();
        }
        Optional<Range> of = assumption(id);
        if (of.isPresent()) {
            assumed.add(edition.assumptions().get(id).label());
        }
        return of.orElse(without);
    }

    private Optional<Range> assumption(String id) {
        Edition.Assumption of = edition.assumptions().get(id);
        return of == null ? Optional.empty() : known(assumptions.getOrDefault(id, of.value()));
    }

    private static Range times(Range range, double factor) {
        return new Range(range.low() * factor, range.high() * factor);
    }

    /** A number with two ends. */
    static Optional<Range> known(Value value) {
        return value instanceof Value.Number n
                        && Double.isFinite(n.span().low())
                        && Double.isFinite(n.span().high())
                ? Optional.of(new Range(n.span().low(), n.span().high()))
                : Optional.empty();
    }
}
