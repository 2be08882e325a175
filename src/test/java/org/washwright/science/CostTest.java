package org.washwright.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Annuities and costs of other sizes. */
class CostTest {

    /** By hand, six figures. */
    @ParameterizedTest
    @CsvSource({"8, 8, 0.174015", "10, 10, 0.162745", "0, 10, 0.1"})
    void annuitiesAreThoseOfTheFormula(double percent, double years, double factor) {
        assertEquals(factor, Annuity.factor(percent / 100, years).value(), 1e-6);
    }

    /**
     * Capital recovery factors of the compound interest tables in textbooks of engineering economy (from memory), four
     * figures.
     */
    @ParameterizedTest
    @CsvSource({
        "5, 5, 0.2310",
        "5, 10, 0.1295",
        "5, 20, 0.0802",
        "6, 5, 0.2374",
        "6, 10, 0.1359",
        "6, 20, 0.0872",
        "8, 5, 0.2505",
        "8, 10, 0.1490",
        "8, 20, 0.1019",
        "10, 5, 0.2638",
        "10, 20, 0.1175",
        "12, 5, 0.2774",
        "12, 10, 0.1770",
        "12, 15, 0.1468",
        "15, 5, 0.2983",
        "15, 10, 0.1993",
        "20, 5, 0.3344",
        "20, 10, 0.2385",
    })
    void annuitiesAreThoseOfTheInterestTables(double percent, double years, double factor) {
        assertEquals(factor, Annuity.factor(percent / 100, years).value(), 6e-5);
    }

    /**
     * 180 000 at 8 % over 8 years: 31 322.66 a year; with the other costs 106 091.46, 0.088410 for each of 1.2 million
     * parts; by hand.
     */
    @Test
    void aMachineCostsItsAnnuity() {
        double annuity = 180_000 * Annuity.factor(0.08, 8).value();
        assertEquals(31_322.66, annuity, 0.005);
        double others = 7200 + 0.5 * 1760 * 42 + 45 * 3520 * 0.6 * 0.22 + 5200 + 900 + 3600;
        assertEquals(106_091.46, annuity + others, 0.005);
        assertEquals(0.088410, (annuity + others) / 1.2e6, 5e-7);
    }

    @Test
    void annuitiesPayBackTheLoanAndNearTheInterest() {
        double debt = 1;
        double paid = Annuity.factor(0.07, 12).value();
        for (int year = 0; year < 12; year++) {
            debt = debt * 1.07 - paid;
        }
        assertEquals(0, debt, 1e-12);
        assertEquals(0.07, Annuity.factor(0.07, 1e6).value(), 1e-12);
        assertEquals(0.1, Annuity.factor(1e-12, 10).value(), 1e-9);
        assertEquals(1.08, Annuity.factor(0.08, 1).value(), 1e-12);
        assertThrows(RefusedInput.class, () -> Annuity.factor(-0.01, 10));
        assertThrows(RefusedInput.class, () -> Annuity.factor(0.05, 0));
    }

    /**
     * Textbooks of plant design (Williams 1947; Peters and Timmerhaus, from memory): twice the size 1.52 times, ten
     * times 4 times the cost.
     */
    @ParameterizedTest
    @CsvSource({"2, 0.6, 1.52", "3, 0.6, 1.93", "10, 0.6, 3.98", "0.5, 0.6, 0.66", "2, 1, 2", "1, 0.6, 1", "4, 0.5, 2"})
    void largerMachinesCostLessForTheirSize(double ratio, double exponent, double cost) {
        Estimate found = SixTenthsRule.cost(100_000, 3, 3 * ratio, exponent);
        assertEquals(cost, found.value() / 100_000, 0.005);
        assertTrue(found.warnings().isEmpty());
    }

    @Test
    void machinesOfQuiteAnotherSizeWarn() {
        assertEquals(
                "Costs carry over to machines up to ten times larger or smaller, not to 20 times the size",
                SixTenthsRule.cost(1, 1, 20, 0.6).warnings().get(0));
        assertEquals(1, SixTenthsRule.cost(1, 20, 1, 0.6).warnings().size());
        assertTrue(SixTenthsRule.cost(1, 1, 10, 0.6).warnings().isEmpty());
        assertTrue(SixTenthsRule.cost(1, 10, 1, 0.6).warnings().isEmpty());
        assertThrows(RefusedInput.class, () -> SixTenthsRule.cost(1, 0, 1, 0.6));
        assertThrows(RefusedInput.class, () -> SixTenthsRule.cost(1, 1, 1, -0.6));
    }
}
