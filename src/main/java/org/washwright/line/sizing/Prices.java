package org.washwright.line.sizing;

import static org.washwright.line.sizing.FigureGroup.COST;
import static org.washwright.line.sizing.FigureKind.by;
import static org.washwright.line.sizing.FigureKind.defined;

import java.util.ArrayList;
import java.util.List;
import org.washwright.quantity.Dimension;
import org.washwright.science.Annuity;
import org.washwright.science.Estimate;
import org.washwright.science.SixTenthsRule;

/** Investment, cost a year by kind, and what a part costs. */
final class Prices {

    private static final double YEAR = 365 * 24 * 3600.0;

    static final FigureKind STATIONS = by(
            "investment-stations",
            "price of the stations",
            COST,
            Dimension.MONEY,
            "€",
            "price of one at the basket it is quoted for × (room of a load ÷ that basket) to the power 0.6 × stations",
            "six-tenths rule, Williams 1947 (from memory)",
            "order of size only; quotes decide");
    static final FigureKind INVESTMENT = defined(
            "investment",
            "investment",
            COST,
            Dimension.MONEY,
            "€",
            "(price of the stations + control and transport) × (1 + planning and building in)");
    static final FigureKind CLASS = defined(
            "investment-class",
            "class of investment",
            COST,
            Dimension.MONEY,
            "€",
            "the steps of the series 1, 2, 5, 10 between which the investment lies");
    static final FigureKind HOURS = defined(
            "hours",
            "hours at work a year",
            COST,
            Dimension.TIME,
            "h",
            "parts a year ÷ parts an hour; else the usual hours");
    static final FigureKind PARTS = defined(
            "annual-parts", "parts a year", COST, Dimension.RATIO, "", "as given; else parts an hour × hours a year");
    static final FigureKind CAPITAL = by(
            "cost-capital",
            "capital",
            COST,
            Dimension.PRICE_PER_TIME,
            "€/year",
            "investment × i (1 + i)ⁿ ÷ ((1 + i)ⁿ − 1)",
            "annuity, textbook",
            "");
    static final FigureKind MAINTENANCE = defined(
            "cost-maintenance", "maintenance", COST, Dimension.PRICE_PER_TIME, "€/year", "investment × share a year");
    static final FigureKind LABOUR =
            defined("cost-labour", "labour", COST, Dimension.PRICE_PER_TIME, "€/year", "people × hours a year × wage");
    static final FigureKind ENERGY = defined(
            "cost-energy",
            "energy",
            COST,
            Dimension.PRICE_PER_TIME,
            "€/year",
            "electric power at work × hours a year × price");
    static final FigureKind CHEMISTRY = defined(
            "cost-chemistry",
            "chemistry",
            COST,
            Dimension.PRICE_PER_TIME,
            "€/year",
            "(product × its price + solvent × its price + gas × its price) × hours a year");
    static final FigureKind WATER = defined(
            "cost-water",
            "water and waste water",
            COST,
            Dimension.PRICE_PER_TIME,
            "€/year",
            "(fresh water × price of its quality + waste water × price) × hours a year");
    static final FigureKind WASTE = defined(
            "cost-waste",
            "waste",
            COST,
            Dimension.PRICE_PER_TIME,
            "€/year",
            "(baths thrown away + bottoms + oil parted) × price of disposal × hours a year");
    static final FigureKind TOTAL =
            defined("cost-total", "cost a year", COST, Dimension.PRICE_PER_TIME, "€/year", "sum of its kinds");
    static final FigureKind PART =
            defined("cost-per-part", "cost of a part", COST, Dimension.MONEY, "€", "cost a year ÷ parts a year");
    static final FigureKind AREA = defined(
            "cost-per-area",
            "cost of an area",
            COST,
            Dimension.PRICE_PER_AREA,
            "€/m²",
            "cost a year ÷ (area an hour × hours a year)");

    static final List<FigureKind> KINDS = List.of(
            STATIONS,
            INVESTMENT,
            CLASS,
            HOURS,
            PARTS,
            CAPITAL,
            MAINTENANCE,
            LABOUR,
            ENERGY,
            CHEMISTRY,
            WATER,
            WASTE,
            TOTAL,
            PART,
            AREA);

    /** Kinds of cost, in the order in which they are stacked. */
    static final List<FigureKind> BY_KIND = List.of(CAPITAL, MAINTENANCE, LABOUR, ENERGY, CHEMISTRY, WATER, WASTE);

    private final Sheet sheet;
    private final Cell hours;

    Prices(Sheet sheet, List<Station> stations, Throughput throughput, Baths baths, Running running) {
        this.sheet = sheet;
        Cell investment = investment(stations, throughput, baths);
        sheet.range(CLASS, 0, x -> step(x, false), x -> step(x, true), investment);
        Cell rate = sheet.fact("part", "rate");
        Cell quantity = sheet.fact("part", "annualQuantity");
        Cell usual = sheet.assumption("hours-per-year");
        hours = quantity.applies()
                ? sheet.figure(HOURS, 0, x -> Estimate.of(x[0] * YEAR / x[1]), quantity, rate)
                : sheet.figure(HOURS, 0, x -> Estimate.of(x[0]), usual);
        Cell parts = quantity.applies()
                ? sheet.figure(PARTS, 0, x -> Estimate.of(x[0] * YEAR), quantity)
                : sheet.figure(PARTS, 0, x -> Estimate.of(x[0] * x[1]), rate, hours);
        List<Cell> costs = new ArrayList<>();
        costs.add(sheet.figure(
                CAPITAL,
                0,
                x -> Annuity.factor(x[1], x[2] / YEAR).then(a -> Estimate.of(x[0] * a / YEAR)),
                investment,
                sheet.assumption("interest"),
                sheet.assumption("plant-life")));
        costs.add(sheet.figure(
                MAINTENANCE, 0, x -> Estimate.of(x[0] * x[1] / YEAR), investment, sheet.assumption("maintenance")));
        costs.add(sheet.figure(
                LABOUR,
                0,
                x -> Estimate.of(x[0] * x[1] * x[2] / YEAR),
                running.people(),
                hours,
                sheet.assumption("wage")));
        costs.add(yearly(ENERGY, sheet.times(running.power(), sheet.assumption("electricity-price"))));
        costs.add(yearly(CHEMISTRY, running.chemistry()));
        costs.add(yearly(WATER, running.water()));
        costs.add(yearly(WASTE, running.waste()));
        Cell total = sheet.sum(TOTAL, 0, costs);
        sheet.figure(PART, 0, x -> Estimate.of(x[0] * YEAR / x[1]), total, parts);
        sheet.figure(
                AREA,
                0,
                x -> Estimate.of(x[0] * YEAR / (x[1] * x[2])),
                total,
                sheet.fact("part", "areaPerHour"),
                hours);
    }

    /** The step of the series 1, 2, 5, 10 at or below a price, or the next above it. */
    private static double step(double price, boolean above) {
        if (price <= 0) {
            return 0;
        }
        double decade = StrictMath.pow(10, Math.floor(StrictMath.log10(price)));
        double[] steps = {decade, 2 * decade, 5 * decade, 10 * decade};
        double below = decade;
        for (double s : steps) {
            if (s > price) {
                return above ? s : below;
            }
            below = s;
        }
        return below;
    }

    private Cell investment(List<Station> stations, Throughput throughput, Baths baths) {
        List<Cell> all = new ArrayList<>();
        for (Station s : stations) {
            all.add(Sheet.perhaps(
                    sheet.figure(
                            STATIONS,
                            s.place(),
                            x -> SixTenthsRule.cost(x[0], x[1], x[2], x[3]).then(c -> Estimate.of(c * x[4])),
                            s.station("price"),
                            sheet.assumption("priced-basket"),
                            throughput.volume(),
                            sheet.assumption("price-exponent"),
                            baths.number(s)),
                    s.certain()));
        }
        Cell prices = sheet.add(all);
        return sheet.figure(
                INVESTMENT,
                0,
                x -> Estimate.of((x[0] + x[1]) * (1 + x[2])),
                prices,
                sheet.assumption("plant-base-price"),
                sheet.assumption("planning-share"));
    }

    /** Cost a year of what costs so much an hour at work. */
    private Cell yearly(FigureKind kind, Cell perTime) {
        return sheet.figure(kind, 0, x -> Estimate.of(x[0] * x[1] / YEAR), perTime, hours);
    }
}
