package org.washwright.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Evaporation, humid air, drying and condensing. */
class DryingTest {

    private static final double ATMOSPHERE = 101_325;

    /**
     * Steam tables by temperature (IAPWS-95, as in Çengel and Boles, Thermodynamics, table A-4, from memory), kJ/kg.
     */
    @ParameterizedTest
    @CsvSource({
        "0.01, 2500.9",
        "10, 2477.2",
        "20, 2453.5",
        "30, 2429.8",
        "40, 2406.0",
        "50, 2382.0",
        "60, 2357.7",
        "70, 2333.0",
        "80, 2308.0",
        "90, 2282.5",
        "100, 2256.4",
        "110, 2229.7",
        "120, 2202.1",
        "130, 2173.7",
        "140, 2144.3",
        "150, 2113.8",
        "200, 1939.8",
        "250, 1715.3",
        "300, 1404.8",
        "350, 892.7",
    })
    void waterTakesTheHeatOfTheSteamTables(double celsius, double kilojoule) {
        Estimate heat = WaterLatentHeat.at(StrictMath.max(273.16, celsius + 273.15));
        assertEquals(kilojoule, heat.value() / 1e3, 0.001 * kilojoule);
        assertTrue(heat.warnings().isEmpty());
    }

    @Test
    void theHeatOfEvaporationEndsAtTheCriticalPointAndWarnsOutside() {
        assertEquals(0, WaterLatentHeat.at(647.096).value());
        assertEquals(0, WaterLatentHeat.at(700).value());
        assertEquals(1, WaterLatentHeat.at(700).warnings().size());
        assertEquals(1, WaterLatentHeat.at(270).warnings().size());
        assertEquals(WaterLatentHeat.at(200).value(), WaterLatentHeat.at(20).value());
        double before = WaterLatentHeat.at(260).value();
        for (double t = 262; t < 647; t += 2) {
            double now = WaterLatentHeat.at(t).value();
            assertTrue(now < before, t + " K");
            before = now;
        }
        assertThrows(RefusedInput.class, () -> WaterLatentHeat.at(0));
    }

    /** The slope of the vapour pressure against the difference of two values of the printed equation. */
    @Test
    void theSlopeOfTheVapourPressureIsItsDerivative() {
        for (double t = 280; t < 640; t += 7) {
            double rise = (WaterVapourPressure.pressure(t + 0.01).value()
                            - WaterVapourPressure.pressure(t - 0.01).value())
                    / 0.02;
            assertEquals(rise, WaterVapourPressure.slope(t), 1e-6 * rise);
        }
    }

    /**
     * By hand from 0.62198 p / (P - p) and the pressures of steam tables (from memory), 2.339, 7.385, 19.946, 31.201
     * and 47.414 kPa.
     */
    @ParameterizedTest
    @CsvSource({"20, 0.014697", "40, 0.048896", "60, 0.15245", "70, 0.27674", "80, 0.54702"})
    void airHoldsTheWaterOfTheFormula(double celsius, double ratio) {
        assertEquals(ratio, HumidAir.saturated(celsius + 273.15, ATMOSPHERE).value(), 0.0003 * ratio);
    }

    /** ASHRAE Handbook Fundamentals 2017, psychrometrics, table 2, saturated air at 101.325 kPa (from memory). */
    @ParameterizedTest
    @CsvSource({
        "5, 0.005424, 0.006",
        "10, 0.007661, 0.006",
        "15, 0.010692, 0.006",
        "20, 0.014758, 0.006",
        "25, 0.020170, 0.006",
        "30, 0.027329, 0.006",
        "40, 0.049141, 0.006",
        "50, 0.086858, 0.006",
        "60, 0.15354, 0.011",
        "70, 0.27916, 0.011",
        "80, 0.55295, 0.016",
    })
    void saturatedAirIsThatOfTheHandbook(double celsius, double ratio, double tolerance) {
        assertEquals(ratio, HumidAir.saturated(celsius + 273.15, ATMOSPHERE).value(), tolerance * ratio);
    }

    /**
     * Half saturated air of 20 °C: 0.00726 kg/kg (psychrometric chart, from memory); with Washwright's own pressure of
     * water.
     */
    @Test
    void humidAirIsAShareOfSaturation() {
        double p = WaterVapourPressure.pressure(293.15).value();
        assertEquals(0.00726, HumidAir.humidityRatio(p / 2, ATMOSPHERE).value(), 3e-5);
        assertEquals(0, HumidAir.humidityRatio(0, ATMOSPHERE).value());
    }

    @Test
    void whereWaterBoilsThereIsNoAirLeft() {
        Estimate boiling = HumidAir.saturated(380, ATMOSPHERE);
        assertEquals(Double.POSITIVE_INFINITY, boiling.value());
        assertEquals(
                "Water boils at this temperature and pressure: steam drives the air away",
                boiling.warnings().get(0));
        assertEquals(Double.POSITIVE_INFINITY, HumidAir.humidityRatio(5e3, 5e3).value());
        assertThrows(RefusedInput.class, () -> HumidAir.humidityRatio(5001, 5e3));
        assertEquals(1, HumidAir.saturated(260, ATMOSPHERE).warnings().size());
        assertThrows(RefusedInput.class, () -> EvaporationFromWater.massRate(1, 0, boiling.value(), 0.01));
        // Exactly at the limit the printed form still holds.
        assertTrue(EvaporationFromWater.massRate(1, 0, 0.28, 0.01).warnings().isEmpty());
    }

    /** The Engineering ToolBox, evaporation from water surface, examples: m/s, m², difference of ratios, kg/h. */
    @ParameterizedTest
    @CsvSource({"2, 10, 0.02, 12.6", "2, 5, 0.01, 3.15"})
    void waterEvaporatesAsInThePrintedExamples(double velocity, double area, double difference, double kilograms) {
        assertEquals(
                kilograms,
                EvaporationFromWater.massRate(area, velocity, 0.01 + difference, 0.01)
                                .value()
                        * 3600,
                1e-9);
    }

    /**
     * 1 m² under air of 20 °C, half saturated: °C, m/s, kg/h and kW by hand. At 80 °C with 2308 kJ/kg, and with a
     * warning.
     */
    @ParameterizedTest
    @CsvSource({"60, 0, 3.63, 2.38, 0", "60, 0.5, 5.01, 3.28, 0", "80, 0.2, 15.5, 9.94, 1"})
    void openBathsEvaporate(double celsius, double velocity, double kilograms, double kilowatt, int warnings) {
        double t = celsius + 273.15;
        double room = HumidAir.humidityRatio(
                        WaterVapourPressure.pressure(293.15).value() / 2, ATMOSPHERE)
                .value();
        Estimate rate = EvaporationFromWater.massRate(
                1, velocity, HumidAir.saturated(t, ATMOSPHERE).value(), room);
        assertEquals(kilograms, rate.value() * 3600, 0.005 * kilograms);
        assertEquals(warnings, rate.warnings().size());
        assertEquals(kilowatt, rate.value() * WaterLatentHeat.at(t).value() / 1e3, 0.01 * kilowatt);
    }

    /** At 60 °C the formula says 14 % more than the table of open tanks; published models differ by up to 30 %. */
    @Test
    void twoPublishedModelsOfOneSurfaceDifferByFourteenPerCent() {
        double room = HumidAir.humidityRatio(
                        WaterVapourPressure.pressure(293.15).value() / 2, ATMOSPHERE)
                .value();
        double formula = EvaporationFromWater.massRate(
                                1, 0, HumidAir.saturated(333.15, ATMOSPHERE).value(), room)
                        .value()
                * WaterLatentHeat.at(333.15).value();
        assertEquals(1.14, formula / TankSurfaceLoss.evaporative(333.15).value(), 0.01);
    }

    @Test
    void moistAirTakesUpNothing() {
        Estimate none = EvaporationFromWater.massRate(1, 0.5, 0.01, 0.02);
        assertEquals(0, none.value());
        assertEquals(
                "The air is moister than the air at the water: nothing evaporates, water condenses",
                none.warnings().get(0));
        assertTrue(EvaporationFromWater.massRate(1, 0.5, 0.01, 0.01).warnings().isEmpty());
    }

    /** 70 to 95 % blown off: common practice, no source. A film of 0.1 L/m² keeps 0.03 to 0.005. */
    @ParameterizedTest
    @CsvSource({"0.70, 0.03, 0", "0.95, 0.005, 0", "0.99, 0.001, 1", "0, 0.1, 0"})
    void blowingOffLeavesSome(double removed, double litres, int warnings) {
        Estimate left = BlowOff.left(0.1e-3, removed);
        assertEquals(litres, left.value() * 1e3, 1e-12);
        assertEquals(
                warnings > 0 ? List.of("Blowing off removes 70 to 95 % as a rule, not 99 %") : List.of(),
                left.warnings());
        assertThrows(RefusedInput.class, () -> BlowOff.left(0.1, 1 + removed + 1e-9));
    }

    /** 1 kg of steel (490 J/(kg K)) that cools by 40 K gives 19.6 kJ: 8.2 g of water at 2400 kJ/kg, by hand. */
    @Test
    void aPartDriesWithItsOwnHeat() {
        assertEquals(8.2, VacuumDrying.evaporatedByOwnHeat(1, 490, 40, 2.4e6).value() * 1e3, 0.05);
        assertEquals(0, VacuumDrying.evaporatedByOwnHeat(1, 490, 0, 2.4e6).value());
        assertThrows(RefusedInput.class, () -> VacuumDrying.evaporatedByOwnHeat(1, 490, 40, 0));
    }

    /**
     * kg of condensate on 100 kg of steel (490 J/(kg K)) from 20 °C: boiling points and latent heats in kJ/kg as in the
     * CRC Handbook and data files of the open library `chemicals`; by hand.
     */
    @ParameterizedTest
    @CsvSource({
        "trichloroethylene, 87.2, 239.0, 13.78",
        "tetrachloroethylene, 121.3, 209.1, 23.74",
        "n-propyl bromide, 71.0, 242.6, 10.30",
        "dichloromethane, 39.8, 330.4, 2.936",
        "acetone, 56.1, 501.0, 3.531",
        "2-propanol, 82.3, 663.1, 4.604",
    })
    void vapourCondensesOnColdParts(String solvent, double boiling, double latent, double kilograms) {
        double found = VapourCondensation.massRate(100, 490, boiling - 20, latent * 1e3)
                .value();
        assertEquals(kilograms, found, 0.0005 * kilograms, solvent);
        // The same balance the other way round dries the part.
        assertEquals(
                found,
                VacuumDrying.evaporatedByOwnHeat(100, 490, boiling - 20, latent * 1e3)
                        .value(),
                1e-9);
        assertThrows(RefusedInput.class, () -> VapourCondensation.massRate(100, 490, 60, 0));
    }
}
