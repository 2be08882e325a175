package org.washwright.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rim exhaust and the yearly balance of a solvent. */
class SolventAirTest {

    private static final double CFM = 0.02831684659 / 60;
    private static final double SQUARE_FOOT = 0.09290304;

    /**
     * ACGIH, Industrial Ventilation, open surface tanks (from memory): 100 to 250 cfm/ft² by class; cfm of a tank of 3
     * by 5 ft.
     */
    @ParameterizedTest
    @CsvSource({"100, 1500, 0", "150, 2250, 0", "250, 3750, 0", "90, 1350, 1", "300, 4500, 1"})
    void slotsExtractWhatTheManualAsksFor(double perArea, double cfm, int warnings) {
        Estimate flow = RimExhaust.flow(15 * SQUARE_FOOT, perArea * CFM / SQUARE_FOOT);
        assertEquals(cfm, flow.value() / CFM, 1e-6 * cfm);
        assertEquals(warnings, flow.warnings().size());
    }

    @Test
    void airOutsideThePublishedRangeSaysSo() {
        assertEquals(
                "Air for slots at the rim is published from 0.508 m/s to 1.27 m/s, not at 2 m/s",
                RimExhaust.flow(1, 2).warnings().get(0));
        assertThrows(RefusedInput.class, () -> RimExhaust.flow(-1, 1));
    }

    /** 1200 kg bought, stock 100 kg down, 500 kg of waste with 70 % solvent: 950 kg, 73 % of what went in; by hand. */
    @Test
    void whatIsNotAccountedForWentIntoTheAir() {
        double emission = SolventBalance.emission(1200, 100, 500, 0.7, 0, 0).value();
        assertEquals(950, emission, 1e-9);
        assertEquals(0.73, SolventBalance.share(emission, 1300).value(), 0.001);
        assertEquals(0.79, SolventBalance.share(emission, 1200).value(), 0.002);
    }

    @Test
    void everyKilogramIsInTheBalance() {
        Random random = new Random(104);
        for (int i = 0; i < 200; i++) {
            double input = random.nextDouble() * 1e4;
            double fall = random.nextDouble() * 200 - 100;
            double waste = random.nextDouble() * 1000;
            double share = random.nextDouble();
            double given = random.nextDouble() * 500;
            double destroyed = random.nextDouble() * 500;
            double emission = SolventBalance.emission(input, fall, waste, share, given, destroyed)
                    .value();
            assertEquals(input + fall, emission + waste * share + given + destroyed, 1e-9 * input);
        }
    }

    @Test
    void negativeEmissionsAreGivenWithAWarning() {
        Estimate negative = SolventBalance.emission(100, 0, 500, 0.7, 0, 0);
        assertEquals(-250, negative.value(), 1e-9);
        assertEquals(
                "More solvent is accounted for than came in: check the share in the waste and the stock",
                negative.warnings().get(0));
        assertEquals(1, SolventBalance.share(-250, 100).warnings().size());
        assertEquals(
                "An emission of 150 % of the input is not possible over a long time: check the balance",
                SolventBalance.share(150, 100).warnings().get(0));
        assertTrue(SolventBalance.share(100, 100).warnings().isEmpty());
        assertTrue(SolventBalance.share(0, 100).warnings().isEmpty());
        assertThrows(RefusedInput.class, () -> SolventBalance.share(1, 0));
        assertThrows(RefusedInput.class, () -> SolventBalance.emission(100, 0, 500, 70, 0, 0));
        assertTrue(SolventBalance.emission(100, 0, 0, 0.7, 50, 50).warnings().isEmpty());
    }
}
