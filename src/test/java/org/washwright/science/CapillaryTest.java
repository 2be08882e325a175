package org.washwright.science;

import static java.lang.StrictMath.toRadians;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bores, gaps and blind holes. "By hand": worked with the textbook formula outside the program, within 0.5 %. */
class CapillaryTest {

    private static final double ATMOSPHERE = 101_325;

    /** Pa, by hand. */
    @ParameterizedTest
    @CsvSource({"72.8, 30, 0.25, 504", "30, 0, 0.25, 240"})
    void aBoreDrawsALiquidIn(double milli, double degrees, double millimetres, double pascal) {
        double p = CapillaryPressure.cylinder(milli / 1e3, toRadians(degrees), millimetres / 1e3)
                .value();
        assertEquals(pascal, p, 0.005 * pascal);
        // A gap as wide as the bore's radius draws as strongly.
        assertEquals(
                p,
                CapillaryPressure.gap(milli / 1e3, toRadians(degrees), millimetres / 1e3)
                        .value());
    }

    /**
     * Mercury porosimetry: pore diameter in µm = 180.8 / pressure in psi for 485 mN/m and 130° (Webb and Orr, Analytical Methods in Fine
     * Particle Technology, 1997, from memory).
     */
    @ParameterizedTest
    @CsvSource({"1, 180.8", "10, 18.08", "100, 1.808"})
    void mercuryIsKeptOutByThePressureOfPorosimetry(double micrometres, double psi) {
        double p = CapillaryPressure.cylinder(0.485, toRadians(130), micrometres / 2e6)
                .value();
        assertEquals(-psi, p / 6894.757293168, 0.001 * psi);
    }

    @Test
    void wideBoresAndMolecularPoresWarn() {
        assertEquals(
                "Capillary pressure by Young and Laplace holds from 0.01 µm to 2000 µm, not at 5000 µm",
                CapillaryPressure.cylinder(0.03, 0, 5e-3).warnings().get(0));
        assertEquals(1, CapillaryPressure.gap(0.03, 0, 1e-9).warnings().size());
        assertThrows(IllegalArgumentException.class, () -> CapillaryPressure.cylinder(0.03, -0.1, 1e-3));
        assertThrows(IllegalArgumentException.class, () -> CapillaryPressure.gap(0.03, 0, 0));
    }

    /** mm: the first by hand; the others a figure of encyclopedias and textbooks (from memory): 70 mm at 0.2 mm radius. */
    @ParameterizedTest
    @CsvSource({"0.5, 72.8, 29.7", "0.2, 72.8, 74", "1, 72.8, 14.8"})
    void waterClimbsInANarrowTube(double millimetres, double milli, double height) {
        Estimate h = JurinRise.height(milli / 1e3, 0, 1000, millimetres / 1e3);
        assertEquals(height, h.value() * 1e3, 0.005 * height);
        assertTrue(h.warnings().isEmpty());
    }

    /** Capillary length of water 2.7 mm (de Gennes, Brochard-Wyart, Quéré 2004, from memory). */
    @Test
    void aTubeWiderThanTheCapillaryLengthWarns() {
        assertEquals(
                "Jurin's height holds for bores narrower than the capillary length of 2.727 mm in radius, not for 20 mm",
                JurinRise.height(0.0728, 0, 998.2, 20e-3).warnings().get(0));
        assertThrows(IllegalArgumentException.class, () -> JurinRise.height(0.0728, 0, 0, 1e-3));
    }

    /** Jurin's height is where capillary pressure and weight balance. */
    @Test
    void heightAndPressureAreTheSameThing() {
        for (double r = 1e-5; r < 1e-3; r *= 1.7) {
            double h = JurinRise.height(0.05, 0.4, 900, r).value();
            assertEquals(CapillaryPressure.cylinder(0.05, 0.4, r).value(), 900 * 9.80665 * h, 1e-9 / r);
        }
    }

    /** mm after 1 s in a bore of 50 µm radius, water of 20 °C, by hand. */
    @ParameterizedTest
    @CsvSource({"72.8, 20, 41.3", "30, 0, 27.4"})
    void aWettingLiquidCreepsInByTheRootOfTime(double milli, double degrees, double millimetres) {
        double length = WashburnPenetration.length(50e-6, milli / 1e3, toRadians(degrees), 1.002e-3, 1)
                .value();
        assertEquals(millimetres, length * 1e3, 0.005 * millimetres);
    }

    /** 0.527 s for 30 mm, by hand. */
    @Test
    void thirtyMillimetresTakeHalfASecond() {
        assertEquals(
                0.527,
                WashburnPenetration.time(50e-6, 0.0728, toRadians(20), 1.002e-3, 0.03)
                        .value(),
                0.003);
    }

    @Test
    void lengthAndTimeLeadBack() {
        for (double t = 1e-3; t < 1e4; t *= 3.3) {
            double length =
                    WashburnPenetration.length(20e-6, 0.03, 0.5, 1e-3, t).value();
            assertEquals(
                    t, WashburnPenetration.time(20e-6, 0.03, 0.5, 1e-3, length).value(), 1e-12 * t);
        }
    }

    @Test
    void aLiquidThatDoesNotWetNeverEnters() {
        Estimate length = WashburnPenetration.length(50e-6, 0.0728, toRadians(110), 1e-3, 60);
        assertEquals(0, length.value());
        assertTrue(length.warnings().get(0).startsWith("A liquid with a contact angle of 110° is not drawn in"));
        assertTrue(Double.isInfinite(WashburnPenetration.time(50e-6, 0.0728, StrictMath.PI / 2, 1e-3, 0.01)
                .value()));
        assertEquals(
                1, WashburnPenetration.length(1e-3, 0.03, 0, 1e-3, 1).warnings().size());
        assertThrows(IllegalArgumentException.class, () -> WashburnPenetration.length(50e-6, 0.03, 0, 1e-3, -1));
    }

    /** Per cent filled, by hand: water, mouth 0.5 m deep, without and with the 40 Pa of a 3 mm hole under 30 mN/m. */
    @ParameterizedTest
    @CsvSource({"0.5, 0, 4.61", "0.5, 40, 4.64"})
    void aHoleWithItsMouthDownHardlyFills(double depth, double capillary, double percent) {
        assertEquals(
                percent,
                TrappedAir.filledShare(998.2, depth, capillary, ATMOSPHERE).value() * 100,
                0.01);
    }

    /** US Navy Diving Manual (from memory): in sea water air is halved at 33 ft, a third is left at 66, a quarter at 99. */
    @ParameterizedTest
    @CsvSource({"33, 0.5, 1", "66, 0.6667, 1", "99, 0.75, 1", "16.5, 0.3333, 0"})
    void airIsPressedTogetherAsADiversIs(double feet, double filled, int warnings) {
        Estimate share = TrappedAir.filledShare(1025, feet * 0.3048, 0, ATMOSPHERE);
        assertEquals(filled, share.value(), 0.002);
        assertEquals(warnings, share.warnings().size());
    }

    @Test
    void aBathThatDoesNotWetFillsNothing() {
        Estimate share = TrappedAir.filledShare(1000, 0.01, -500, ATMOSPHERE);
        assertEquals(0, share.value());
        assertEquals(1, share.warnings().size());
        assertThrows(IllegalArgumentException.class, () -> TrappedAir.filledShare(1000, -1, 0, ATMOSPHERE));
    }

    /** Per cent of gas left, by hand: pumped to 5 kPa dry 4.93, with water of 20 °C in the chamber 2.69. */
    @ParameterizedTest
    @CsvSource({"5000, 0, 4.93", "5000, 2340, 2.69"})
    void vacuumFillsAHoleAlmostWhole(double evacuated, double vapour, double left) {
        double filled = VacuumFilling.filledShare(evacuated, vapour, ATMOSPHERE).value();
        assertEquals(left, 100 * (1 - filled), 0.01);
    }

    @Test
    void vacuumBelowTheVapourPressureBoilsTheLiquid() {
        Estimate filled = VacuumFilling.filledShare(2000, 2339, ATMOSPHERE);
        assertEquals(1, filled.value());
        assertTrue(filled.warnings().get(0).startsWith("At 2 kPa the liquid boils"));
        assertEquals(1, VacuumFilling.filledShare(0, 0, ATMOSPHERE).value());
        assertEquals(0, VacuumFilling.filledShare(ATMOSPHERE, 0, ATMOSPHERE).value());
        assertThrows(IllegalArgumentException.class, () -> VacuumFilling.filledShare(2e5, 0, ATMOSPHERE));
        // A bath above its boiling point boils whatever the pump does.
        assertEquals(
                1, VacuumFilling.filledShare(5e3, 2e5, ATMOSPHERE).warnings().size());
    }

    /** Without vapour, pumping to the pressure that depth adds is Boyle's law the other way round. */
    @Test
    void deeperVacuumAndDeeperMouthsFillMore() {
        double last = -1;
        for (double p = 100_000; p >= 1000; p -= 1000) {
            double filled = VacuumFilling.filledShare(p, 0, ATMOSPHERE).value();
            assertTrue(filled > last);
            last = filled;
        }
        last = -1;
        for (double depth = 0; depth < 5; depth += 0.1) {
            double filled = TrappedAir.filledShare(1000, depth, 0, ATMOSPHERE).value();
            assertTrue(filled > last);
            last = filled;
        }
    }

    /** Cycles to leave a share, by hand (30 % a cycle: 13 to 1 %); halves: a thousandth after ten (1/1024). */
    @ParameterizedTest
    @CsvSource({"0.3, 0.01, 13", "0.5, 0.001, 10", "0.9, 0.01, 2", "0.5, 0.25, 2", "1, 0.01, 1", "0.3, 1, 0"})
    void cyclesOfPressureThinOutWhatIsInAHole(double exchanged, double left, long cycles) {
        assertEquals(cycles, PressureCycling.cyclesToReach(exchanged, left).orElseThrow());
        assertTrue(PressureCycling.remainingShare(exchanged, cycles).value() <= left + 1e-12);
        if (cycles > 0) {
            assertTrue(PressureCycling.remainingShare(exchanged, cycles - 1).value() > left);
        }
    }

    @Test
    void cyclesThatExchangeNothingNeverEnd() {
        assertTrue(PressureCycling.cyclesToReach(0, 0.01).isEmpty());
        assertEquals(1, PressureCycling.remainingShare(0, 5).value());
        assertEquals(1, PressureCycling.remainingShare(0.01, 2000).warnings().size());
        assertThrows(IllegalArgumentException.class, () -> PressureCycling.remainingShare(1.2, 3));
        assertThrows(IllegalArgumentException.class, () -> PressureCycling.remainingShare(0.3, -1));
        assertThrows(IllegalArgumentException.class, () -> PressureCycling.cyclesToReach(0.3, 0));
    }

    /** s, small molecules in water (1e-9 m²/s), by hand: 1 mm 1000 s, 10 mm 27.8 h. */
    @ParameterizedTest
    @CsvSource({"1, 1000", "10, 100000"})
    void diffusionTakesTheSquareOfTheDepth(double millimetres, double seconds) {
        assertEquals(seconds, DiffusionTime.time(millimetres / 1e3, 1e-9).value(), 0.005 * seconds);
        assertEquals(millimetres / 1e3, DiffusionTime.depth(seconds, 1e-9).value(), 1e-9);
    }

    @Test
    void diffusionOverADecimetreWarns() {
        assertEquals(1, DiffusionTime.time(0.2, 1e-9).warnings().size());
        assertEquals(1, DiffusionTime.depth(1e9, 1e-9).warnings().size());
        assertThrows(IllegalArgumentException.class, () -> DiffusionTime.time(-1, 1e-9));
    }
}
