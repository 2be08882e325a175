package org.washwright.line.sizing;

import static org.washwright.line.sizing.FigureGroup.WATER;
import static org.washwright.line.sizing.FigureKind.by;
import static org.washwright.line.sizing.FigureKind.defined;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.quantity.Dimension;
import org.washwright.science.Estimate;
import org.washwright.science.RinseDilution;
import org.washwright.science.StaticRinse;
import org.washwright.science.UnsteadyRinse;

/**
 * Rinses: how many tanks in counter flow the wanted dilution takes within the water that is granted for each area, the water they
 * take, and what is left at the end.
 */
final class Rinses {

    private static final int MOST_TANKS = 4;
    private static final double HOUR = 3600;
    private static final String EPA =
            "counter-current rinse, EPA 625/8-82-008 and Kushner, from memory; follows from the balance"
                    + " of each tank";
    private static final String IDEAL = "well-mixed tanks, steady state, clean water, each tank drained alike";

    static final FigureKind DILUTION = defined(
            "dilution",
            "wanted dilution",
            WATER,
            Dimension.RATIO,
            "",
            "of the stage; else that of the edition from bath to last rinse");
    static final FigureKind TANKS = by(
            "rinse-tanks",
            "rinse tanks one behind the other",
            WATER,
            Dimension.RATIO,
            "",
            "fewest whose water for each area is within what is granted; not fewer than the stage has",
            EPA,
            "to four tanks; " + IDEAL);
    static final FigureKind RATIO = by(
            "rinse-ratio",
            "water for each litre carried in",
            WATER,
            Dimension.RATIO,
            "",
            "R of 1 + R + R² + … + Rⁿ = dilution, n tanks",
            EPA,
            IDEAL);
    static final FigureKind FLOW = defined(
            "rinse-water", "fresh water of the rinse", WATER, Dimension.VOLUME_RATE, "L/h", "R × liquid carried in");
    static final FigureKind PER_AREA = defined(
            "rinse-water-per-area",
            "fresh water for each area",
            WATER,
            Dimension.VOLUME_PER_AREA,
            "L/m²",
            "fresh water of the rinse ÷ area an hour");
    static final FigureKind LAST = defined(
            "last-rinse",
            "product in the last rinse",
            WATER,
            Dimension.CONCENTRATION,
            "g/L",
            "product in the bath ÷ all dilutions since");
    static final FigureKind FIRST = by(
            "first-rinse",
            "product in the first of its tanks",
            WATER,
            Dimension.CONCENTRATION,
            "g/L",
            "product carried in ÷ dilution of the first tank: (1 + R + … + Rⁿ) ÷ (1 + R + … + Rⁿ⁻¹)",
            EPA,
            IDEAL);
    static final FigureKind STILL = by(
            "still-bath",
            "product in the standing bath after a shift",
            WATER,
            Dimension.CONCENTRATION,
            "g/L",
            "product carried in × (1 − exp(−liquid carried in × hours of a shift ÷ volume))",
            "static rinse, follows from the balance of the tank",
            "bath filled fresh at the start of the shift, no water added");

    static final FigureKind AN_HOUR = by(
            "rinse-after-an-hour",
            "product in the single rinse an hour after it was filled fresh",
            WATER,
            Dimension.CONCENTRATION,
            "g/L",
            "steady state × (1 − exp(−(liquid carried in + fresh water) × 1 h ÷ volume))",
            "balance of a flowing rinse before it is steady",
            "one tank, well mixed, filled with clean water");

    static final List<FigureKind> KINDS = List.of(DILUTION, TANKS, RATIO, FLOW, PER_AREA, FIRST, LAST, AN_HOUR, STILL);

    private final Map<Integer, Cell> tanks = new TreeMap<>();
    private final Map<Integer, Cell> flows = new TreeMap<>();
    private final Map<Integer, Cell> lasts = new TreeMap<>();
    private final Map<Integer, Cell> before = new TreeMap<>();
    private Cell carried = Cell.NONE;

    Rinses(Sheet sheet, List<Station> stations, DragOut dragOut) {
        for (Station s : stations) {
            if (s.rinses()) {
                rinse(sheet, s, dragOut);
            } else if (s.watery() && s.setting("concentration").applies()) {
                carried = sheet.after(carried, s.setting("concentration"), s.certain());
            }
        }
    }

    private void rinse(Sheet sheet, Station s, DragOut dragOut) {
        int place = s.place();
        Cell dilution = sheet.figure(
                DILUTION, place, x -> Estimate.of(x[0]), s.own("dilution").or(sheet.assumption("rinse-ratio")));
        Cell fewest = s.own("tanks").applies() ? s.own("tanks") : new Cell("", org.washwright.task.Value.number(1));
        Cell n = sheet.figure(
                TANKS,
                place,
                x -> tanks(x[0], x[1], x[2], x[3]),
                dilution,
                dragOut.film(),
                sheet.assumption("rinse-water-limit"),
                fewest);
        Cell ratio =
                sheet.figure(RATIO, place, x -> RinseDilution.waterRatio(x[0], (int) Math.round(x[1])), dilution, n);
        Cell flow = sheet.figure(FLOW, place, x -> Estimate.of(x[0] * x[1]), ratio, dragOut.rate());
        sheet.figure(PER_AREA, place, x -> Estimate.of(x[0] / x[1]), flow, sheet.fact("part", "areaPerHour"));
        sheet.figure(FIRST, place, x -> firstTank(x[0], x[1], (int) Math.round(x[2])), carried, ratio, n);
        Cell last = sheet.figure(LAST, place, x -> Estimate.of(x[0] / x[1]), carried, dilution);
        tanks.put(place, n);
        flows.put(place, flow);
        lasts.put(place, last);
        before.put(place, carried);
        carried = sheet.after(carried, last, s.certain());
    }

    /** The fewest tanks whose water for each area stays within what is granted. */
    private static Estimate tanks(double dilution, double film, double granted, double fewest) {
        int least = (int) Math.max(1, Math.round(fewest));
        for (int n = least; n <= Math.max(MOST_TANKS, least); n++) {
            if (RinseDilution.waterRatio(dilution, n).value() * film <= granted) {
                return Estimate.of(n);
            }
        }
        return Estimate.of(Math.max(MOST_TANKS, least))
                .warn(
                        "Even four tanks take more water for each area than is granted; drain longer or keep more liquid back");
    }

    private static Estimate firstTank(double carriedIn, double ratio, int tanks) {
        double whole = RinseDilution.counterCurrent(ratio, tanks).value();
        double rest =
                tanks == 1 ? 1 : RinseDilution.counterCurrent(ratio, tanks - 1).value();
        return Estimate.of(carriedIn * rest / whole);
    }

    /** Baths that are not steady: a standing one, and a single rinse after it was filled. */
    void unsteady(Sheet sheet, List<Station> stations, DragOut dragOut, Baths baths) {
        Cell in = Cell.NONE;
        for (Station s : stations) {
            if (s.own("standing").isYes() && s.watery()) {
                sheet.figure(
                        STILL,
                        s.place(),
                        x -> StaticRinse.concentration(x[0], x[1], x[2], x[3]),
                        in,
                        dragOut.rate(),
                        sheet.assumption("hours-per-shift"),
                        baths.volume(s));
            }
            if (tanks(s).isNumber() && tanks(s).middle() == 1) {
                sheet.figure(
                        AN_HOUR,
                        s.place(),
                        x -> UnsteadyRinse.concentration(x[0], 0, x[1], x[2], x[3], HOUR),
                        before.getOrDefault(s.place(), Cell.NONE),
                        dragOut.rate(),
                        flow(s),
                        baths.volume(s));
            }
            in = lasts.getOrDefault(s.place(), in);
        }
    }

    /** Tanks one behind the other; has no meaning for a stage that does not rinse. */
    Cell tanks(Station s) {
        return tanks.getOrDefault(s.place(), Cell.NONE);
    }

    /** Fresh water of a rinse. */
    Cell flow(Station s) {
        return flows.getOrDefault(s.place(), Cell.NONE);
    }

    /** Product carried on after the last rinse; has no meaning without one. */
    Cell carried() {
        return carried;
    }
}
