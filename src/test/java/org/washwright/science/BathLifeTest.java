package org.washwright.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Contamination, dosing, titration, stills and oil separators. "By hand": from the balances, outside the program. */
class BathLifeTest {

    private static final double HOUR = 3600;

    /**
     * 2000 L to 5 g/L under 150 m²/h of 2 g/m² for 16 h/d: 2.083 days; a separator that keeps 80 % away makes it 10.42,
     * by hand.
     */
    @ParameterizedTest
    @CsvSource({"0, 2.083", "0.8, 10.42"})
    void aBathLastsUntilItsLimit(double separated, double days) {
        double gramsPerDay = 150 * 2 * 16 * (1 - separated);
        double time = BathContamination.timeToLimit(2, 5, 0, gramsPerDay / 1e3 / 86_400)
                .value();
        assertEquals(days, time / 86_400, 0.0005 * days);
    }

    /**
     * 300 g/h into 2000 L, 200 L/h through a filter that takes 60 %: 2.5 g/L in the end, 2.0 g/L after 26.82 h, by
     * hand.
     */
    @Test
    void aSideStreamHoldsABath() {
        double load = 0.3 / HOUR;
        double stream = 0.2 / HOUR;
        assertEquals(2.5, BathContamination.steadyState(load, stream, 0.6).value(), 1e-12);
        double time = BathContamination.timeToLimitWithSideStream(2, 2, 0, load, stream, 0.6)
                .value();
        assertEquals(26.82, time / HOUR, 0.005);
        assertEquals(
                2,
                BathContamination.concentration(2, 0, load, stream, 0.6, time).value(),
                1e-12);
        assertEquals(
                2.5,
                BathContamination.concentration(2, 0, load, stream, 0.6, 1e9).value(),
                1e-9);
    }

    @Test
    void whatIsNeverReachedTakesForEver() {
        assertEquals(
                Double.POSITIVE_INFINITY,
                BathContamination.timeToLimit(2, 5, 0, 0).value());
        assertEquals(0, BathContamination.timeToLimit(2, 5, 5, 0).value());
        assertEquals(0, BathContamination.timeToLimit(2, 5, 7, 1).value());
        // At the steady state itself the limit is only neared.
        assertEquals(
                Double.POSITIVE_INFINITY,
                BathContamination.timeToLimitWithSideStream(2, 2, 0, 1, 1, 0.5).value());
        assertEquals(
                Double.POSITIVE_INFINITY,
                BathContamination.timeToLimitWithSideStream(2, 3, 1, 1, 1, 0.5).value());
        assertTrue(Double.isFinite(BathContamination.timeToLimitWithSideStream(2, 1.99, 0, 1, 1, 0.5)
                .value()));
        assertThrows(RefusedInput.class, () -> BathContamination.steadyState(1, 0, 0.5));
        assertThrows(RefusedInput.class, () -> BathContamination.timeToLimit(0, 5, 0, 1));
        assertThrows(RefusedInput.class, () -> BathContamination.concentration(2, -1, 1, 1, 0.5, 1));
    }

    @Test
    void weakSideStreamsComeNearToNone() {
        double none = BathContamination.timeToLimit(2, 5, 1, 1e-4).value();
        assertEquals(80_000, none, 1e-9 * none);
        assertEquals(
                none,
                BathContamination.timeToLimitWithSideStream(2, 5, 1, 1e-4, 1e-14, 0.5)
                        .value(),
                1e-8 * none);
        assertEquals(5, BathContamination.concentration(2, 1, 1e-4, 0, 0, none).value(), 1e-12);
        assertEquals(
                5, BathContamination.concentration(2, 1, 1e-4, 1e-14, 0.5, none).value(), 1e-7);
    }

    @Test
    void timeAndConcentrationLeadBackToEachOther() {
        Random random = new Random(105);
        for (int i = 0; i < 200; i++) {
            double load = 1e-5 + random.nextDouble() * 1e-4;
            double stream = random.nextDouble() * 1e-4;
            double share = random.nextDouble();
            double start = random.nextDouble();
            double time = random.nextDouble() * 1e5;
            double end = BathContamination.concentration(2, start, load, stream, share, time)
                    .value();
            if (end > start + 1e-3) {
                assertEquals(
                        time,
                        BathContamination.timeToLimitWithSideStream(2, end, start, load, stream, share)
                                .value(),
                        1e-6 * time + 1e-6);
            }
            // Splitting the time changes nothing.
            double middle = BathContamination.concentration(2, start, load, stream, share, time / 3)
                    .value();
            assertEquals(
                    end,
                    BathContamination.concentration(2, middle, load, stream, share, time * 2 / 3)
                            .value(),
                    1e-9 * (1 + end));
        }
    }

    /**
     * 1500 L from 2.1 to 3.0 % with a neat product: 13.92 L; the simple rule of three gives 13.5 L, 3 % too little; by
     * hand.
     */
    @Test
    void dosingCountsTheProductItself() {
        double litres = Dosing.productVolume(1.5, 0.021, 0.03, 1).value() * 1e3;
        assertEquals(13.92, litres, 0.005);
        assertEquals(1.031, litres / 13.5, 0.001);
    }

    @Test
    void dosedProductIsInTheBathAfterwards() {
        Random random = new Random(106);
        for (int i = 0; i < 200; i++) {
            double volume = random.nextDouble() * 5;
            double wanted = random.nextDouble() * 0.2;
            double now = wanted * random.nextDouble();
            double product = 0.3 + random.nextDouble() * 0.7;
            double added = Dosing.productVolume(volume, now, wanted, product).value();
            assertEquals(wanted * (volume + added), volume * now + added * product, 1e-12);
        }
    }

    @Test
    void strongBathsGetNothingAndWeakProductsAreRefused() {
        Estimate none = Dosing.productVolume(1.5, 0.04, 0.03, 1);
        assertEquals(0, none.value());
        assertEquals(1, none.warnings().size());
        assertTrue(Dosing.productVolume(1.5, 0.03, 0.03, 1).warnings().isEmpty());
        assertEquals(
                "strength of the product is 0.03; the bath is to have 0.03, so give a stronger product",
                assertThrows(RefusedInput.class, () -> Dosing.productVolume(1.5, 0.01, 0.03, 0.03))
                        .getMessage());
    }

    /** 7.4 ml at 0.42 % for each ml: 3.108 %, by hand. */
    @Test
    void titrationTimesFactorIsTheStrength() {
        Estimate strength = Titration.strength(7.4e-6, 4200);
        assertEquals(0.03108, strength.value(), 1e-15);
        assertEquals(7.4e-6, Titration.titrant(strength.value(), 4200).value(), 1e-18);
        assertTrue(strength.warnings().isEmpty());
        assertEquals(1, Titration.strength(1e-3, 4200).warnings().size());
        assertThrows(RefusedInput.class, () -> Titration.titrant(0.03, 0));
    }

    /** 100 L/h with 10 % of oil, boiled to 60 %: 83.33 L/h come back; more rows by hand. */
    @ParameterizedTest
    @CsvSource({"10, 60, 83.33", "25, 50, 50", "5, 80, 93.75", "0, 60, 100", "30, 30, 0"})
    void aStillGivesBackWhatIsNotBottoms(double feedPercent, double bottomsPercent, double litres) {
        double recovered =
                Still.recovered(100, feedPercent / 100, bottomsPercent / 100).value();
        double bottoms =
                Still.bottoms(100, feedPercent / 100, bottomsPercent / 100).value();
        assertEquals(litres, recovered, 0.005);
        assertEquals(100, recovered + bottoms, 1e-9);
        assertEquals(feedPercent, bottoms * bottomsPercent / 100, 1e-9);
    }

    @Test
    void bottomsHaveMoreSoilThanTheFeed() {
        assertEquals(
                "share of soil in the bottoms is 0.05; the feed has 0.1 and boiling only adds to it; give a larger share",
                assertThrows(RefusedInput.class, () -> Still.recovered(100, 0.1, 0.05))
                        .getMessage());
        assertThrows(RefusedInput.class, () -> Still.bottoms(100, 0, 0));
    }

    /** 120 kg/m³ lighter than the bath of 0.55 mPa s (50 °C): mm/s of drops in µm, by hand from Stokes' law. */
    @ParameterizedTest
    @CsvSource({"100, 1.19, 0", "10, 0.0119, 0", "50, 0.297, 0", "200, 4.755, 1"})
    void oilRisesAsStokesSays(double micrometres, double millimetres, int warnings) {
        Estimate rise = OilRise.velocity(micrometres * 1e-6, 120, 0.55e-3);
        assertEquals(millimetres, rise.value() * 1e3, 0.002 * millimetres);
        assertEquals(warnings, rise.warnings().size());
    }

    @Test
    void dropsThatAreTooLargeForStokesSaySo() {
        // By hand: 200 µm rise 4.755 mm/s, Re = 1000 v d / mu = 1.73.
        assertEquals(
                "Stokes' law holds for creeping drops with a Reynolds number to 1, not 1.729: they rise more slowly",
                OilRise.velocity(200e-6, 120, 0.55e-3).warnings().get(0));
    }

    /**
     * API Publication 421, Design and Operation of Oil-Water Separators (1990), equation for the rise of globules of
     * 150 µm, from memory: {@code Vt = 0.0241 (Sw - So) / mu}, Vt in ft/min, S specific gravity of water and oil, mu in
     * poise.
     */
    @ParameterizedTest
    @CsvSource({"0.90, 0.0101", "0.85, 0.0055", "0.80, 0.01"})
    void oilRisesAsTheSeparatorManualSays(double gravity, double poise) {
        double feetPerMinute = 0.0241 * (1 - gravity) / poise;
        double found =
                OilRise.velocity(150e-6, (1 - gravity) * 1000, poise / 10).value();
        assertEquals(feetPerMinute, found * 60 / 0.3048, 0.003 * feetPerMinute);
    }
}
