package org.washwright.line.sizing;

import static org.washwright.line.sizing.FigureGroup.UPKEEP;
import static org.washwright.line.sizing.FigureKind.by;
import static org.washwright.line.sizing.FigureKind.defined;

import java.util.ArrayList;
import java.util.List;
import org.washwright.quantity.Dimension;
import org.washwright.science.Dosing;
import org.washwright.science.Estimate;
import org.washwright.science.Titration;

/** Product of the working baths: what is carried out and thrown away with them, and how it is measured and topped up. */
final class Chemistry {

    /** A litre of bath weighs about a kilogram, so grams in a litre over this are a share. */
    private static final double BATH_DENSITY = 1000;

    static final FigureKind USED = defined(
            "product-use",
            "product to top up and to make new baths",
            UPKEEP,
            Dimension.MASS_RATE,
            "kg/h",
            "product in the bath × (liquid carried out + bath thrown away)");
    static final FigureKind ALL =
            defined("product-all", "product of the line", UPKEEP, Dimension.MASS_RATE, "kg/h", "sum over the baths");
    static final FigureKind DOSE = by(
            "dose",
            "product that lifts one bath from its lower limit to its setting",
            UPKEEP,
            Dimension.VOLUME,
            "L",
            "volume × (setting − lower limit) ÷ (product as delivered − setting), strengths as shares",
            "mixing balance",
            "product as delivered taken as undiluted");
    static final FigureKind TITRANT = by(
            "titrant",
            "titrant at the setting, in millilitres",
            UPKEEP,
            Dimension.RATIO,
            "",
            "product in the bath ÷ product that one millilitre shows",
            "titration with the supplier's factor",
            "the factor is the product's own; take it from its data sheet");

    static final List<FigureKind> KINDS = List.of(USED, ALL, DOSE, TITRANT);

    private final Cell all;

    Chemistry(Sheet sheet, List<Station> stations, Baths sizes, WaterUse water, Soil soil) {
        List<Cell> used = new ArrayList<>();
        for (Station s : stations) {
            Cell strength = s.setting("concentration");
            if (!s.watery() || !strength.applies()) {
                continue;
            }
            Cell carried = water.of(s).map(WaterUse.Bath::out).orElse(Cell.NONE);
            Cell dumped = soil.baths().stream()
                    .filter(b -> b.station().place() == s.place())
                    .map(Soil.Bath::dumped)
                    .findFirst()
                    .orElse(Cell.NONE);
            Cell product = dumped.applies()
                    ? sheet.figure(USED, s.place(), x -> Estimate.of(x[0] * (x[1] + x[2])), strength, carried, dumped)
                    : sheet.figure(USED, s.place(), x -> Estimate.of(x[0] * x[1]), strength, carried);
            used.add(Sheet.perhaps(product, s.certain()));
            sheet.figure(
                    DOSE,
                    s.place(),
                    x -> Dosing.productVolume(
                            x[0], Math.min(x[1], x[2]) / BATH_DENSITY, Math.max(x[1], x[2]) / BATH_DENSITY, 1),
                    sizes.volume(s),
                    s.lowest("concentration"),
                    strength);
            sheet.figure(TITRANT, s.place(), x -> Titration.titrant(x[0], x[1]), strength, s.medium("titration"));
        }
        all = sheet.sum(ALL, 0, used);
    }

    /** Product of the line. */
    Cell all() {
        return all;
    }
}
