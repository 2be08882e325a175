package org.washwright.line.sizing;

import java.util.Optional;
import org.washwright.catalogue.Catalogue;
import org.washwright.catalogue.ProcessTerm;
import org.washwright.catalogue.StageTerm;
import org.washwright.catalogue.Term;
import org.washwright.line.PlacedStage;
import org.washwright.line.Window;
import org.washwright.quantity.Span;
import org.washwright.task.Value;

/** A stage of a line as something that stands in a hall: its kind of station, its medium and where it is run in its windows. */
final class Station {

    private static final String OPERATING_POINT = "operating-point";

    private final Sheet sheet;
    private final int place;
    private final PlacedStage stage;
    private final Term term;
    private final Optional<Term> kind;
    private final Optional<Term> medium;
    private final Optional<Term> technique;

    /** The stage that stands at a place, from 1, in the line of a process. */
    Station(Sheet sheet, ProcessTerm process, PlacedStage stage, int place) {
        this.sheet = sheet;
        this.place = place;
        this.stage = stage;
        this.term = stage.stage().map(StageTerm::term).orElse(process.term());
        this.technique = stage.stage().isEmpty() ? named(process.term(), "technique") : Optional.empty();
        boolean shared =
                stage.stage().isPresent() && sheet.property(term, "inChamber").isYes();
        this.medium = named(term, "medium").or(() -> shared ? named(process.term(), "medium") : Optional.empty());
        this.kind = named(term, "station").or(() -> technique.flatMap(t -> named(t, "station")));
    }

    /** The term that a property names, when it surely names one. */
    private Optional<Term> named(Term from, String property) {
        Catalogue catalogue = sheet.edition().catalogue();
        if (from.property(property) instanceof Value.OneOf o && o.terms().size() == 1) {
            return catalogue.term(property, o.terms().first());
        }
        return Optional.empty();
    }

    /** Its place in the line, from 1. */
    int place() {
        return place;
    }

    /** True for the main cleaning stage. */
    boolean main() {
        return stage.stage().isEmpty();
    }

    /** True when it is surely in the line. */
    boolean certain() {
        return stage.certain();
    }

    /** True when it removes soil. */
    boolean cleans() {
        return stage.stage().map(StageTerm::cleaning).orElse(true);
    }

    /** What a reader calls it. */
    String name() {
        return term.name();
    }

    /** A property of the stage or the process itself. */
    Cell own(String property) {
        return sheet.property(term, property);
    }

    /** A property of its kind of station. */
    Cell station(String property) {
        return kind.map(k -> sheet.property(k, property)).orElse(Cell.NONE);
    }

    /** A property of its medium. */
    Cell medium(String property) {
        return medium.map(m -> sheet.property(m, property)).orElse(Cell.NONE);
    }

    /** A property of its technique. */
    Cell technique(String property) {
        return technique.map(t -> sheet.property(t, property)).orElse(Cell.NONE);
    }

    /** A property of its quality of water. */
    Cell water(String property) {
        return named(term, "water").map(w -> sheet.property(w, property)).orElse(Cell.NONE);
    }

    /** True when it runs in the chamber of the main stage. */
    boolean inChamber() {
        return !main() && own("inChamber").isYes();
    }

    /** True when the edition says in what kind of station it runs. */
    boolean placed() {
        return kind.isPresent();
    }

    /** True when it holds a bath. */
    boolean hasBath() {
        return station("bathRatio").applies();
    }

    /** True when its bath is water or is made up with it. */
    boolean watery() {
        return hasBath()
                && (medium("waterBased").isYes() || named(term, "water").isPresent());
    }

    /** True when it rinses. */
    boolean rinses() {
        return watery() && own("rinses").isYes();
    }

    /** True when it takes water off by heat, vacuum or air. */
    boolean dries() {
        return station("dryer").isYes();
    }

    /**
     * Where the parameter is run: at the operating point of its window. While an undecided rule may still narrow the window,
     * any value in it may turn out to be right.
     */
    Cell setting(String parameter) {
        Window window = stage.windows().get(parameter);
        if (window == null
                || window.isClosed()
                || Double.isInfinite(window.low())
                || Double.isInfinite(window.high())) {
            return Cell.NONE;
        }
        String ref = "window/" + place + "/" + parameter;
        if (!window.undecided().isEmpty()) {
            return sheet.leaf(ref, new Value.Number(new Span(window.low(), window.high())));
        }
        Cell point = sheet.assumption(OPERATING_POINT);
        double share = point.isNumber() ? point.middle() : 0.5;
        return new Cell(ref, Value.number(window.low() + share * (window.high() - window.low())));
    }

    /** The lower end of a window. */
    Cell lowest(String parameter) {
        Window window = stage.windows().get(parameter);
        return window == null || Double.isInfinite(window.low())
                ? Cell.NONE
                : new Cell("window/" + place + "/" + parameter, Value.number(window.low()));
    }

    /** How long a load stays: the time of its windows. */
    Cell time() {
        return setting("time").or(setting("bake-time"));
    }

    /** How hot it is. */
    Cell temperature() {
        Cell usual = setting("temperature").or(setting("bake-temperature"));
        return usual.applies() && own("cool").isYes() ? lowest("temperature") : usual;
    }
}
