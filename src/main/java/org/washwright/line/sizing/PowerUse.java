package org.washwright.line.sizing;

import static org.washwright.line.sizing.FigureGroup.POWER;
import static org.washwright.line.sizing.FigureKind.by;
import static org.washwright.line.sizing.FigureKind.defined;

import java.util.ArrayList;
import java.util.List;
import org.washwright.quantity.Dimension;
import org.washwright.science.Estimate;
import org.washwright.science.UltrasonicPower;

/** Electric power to install and at work, and the people at the line. */
final class PowerUse {

    static final FigureKind SOUND = by(
            "sound-power",
            "power of the ultrasonics",
            POWER,
            Dimension.POWER,
            "kW",
            "usual power for each volume × volume × baths",
            "Metal Finishing Guidebook 2013, page 75, and device manuals: 80 W/gal in small tanks, falling to 20 W/gal from 50 gal",
            "water near 40 kHz");
    static final FigureKind DRIVES = defined(
            "drives", "pumps, vacuum and drives", POWER, Dimension.POWER, "kW", "power of one station × stations");
    static final FigureKind INSTALLED = defined(
            "power-installed",
            "electric power to install",
            POWER,
            Dimension.POWER,
            "kW",
            "heating to install + dryers + ultrasonics + drives + fans");
    static final FigureKind WORK = defined(
            "power-work",
            "electric power at work",
            POWER,
            Dimension.POWER,
            "kW",
            "heat at work ÷ efficiency + dryers + ultrasonics + drives + fans");
    static final FigureKind PER_AREA = defined(
            "energy-per-area",
            "electric energy for each area",
            POWER,
            Dimension.HEAT_PER_AREA,
            "kWh/m²",
            "electric power at work ÷ area an hour");
    static final FigureKind PEOPLE = defined(
            "people",
            "people at the line",
            POWER,
            Dimension.RATIO,
            "",
            "loads an hour × (filling and emptying + time at stations worked by hand)");

    static final List<FigureKind> KINDS = List.of(SOUND, DRIVES, INSTALLED, WORK, PER_AREA, PEOPLE);

    private final Cell work;
    private final Cell people;

    PowerUse(
            Sheet sheet,
            List<Station> stations,
            Throughput throughput,
            Baths baths,
            Heat heat,
            Drying drying,
            AirUse air) {
        List<Cell> always = new ArrayList<>();
        List<Cell> byHand = new ArrayList<>();
        for (Station s : stations) {
            if (s.technique("sound").isYes()) {
                always.add(sheet.figure(
                        SOUND,
                        s.place(),
                        x -> UltrasonicPower.usualPowerDensity(x[0]).then(p -> Estimate.of(p * x[0] * x[1])),
                        baths.volume(s),
                        baths.number(s)));
            }
            Cell drives =
                    sheet.figure(DRIVES, s.place(), x -> Estimate.of(x[0] * x[1]), s.station("power"), baths.number(s));
            always.add(Sheet.perhaps(drives, s.certain()));
            if (s.station("manual").isYes()) {
                byHand.add(s.station("eachPart").isYes() ? sheet.times(s.time(), throughput.parts()) : s.time());
            }
        }
        always.addAll(drying.heats());
        always.add(air.fans());
        List<Cell> install = new ArrayList<>(always);
        List<Cell> atWork = new ArrayList<>(always);
        Cell efficiency = sheet.assumption("heating-efficiency");
        for (Heat.Bath b : heat.baths()) {
            install.add(Sheet.perhaps(b.installed(), b.station().certain()));
            Cell electric = sheet.over(b.work(), efficiency);
            atWork.add(Sheet.perhaps(electric, b.station().certain()));
        }
        sheet.sum(INSTALLED, 0, install);
        work = sheet.sum(WORK, 0, atWork);
        sheet.quotient(PER_AREA, work, sheet.fact("part", "areaPerHour"));
        byHand.add(sheet.assumption("handling-time"));
        Cell each = sheet.add(byHand);
        people = sheet.figure(PEOPLE, 0, x -> Estimate.of(x[0] * x[1]), throughput.loads(), each);
    }

    /** Electric power at work. */
    Cell work() {
        return work;
    }

    /** People at the line. */
    Cell people() {
        return people;
    }
}
