package org.washwright.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Hardness and strength of steel against two tables that are not the program's own. */
class HardnessConversionTest {

    /** ASTM E140, table 1, non-austenitic steel, from memory: rows of the table, so there is no room. */
    @ParameterizedTest
    @CsvSource({"20, 238", "30, 302", "40, 392", "50, 513", "60, 697"})
    void vickersAndRockwellMeetAtTheRowsOfTheTable(double hrc, double hv) {
        assertEquals(hrc, HardnessConversion.rockwellOfVickers(hv), 1e-9);
    }

    /**
     * ASTM B850-98 sets ranges of strength beside ranges of hardness (read): 1001 to 1100 MPa beside about 31 to 33 HRC, and
     * so on. It rounds; ISO 18265, which the program follows, lies up to 5.2 % below the upper ends. Within 6 %.
     */
    @ParameterizedTest
    @CsvSource({
        "31, 1001",
        "33, 1100",
        "36, 1200",
        "39, 1300",
        "43, 1400",
        "45, 1500",
        "47, 1600",
        "49, 1700",
        "51, 1800"
    })
    void strengthAgreesWithTheBakeTable(double hrc, double mpa) {
        assertEquals(mpa, HardnessConversion.strengthOfRockwell(hrc) / 1e6, 0.06 * mpa);
    }

    /** ASTM B849 and B850 speak of 1000 MPa, the starter rulebook of 31 HRC: they have to be the same line. */
    @Test
    void thirtyOneRockwellIsAThousandMegapascal() {
        assertEquals(1000, HardnessConversion.strengthOfRockwell(31) / 1e6, 10);
        assertEquals(31, HardnessConversion.rockwellOfStrength(1000e6), 0.5);
    }

    @Test
    void conversionsRiseAndLeadBack() {
        double last = 0;
        for (double hrc = 20; hrc <= 60; hrc += 0.25) {
            double strength = HardnessConversion.strengthOfRockwell(hrc);
            assertTrue(strength > last);
            assertEquals(hrc, HardnessConversion.rockwellOfStrength(strength), 1e-6);
            last = strength;
        }
    }

    @Test
    void outsideItsRangeNothingIsGiven() {
        assertTrue(Double.isNaN(HardnessConversion.strengthOfRockwell(19.9)));
        assertTrue(Double.isNaN(HardnessConversion.strengthOfRockwell(60.1)));
        assertTrue(Double.isNaN(HardnessConversion.rockwellOfVickers(237)));
        assertTrue(Double.isNaN(HardnessConversion.rockwellOfStrength(Double.NaN)));
    }
}
