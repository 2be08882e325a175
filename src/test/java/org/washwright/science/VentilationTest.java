package org.washwright.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Dilution, explosion limits and purging. ACGIH: Industrial Ventilation, general ventilation, worked examples, from memory. */
class VentilationTest {

    private static final double ROOM = 293.15;
    private static final double SEVENTY_FAHRENHEIT = (70 + 459.67) / 1.8;
    private static final double ATMOSPHERE = 101_325;
    private static final double CFM = 0.02831684659 / 60;
    private static final double PINT = 473.176473e-6;

    /** m³/h of air for kg/h of solvent, limit in ppm and K, by hand with 24.055 L/mol; within 0.5 %. */
    @ParameterizedTest
    @CsvSource({"acetone, 0.5, 58.08, 500, 3, 1243", "trichloroethylene, 0.1, 131.39, 10, 5, 9154"})
    void airForAHealthLimit(
            String solvent, double kilograms, double gramsPerMole, double ppm, double k, double cubicMetres) {
        double q = DilutionAir.airFlow(kilograms / 3600, gramsPerMole / 1e3, ppm / 1e6, k, ROOM, ATMOSPHERE)
                .value();
        assertEquals(cubicMetres, q * 3600, 0.005 * cubicMetres, solvent);
    }

    /** ACGIH: 1.5 pint/h of 1,1,1-trichloroethane, specific gravity 1.32, 133.4 g/mol, 350 ppm: 285 cfm, times K = 5 1424 cfm. */
    @ParameterizedTest
    @CsvSource({"1, 285", "5, 1424"})
    void theManualsExampleOfMethylChloroform(double k, double cfm) {
        double kilogramsPerSecond = 1.5 * PINT * 1320 / 3600;
        double q = DilutionAir.airFlow(kilogramsPerSecond, 0.1334, 350e-6, k, SEVENTY_FAHRENHEIT, ATMOSPHERE)
                .value();
        assertEquals(cfm, q / CFM, 0.005 * cfm);
    }

    /** The 403 of ACGIH and of the formula sheet of the University of Toledo: ft³ of vapour of a pint, times molar mass over gravity. */
    @Test
    void theConstantFourHundredAndThreeIsTheVapourOfAPint() {
        double perMinute = PINT * 1000 / 60;
        double q = DilutionAir.airFlow(perMinute, 1e-3, 1, 1, SEVENTY_FAHRENHEIT, ATMOSPHERE)
                .value();
        assertEquals(403, q / CFM, 0.005 * 403);
        // The same with 387 ft³ of vapour of a pound-mole.
        double poundMole = DilutionAir.airFlow(0.45359237 / 60, 1e-3, 1, 1, SEVENTY_FAHRENHEIT, ATMOSPHERE)
                .value();
        assertEquals(387, poundMole / CFM, 0.003 * 387);
    }

    /** University of Toledo formula sheet: dilution only for limits of 100 ppm and more; K from 1 to 10. */
    @Test
    void dilutionWarnsWhereExtractionIsMeant() {
        assertEquals(
                "Dilution is meant for limits of 100 ppm and more, not for 10 ppm: enclose the source and extract at it",
                DilutionAir.airFlow(1e-5, 0.13139, 10e-6, 5, ROOM, ATMOSPHERE)
                        .warnings()
                        .get(0));
        assertTrue(DilutionAir.airFlow(1e-5, 0.13139, 100e-6, 10, ROOM, ATMOSPHERE)
                .warnings()
                .isEmpty());
        assertEquals(
                1,
                DilutionAir.permissibleMassRate(1, 0.05808, 500e-6, 12, ROOM, ATMOSPHERE)
                        .warnings()
                        .size());
        assertThrows(
                IllegalArgumentException.class, () -> DilutionAir.airFlow(1e-5, 0.058, 500e-6, 0.5, ROOM, ATMOSPHERE));
        assertThrows(IllegalArgumentException.class, () -> DilutionAir.airFlow(1e-5, 0.058, 500, 3, ROOM, ATMOSPHERE));
    }

    /** ACGIH: 2 pint/h of xylene, gravity 0.88, 106 g/mol, limit 1 %, factor 10, oven at 350 °F: 159 cfm, 243 cfm at the oven. */
    @ParameterizedTest
    @CsvSource({"70, 159", "350, 243"})
    void theManualsExampleOfXylene(double fahrenheit, double cfm) {
        double oven = (350 + 459.67) / 1.8;
        double air = (fahrenheit + 459.67) / 1.8;
        double q = ExplosionDilution.airFlow(2 * PINT * 880 / 3600, 0.106, 0.01, 0.1, oven, air, ATMOSPHERE)
                .value();
        assertEquals(cfm, q / CFM, 0.005 * cfm);
    }

    /** 2 kg/h of 2-propanol to a quarter of 2.0 %: 160 m³/h, by B = 0.7 229 m³/h (by hand with 24.055 L/mol); within 0.5 %. */
    @ParameterizedTest
    @CsvSource({"20, 160", "120, 160", "122, 229"})
    void airForAQuarterOfTheExplosionLimit(double celsius, double cubicMetres) {
        double q = ExplosionDilution.airFlow(
                        2 / 3600.0, 0.0601, 0.02, ExplosionDilution.STEADY, celsius + 273.15, ROOM, ATMOSPHERE)
                .value();
        assertEquals(cubicMetres, q * 3600, 0.005 * cubicMetres);
    }

    /** A quarter of acetone's 2.5 % is 6250 ppm, 12.5 times its limit of 500 ppm: never breathe air kept for fire alone. */
    @Test
    void airForTheExplosionLimitIsFarTooLittleToBreathe() {
        double fire = ExplosionDilution.airFlow(1e-4, 0.05808, 0.025, 0.25, ROOM, ROOM, ATMOSPHERE)
                .value();
        double health =
                DilutionAir.airFlow(1e-4, 0.05808, 500e-6, 1, ROOM, ATMOSPHERE).value();
        assertEquals(12.5, health / fire, 1e-9);
    }

    @Test
    void tooMuchOfTheExplosionLimitOrTooHotWarns() {
        assertTrue(ExplosionDilution.airFlow(1e-4, 0.06, 0.02, 0.5, ROOM, ROOM, ATMOSPHERE)
                .warnings()
                .get(0)
                .startsWith("Usual is a quarter"));
        assertTrue(ExplosionDilution.permissibleMassRate(1, 0.06, 0.02, 0.25, 773.15, ROOM, ATMOSPHERE)
                .warnings()
                .get(0)
                .contains("500 °C"));
        assertThrows(
                IllegalArgumentException.class,
                () -> ExplosionDilution.airFlow(1e-4, 0.06, 0.02, 1, ROOM, ROOM, ATMOSPHERE));
        assertThrows(
                IllegalArgumentException.class,
                () -> ExplosionDilution.airFlow(1e-4, 0.06, 2, 0.25, ROOM, ROOM, ATMOSPHERE));
    }

    @Test
    void permissibleRatesAreTheInverseOfTheAirFlow() {
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            double rate = random.nextDouble() * 1e-3;
            double molar = 0.03 + random.nextDouble() * 0.2;
            double limit = 1e-6 + random.nextDouble() * 1e-3;
            double k = 1 + random.nextDouble() * 9;
            double q =
                    DilutionAir.airFlow(rate, molar, limit, k, ROOM, ATMOSPHERE).value();
            assertEquals(
                    rate,
                    DilutionAir.permissibleMassRate(q, molar, limit, k, ROOM, ATMOSPHERE)
                            .value(),
                    1e-12 * rate);
            double t = 280 + random.nextDouble() * 200;
            double fire = ExplosionDilution.airFlow(rate, molar, 0.02, 0.25, t, ROOM, ATMOSPHERE)
                    .value();
            assertEquals(
                    rate,
                    ExplosionDilution.permissibleMassRate(fire, molar, 0.02, 0.25, t, ROOM, ATMOSPHERE)
                            .value(),
                    1e-12 * rate);
        }
    }

    /**
     * CDC, Guidelines for Environmental Infection Control in Health-Care Facilities (2003), table B.1, from memory: air changes an hour,
     * minutes until 99 % and 99.9 % is removed, in whole minutes.
     */
    @ParameterizedTest
    @CsvSource({
        "2, 138, 207",
        "4, 69, 104",
        "6, 46, 69",
        "8, 35, 52",
        "10, 28, 41",
        "12, 23, 35",
        "15, 18, 28",
        "20, 14, 21",
        "50, 6, 8"
    })
    void purgingTakesAsLongAsTheTableOfAirChanges(double changes, double minutes99, double minutes999) {
        assertEquals(minutes99, purge(changes, 0.01), 0.5);
        assertEquals(minutes999, purge(changes, 0.001), 0.5);
    }

    private static double purge(double changes, double left) {
        return RoomConcentration.timeToReach(0.05 * left, 0.05, 0, 0, 100 * changes / 3600, 100)
                        .orElseThrow()
                / 60;
    }

    /** ASHRAE 62.1-2016, appendix C, from memory: 0.31 L/min of CO2 a person and 7.5 L/s of air end about 700 ppm above outdoors. */
    @Test
    void aPersonRaisesCarbonDioxideBySevenHundredParts() {
        double share = RoomConcentration.steady(400e-6, 0.31e-3 / 60, 7.5e-3).value();
        assertEquals(1100e-6, share, 20e-6);
    }

    /** Ten kilograms of dry ice a quarter hour after each other would pass 5000 ppm in 1000 m³: 10 kg are 5.466 m³ at 20 °C. */
    @Test
    void dryIceInAClosedHall() {
        double gas = GasVolume.volume(10, 0.04401, ROOM, ATMOSPHERE).value();
        assertEquals(
                5466e-6 + 400e-6,
                RoomConcentration.afterRelease(400e-6, gas, 1000).value(),
                1e-6);
        assertEquals(
                5466e-6 + 400e-6,
                RoomConcentration.after(400e-6, 400e-6, gas / 900, 0, 1000, 900).value(),
                1e-6);
    }

    @Test
    void purgingKeepsTheBalanceOfMass() {
        Random random = new Random(11);
        for (int i = 0; i < 50; i++) {
            double start = random.nextDouble() * 0.01;
            double supply = random.nextDouble() * 0.001;
            double release = random.nextDouble() * 1e-3;
            double flow = 0.1 + random.nextDouble();
            double volume = 100 + random.nextDouble() * 1000;
            double time = random.nextDouble() * 7200;
            double end = RoomConcentration.after(start, supply, release, flow, volume, time)
                    .value();
            int steps = 2000;
            double out = 0;
            for (int k = 0; k < steps; k++) {
                double middle = (k + 0.5) * time / steps;
                out += flow
                        * RoomConcentration.after(start, supply, release, flow, volume, middle)
                                .value()
                        * time
                        / steps;
            }
            double in = (release + flow * supply) * time;
            assertEquals(volume * start + in, volume * end + out, 1e-5 * (volume * start + in));
            double middle = RoomConcentration.after(start, supply, release, flow, volume, time / 2)
                    .value();
            assertEquals(
                    time / 2,
                    RoomConcentration.timeToReach(middle, start, supply, release, flow, volume)
                            .orElseThrow(),
                    1e-6 * time + 1e-6);
        }
    }

    @Test
    void whatIsNeverReachedHasNoTime() {
        assertTrue(RoomConcentration.timeToReach(0.02, 0.01, 0, 0, 1, 100).isEmpty());
        assertTrue(RoomConcentration.timeToReach(0, 0.01, 0, 0, 1, 100).isEmpty());
        assertTrue(RoomConcentration.timeToReach(0.005, 0, 0, 1e-3, 1, 100).isEmpty());
        assertEquals(0, RoomConcentration.timeToReach(0.01, 0.01, 0, 0, 1, 100).orElseThrow());
        assertEquals(
                0, RoomConcentration.timeToReach(0.01, 0.01, 0.01, 0, 1, 100).orElseThrow());
    }

    @Test
    void thickMixturesWarnAndNeverPassOne() {
        Estimate steady = RoomConcentration.steady(0, 2, 1);
        assertEquals(1, steady.value());
        assertEquals(1, steady.warnings().size());
        assertTrue(RoomConcentration.after(0.05, 0, 0, 1, 100, 10).warnings().isEmpty());
        assertThrows(IllegalArgumentException.class, () -> RoomConcentration.after(5000, 0, 0, 1, 100, 10));
        assertThrows(IllegalArgumentException.class, () -> RoomConcentration.steady(0, 1, 0));
    }
}
