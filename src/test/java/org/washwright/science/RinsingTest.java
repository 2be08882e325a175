package org.washwright.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rinses and drag-out. "By hand": from the balances, outside the program. */
class RinsingTest {

    /**
     * W. Yates, Ten Minutes to Better Rinsing, Products Finishing, December 1991: one tank, drag-out 1; 99 of water
     * thin 100 to 1, 2000 thin 10 oz/gal of nickel 2001 to 1, to 0.005 oz/gal.
     */
    @ParameterizedTest
    @CsvSource({"99, 100", "2000, 2001"})
    void oneTankThinsByTheWaterAndTheDragOut(double water, double dilution) {
        assertEquals(dilution, RinseDilution.single(water).value());
        assertEquals(dilution, RinseDilution.series(water, 1).value());
        assertEquals(dilution, RinseDilution.counterCurrent(water, 1).value());
        assertEquals(water, RinseDilution.waterRatio(dilution, 1).value(), 1e-12 * water);
    }

    @Test
    void tenOuncesOfNickelBecomeFiveThousandths() {
        assertEquals(0.005, 10 / RinseDilution.single(2000).value(), 5e-6);
    }

    /**
     * The trade rule takes 100 x 100 = 10 000 for two counter-current tanks with 99 of water; the balance gives 9901.
     */
    @Test
    void theTradeRuleOfTwoCounterCurrentTanksIsOnePerCentTooHigh() {
        assertEquals(9901, RinseDilution.counterCurrent(99, 2).value());
        assertEquals(10_000, RinseDilution.series(99, 2).value(), 1e-8);
        assertEquals(1.01, 10_000 / RinseDilution.counterCurrent(99, 2).value(), 1e-4);
    }

    /** The rule of the root in EPA 625/8-82-008 (from memory), printed to two decimals. */
    @ParameterizedTest
    @CsvSource({
        "1000, 1, 1000",
        "1000, 2, 31.62",
        "1000, 3, 10.00",
        "1000, 4, 5.62",
        "100, 1, 100",
        "100, 2, 10.00",
        "10000, 2, 100.00",
        "10000, 3, 21.54",
        "10000, 4, 10.00",
    })
    void theRuleOfTheRootIsThatOfTheAgency(double dilution, int tanks, double ratio) {
        Estimate found = RinseDilution.approximateWaterRatio(dilution, tanks);
        assertEquals(ratio, found.value(), 0.005);
        assertTrue(found.warnings().isEmpty());
    }

    /** The same demand by the exact balance, by hand; 0.5 % covers the printed figures. */
    @ParameterizedTest
    @CsvSource({
        "1000, 1, 999",
        "1000, 2, 31.11",
        "1000, 3, 9.642",
        "1000, 4, 5.340",
        "100, 1, 99",
        "100, 2, 9.462",
        "100, 3, 4.249",
        "100, 4, 2.841",
        "5000, 1, 4999",
        "20000, 1, 19999",
    })
    void theExactBalanceNeedsALittleLess(double dilution, int tanks, double ratio) {
        double found = RinseDilution.waterRatio(dilution, tanks).value();
        assertEquals(ratio, found, 0.0005 * ratio);
        assertTrue(found < RinseDilution.approximateWaterRatio(dilution, tanks).value());
        assertEquals(dilution, RinseDilution.counterCurrent(found, tanks).value(), 1e-12 * dilution);
    }

    /** As much water as drag-out: the sum has n + 1 equal terms (Kushner, from memory). */
    @ParameterizedTest
    @CsvSource({"1, 2", "2, 3", "3, 4", "5, 6", "9, 10"})
    void equalStreamsGiveOneMoreThanTanks(int tanks, double dilution) {
        assertEquals(dilution, RinseDilution.counterCurrent(1, tanks).value());
        assertEquals(1, RinseDilution.waterRatio(dilution, tanks).value(), 1e-14);
    }

    /** 10 m²/h that carry 0.2 L/m², 50 g/L down to 0.05 g/L: L/h of water for 1, 2 and 3 tanks, by hand. */
    @ParameterizedTest
    @CsvSource({"1, 1998", "2, 62.2", "3, 19.3"})
    void waterForSheetsOutOfAnAlkalineCleaner(int tanks, double litresPerHour) {
        double dragOut = 10 * 0.2;
        assertEquals(
                litresPerHour,
                dragOut * RinseDilution.waterRatio(50 / 0.05, tanks).value(),
                0.0015 * litresPerHour);
    }

    @Test
    void theRuleOfTheRootWarnsWhereItAsksForFarTooMuch() {
        Estimate small = RinseDilution.approximateWaterRatio(100, 4);
        assertEquals(
                "The rule of the root holds where much water meets little drag-out, not at 3.162 to 1: solve the balance"
                        + " of the tanks",
                small.warnings().get(0));
        // By hand: 11 % too much here, 1.6 % for two tanks and a thousandfold dilution.
        assertEquals(1.113, small.value() / RinseDilution.waterRatio(100, 4).value(), 0.001);
        assertEquals(
                1.0164,
                RinseDilution.approximateWaterRatio(1000, 2).value()
                        / RinseDilution.waterRatio(1000, 2).value(),
                0.0005);
    }

    @Test
    void theRuleOfTheRootIsOnTheSafeSideAndAtMostAQuarterTooHighWithoutAWarning() {
        for (int tanks = 1; tanks <= 8; tanks++) {
            for (double dilution = 1; dilution < 1e6; dilution *= 1.3) {
                Estimate rule = RinseDilution.approximateWaterRatio(dilution, tanks);
                double exact = RinseDilution.waterRatio(dilution, tanks).value();
                assertTrue(rule.value() >= exact);
                assertTrue(rule.value() <= 1.25 * exact || !rule.warnings().isEmpty(), dilution + " with " + tanks);
            }
        }
    }

    /** Tank by tank with the linear solver of Commons Math 3.6.1, which knows no sum of powers. */
    @Test
    void theChainOfTanksSolvedTankByTankIsTheSumOfPowers() {
        Random random = new Random(101);
        for (int i = 0; i < 200; i++) {
            int tanks = 1 + random.nextInt(7);
            double ratio = StrictMath.exp(random.nextDouble() * 8 - 3);
            double[] chain = chain(ratio, tanks, true);
            double last = chain[tanks - 1];
            assertEquals(1 / RinseDilution.counterCurrent(ratio, tanks).value(), last, 1e-9 * last);
            // What is dragged in leaves with the parts or with the water of the first tank.
            assertEquals(1, last + ratio * chain[0], 1e-9);
            double[] fed = chain(ratio, tanks, false);
            assertEquals(1 / RinseDilution.series(ratio, tanks).value(), fed[tanks - 1], 1e-9 * fed[tanks - 1]);
            double out = fed[tanks - 1];
            for (double concentration : fed) {
                out += ratio * concentration;
            }
            assertEquals(1, out, 1e-9);
        }
    }

    /**
     * Concentrations of the tanks behind a bath of 1 with drag-out 1: what comes in with parts and water goes out with
     * both.
     */
    private static double[] chain(double ratio, int tanks, boolean counterCurrent) {
        var balance = new Array2DRowRealMatrix(tanks, tanks);
        var into = new ArrayRealVector(tanks);
        into.setEntry(0, 1);
        for (int i = 0; i < tanks; i++) {
            balance.setEntry(i, i, 1 + ratio);
            if (i > 0) {
                balance.setEntry(i, i - 1, -1);
            }
            if (counterCurrent && i < tanks - 1) {
                balance.setEntry(i, i + 1, -ratio);
            }
        }
        return new LUDecomposition(balance).getSolver().solve(into).toArray();
    }

    @Test
    void moreRinsesNeverNeedMoreWater() {
        Random random = new Random(102);
        for (int i = 0; i < 300; i++) {
            double dilution = StrictMath.exp(random.nextDouble() * 14);
            double before = Double.POSITIVE_INFINITY;
            for (int tanks = 1; tanks <= 8; tanks++) {
                double ratio = RinseDilution.waterRatio(dilution, tanks).value();
                // Near a dilution of 1 the further tanks save less than doubles can tell.
                assertTrue(ratio <= before * (1 + 1e-12), dilution + " with " + tanks);
                assertTrue(ratio < before || dilution < 2, dilution + " with " + tanks);
                assertEquals(
                        dilution, RinseDilution.counterCurrent(ratio, tanks).value(), 1e-9 * dilution);
                before = ratio;
            }
        }
    }

    @Test
    void moreWaterAlwaysThinsMoreAndNoneLeavesTheBath() {
        for (int tanks = 1; tanks <= 5; tanks++) {
            double before = 0;
            for (double ratio = 0; ratio < 50; ratio += 0.7) {
                double dilution = RinseDilution.counterCurrent(ratio, tanks).value();
                assertTrue(dilution > before);
                assertTrue(RinseDilution.series(ratio, tanks).value() >= dilution);
                before = dilution;
            }
            assertEquals(1, RinseDilution.counterCurrent(0, tanks).value());
            assertEquals(0, RinseDilution.waterRatio(1, tanks).value());
        }
    }

    @Test
    void rinsesThatAreNoneAreRefused() {
        assertThrows(RefusedInput.class, () -> RinseDilution.single(-0.1));
        assertThrows(RefusedInput.class, () -> RinseDilution.series(1, 0));
        assertThrows(RefusedInput.class, () -> RinseDilution.counterCurrent(1, 101));
        assertThrows(RefusedInput.class, () -> RinseDilution.waterRatio(10, 0));
        assertEquals(
                "dilution from bath to last rinse is 0.9; give 1 or a number above it",
                assertThrows(RefusedInput.class, () -> RinseDilution.waterRatio(0.9, 2))
                        .getMessage());
        assertThrows(RefusedInput.class, () -> RinseDilution.approximateWaterRatio(0.5, 2));
        assertThrows(RefusedInput.class, () -> StaticRinse.afterDips(1, 1e-3, 1, -1));
        assertThrows(RefusedInput.class, () -> StaticRinse.concentration(1, 1, 1, 0));
        assertThrows(RefusedInput.class, () -> StaticRinse.concentration(-1, 1, 1, 1));
        assertThrows(RefusedInput.class, () -> StaticRinse.afterDips(-1, 1e-3, 1, 1));
        assertThrows(RefusedInput.class, () -> UnsteadyRinse.concentration(1, 1, 1, 1, 0, 1));
        assertThrows(RefusedInput.class, () -> DripCurve.retained(1, 1, -1, 1));
    }

    /** 2 L/h into 400 L from 50 g/L: g/L after hours, by hand with 1 - exp(-t / 200 h). */
    @ParameterizedTest
    @CsvSource({"0, 0", "1, 0.24938", "8, 1.96053", "40, 9.06346", "200, 31.60603"})
    void aStandingRinseFillsUpTowardsTheBath(double hours, double grams) {
        double found =
                StaticRinse.concentration(50, 2e-3 / 3600, hours * 3600, 0.4).value();
        assertEquals(grams, found, 1e-5);
        // A flowing rinse without water is a standing one.
        assertEquals(
                found,
                UnsteadyRinse.concentration(50, 0, 2e-3 / 3600, 0, 0.4, hours * 3600)
                        .value(),
                1e-12);
    }

    /** Dip by dip with a pencil: the rinse keeps V of V + d, and both are mixed. */
    @Test
    void dipsAreMixedOneAfterTheOther() {
        double concentration = 0;
        for (int dips = 1; dips <= 400; dips++) {
            concentration = (concentration * 0.1 + 50 * 0.5e-3) / (0.1 + 0.5e-3);
            assertEquals(
                    concentration, StaticRinse.afterDips(50, 0.5e-3, 0.1, dips).value(), 1e-11);
        }
        assertEquals(0, StaticRinse.afterDips(50, 0.5e-3, 0.1, 0).value());
        // Many small dips are a steady drag-out.
        assertEquals(
                StaticRinse.concentration(50, 2e-3 / 3600, 36_000, 0.4).value(),
                StaticRinse.afterDips(50, 2e-8, 0.4, 1_000_000).value(),
                1e-6);
    }

    @Test
    void aFlowingRinseComesToRestAtItsDilution() {
        double rest = UnsteadyRinse.concentration(50, 7, 2e-6, 198e-6, 0.4, 1e6).value();
        assertEquals(50 / RinseDilution.single(99).value(), rest, 1e-12);
        assertEquals(7, UnsteadyRinse.concentration(50, 7, 2e-6, 198e-6, 0.4, 0).value());
        assertEquals(7, UnsteadyRinse.concentration(50, 7, 0, 0, 0.4, 1e6).value());
    }

    /**
     * NCMS rinsing manual, appendix D: 50 + 100 exp(-0.1 t) ml after 10 and 30 s (the parameters are an example, the
     * values by hand).
     */
    @ParameterizedTest
    @CsvSource({"0, 150", "10, 86.8", "30, 55.0"})
    void partsDripAsTheManualSays(double seconds, double millilitres) {
        assertEquals(
                millilitres, DripCurve.retained(50e-6, 100e-6, 0.1, seconds).value() * 1e6, 0.05);
    }

    @Test
    void whatDripsOffNeverComesBackAndTheRestStays() {
        double before = Double.POSITIVE_INFINITY;
        for (double t = 0; t < 100; t += 2.5) {
            double held = DripCurve.retained(0.02e-3, 0.1e-3, 0.08, t).value();
            assertTrue(held < before && held > 0.02e-3);
            before = held;
        }
        assertEquals(0.02e-3, DripCurve.retained(0.02e-3, 0.1e-3, 0.08, 1e4).value());
    }
}
