package org.washwright.line.sizing;

import static org.washwright.line.sizing.FigureGroup.AIR;
import static org.washwright.line.sizing.FigureKind.by;
import static org.washwright.line.sizing.FigureKind.defined;

import java.util.List;
import org.washwright.quantity.Dimension;
import org.washwright.science.DilutionAir;
import org.washwright.science.Estimate;
import org.washwright.science.SolventBalance;
import org.washwright.science.Still;
import org.washwright.science.VapourCondensation;
import org.washwright.task.Value;

/** Solvent: what escapes, what the still hands back, what leaves with its bottoms, and the air that would thin the loss. */
final class SolventUse {

    private static final double ROOM = 293.15;
    private static final double AIR_PRESSURE = 101325;

    static final FigureKind LOSS = defined(
            "solvent-loss",
            "solvent that escapes to the air",
            AIR,
            Dimension.MASS_RATE,
            "kg/h",
            "loss of one closed plant × plants; of an open bath, loss for each area × open surface × baths");
    static final FigureKind FEED = defined(
            "still-feed",
            "solvent through the still",
            AIR,
            Dimension.MASS_RATE,
            "kg/h",
            "oil and grease that come in ÷ oil allowed in the solvent");
    static final FigureKind BOTTOMS = by(
            "still-bottoms",
            "bottoms of the still",
            AIR,
            Dimension.MASS_RATE,
            "kg/h",
            "feed × oil in the feed ÷ oil in the bottoms",
            "mass balance of the still",
            "drained at the oil content assumed");
    static final FigureKind USE = defined(
            "solvent-use",
            "solvent to buy",
            AIR,
            Dimension.MASS_RATE,
            "kg/h",
            "what escapes + what leaves with the bottoms");
    static final FigureKind SHARE = by(
            "solvent-emitted",
            "share of the solvent bought that escapes",
            AIR,
            Dimension.SHARE,
            "%",
            "(input − solvent in waste) ÷ input",
            "solvent balance after Directive 2010/75/EU, annex VII, part 7 (from memory)",
            "no stock change, nothing recovered outside");
    static final FigureKind DILUTION = by(
            "dilution-air",
            "air that would thin the loss to the exposure limit",
            AIR,
            Dimension.AIR_FLOW,
            "m³/h",
            "loss ÷ molar mass × molar volume × mixing factor ÷ limit",
            "ACGIH, Industrial Ventilation, dilution ventilation (from memory); University of Toledo formula sheet",
            "limits of 100 ppm and more; below, enclose and extract");
    static final FigureKind CONDENSED = by(
            "condensed",
            "vapour that condenses on the parts",
            AIR,
            Dimension.MASS_RATE,
            "kg/h",
            "parts and baskets an hour × specific heat × (vapour − hall) ÷ heat of evaporation",
            "heat balance of vapour degreasing",
            "until the parts are as hot as the vapour; then cleaning by vapour ends");

    static final FigureKind PER_AREA = defined(
            "loss-per-area",
            "solvent that escapes for each area",
            AIR,
            Dimension.AREAL_MASS,
            "g/m²",
            "solvent that escapes to the air ÷ area an hour");

    static final List<FigureKind> KINDS = List.of(LOSS, PER_AREA, FEED, BOTTOMS, USE, SHARE, DILUTION, CONDENSED);

    private final Cell loss;
    private final Cell use;
    private final Cell bottoms;
    private final Cell bottomsOil;

    SolventUse(Sheet sheet, String process, Station main, Baths baths, Soil soil, Heat heat) {
        if (!main.medium("waterBased").applies() || main.medium("waterBased").isYes()) {
            loss = Cell.NONE;
            use = Cell.NONE;
            bottoms = Cell.NONE;
            bottomsOil = Cell.NONE;
            return;
        }
        int place = main.place();
        loss = main.station("solventLoss").applies()
                ? sheet.figure(
                        LOSS, place, x -> Estimate.of(x[0] * x[1]), main.station("solventLoss"), baths.number(main))
                : sheet.figure(
                        LOSS,
                        place,
                        x -> Estimate.of(x[0] * x[1] * x[2]),
                        sheet.assumption("open-solvent-loss"),
                        baths.surface(main),
                        baths.number(main));
        sheet.quotient(PER_AREA, loss, sheet.fact("part", "areaPerHour"));
        boolean distils =
                main.medium("distils").isYes() && main.station("solventLoss").applies();
        bottomsOil = sheet.assumption("still-bottoms-oil");
        Cell feed = distils
                ? sheet.figure(
                        FEED, place, x -> Estimate.of(x[0] / x[1]), soil.load(), sheet.assumption("solvent-oil-limit"))
                : Cell.NONE;
        bottoms = sheet.figure(
                BOTTOMS,
                place,
                x -> Still.bottoms(x[0], x[1], x[2]),
                feed,
                sheet.assumption("solvent-oil-limit"),
                bottomsOil);
        use = bottoms.applies()
                ? sheet.figure(USE, 0, x -> Estimate.of(x[0] + x[1] * (1 - x[2])), loss, bottoms, bottomsOil)
                : sheet.figure(USE, 0, x -> Estimate.of(x[0]), loss);
        sheet.figure(
                SHARE,
                0,
                x -> SolventBalance.emission(x[0], 0, x[1], 1 - x[2], 0, 0).then(e -> SolventBalance.share(e, x[0])),
                use,
                bottoms,
                bottomsOil);
        sheet.figure(
                DILUTION,
                place,
                x -> DilutionAir.airFlow(x[0], x[1], x[2], x[3], ROOM, AIR_PRESSURE),
                loss,
                main.medium("molarMass"),
                sheet.fact("process/" + process, "exposureShare"),
                sheet.assumption("mixing-factor"));
        if (main.technique("vapour").isYes()) {
            sheet.figure(
                    CONDENSED,
                    place,
                    x -> VapourCondensation.massRate(x[0], x[1], Math.max(0, x[2] - x[3]), x[4]),
                    heat.massRate(),
                    heat.specificHeat(),
                    main.temperature(),
                    sheet.assumption("part-temperature-in"),
                    main.medium("latentHeat"));
        }
    }

    /** Solvent to buy; has no meaning for a process in water. */
    Cell use() {
        return use;
    }

    /** Solvent that escapes. */
    Cell loss() {
        return loss;
    }

    /** Bottoms of the still. */
    Cell bottoms() {
        return bottoms;
    }

    /** Solvent that leaves with the bottoms, at the middle of every range. */
    double inBottoms() {
        return bottoms.value() instanceof Value.Number ? bottoms.middle() * (1 - bottomsOil.middle()) : 0;
    }
}
