package org.washwright.line.sizing;

import java.util.ArrayList;
import java.util.List;

/**
 * What a line costs while it works, in € for each second.
 *
 * @param people people at it
 * @param power electric power
 * @param chemistry product, solvent and gas
 * @param water fresh water and waste water
 * @param waste what is disposed of
 */
record Running(Cell people, Cell power, Cell chemistry, Cell water, Cell waste) {

    private static final double DENSITY = 1000;

    static Running of(
            Sheet sheet,
            List<Station> stations,
            PowerUse power,
            WaterUse water,
            Soil soil,
            Chemistry chemistry,
            SolventUse solvent) {
        return new Running(
                power.people(),
                power.work(),
                chemistry(sheet, stations, chemistry, solvent),
                water(sheet, water, soil),
                waste(sheet, soil, solvent));
    }

    private static Cell chemistry(Sheet sheet, List<Station> stations, Chemistry chemistry, SolventUse solvent) {
        List<Cell> all = new ArrayList<>();
        all.add(sheet.times(chemistry.all(), sheet.assumption("product-price")));
        for (Station s : stations) {
            if (s.main()) {
                all.add(sheet.times(solvent.use(), s.medium("price").or(sheet.assumption("solvent-price"))));
                all.add(sheet.times(s.own("gasUse"), s.medium("price").or(sheet.assumption("gas-price"))));
            }
        }
        return sheet.add(all);
    }

    private static Cell water(Sheet sheet, WaterUse water, Soil soil) {
        List<Cell> all = new ArrayList<>();
        Cell tap = sheet.assumption("water-price");
        for (WaterUse.Bath b : water.wet()) {
            Cell price = b.station().water("price").or(tap);
            all.add(Sheet.perhaps(sheet.times(b.fresh(), price), b.station().certain()));
        }
        for (Soil.Bath b : soil.baths()) {
            all.add(Sheet.perhaps(sheet.times(b.dumped(), tap), b.station().certain()));
        }
        all.add(sheet.times(water.runOff(), sheet.assumption("waste-water-price")));
        return sheet.add(all);
    }

    private static Cell waste(Sheet sheet, Soil soil, SolventUse solvent) {
        List<Cell> all = new ArrayList<>();
        Cell price = sheet.assumption("waste-price");
        for (Soil.Bath b : soil.baths()) {
            Cell mass = sheet.scaled(b.dumped(), DENSITY);
            all.add(Sheet.perhaps(sheet.times(mass, price), b.station().certain()));
        }
        all.add(sheet.times(solvent.bottoms(), price));
        return sheet.add(all);
    }
}
