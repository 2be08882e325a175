package org.washwright.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Levels and size classes of ISO 16232:2018. */
class ContaminationLevelTest {

    /**
     * More than, and up to, a count: levels 00, 0, 1, 4, 10, 12, 15 and 17 as printed in two trade explanations and a laboratory report, the
     * others of the same table from memory.
     */
    @ParameterizedTest
    @CsvSource({
        "-1, 0, 0",
        "0, 0, 1",
        "1, 1, 2",
        "2, 2, 4",
        "3, 4, 8",
        "4, 8, 16",
        "5, 16, 32",
        "6, 32, 64",
        "7, 64, 130",
        "8, 130, 250",
        "9, 250, 500",
        "10, 500, 1000",
        "11, 1000, 2000",
        "12, 2000, 4000",
        "13, 4000, 8000",
        "14, 8000, 16000",
        "15, 16000, 32000",
        "16, 32000, 64000",
        "17, 64000, 130000",
        "18, 130000, 250000",
        "19, 250000, 500000",
        "20, 500000, 1000000",
        "21, 1000000, 2000000",
        "22, 2000000, 4000000",
        "23, 4000000, 8000000",
        "24, 8000000, 16000000",
    })
    void levelsAreThoseOfTheTable(int level, double above, double upTo) {
        assertEquals(upTo, ContaminationLevel.upperBound(level));
        assertEquals(above, ContaminationLevel.lowerBound(level));
        assertEquals(OptionalInt.of(level), ContaminationLevel.of(upTo));
        if (level >= 0) {
            assertEquals(OptionalInt.of(level), ContaminationLevel.of(above * 1.0001 + 0.001));
        }
    }

    /** A laboratory report to ISO 16232: 124.94, 53.55 and 8.92 particles per 1000 cm² in E, F and H are levels 7, 6 and 4. */
    @ParameterizedTest
    @CsvSource({"124.94, 7", "53.55, 6", "8.92, 4", "64, 6", "65, 7", "130, 7", "131, 8", "0.5, 0"})
    void countsOfALaboratoryReportHaveItsLevels(double count, int level) {
        assertEquals(OptionalInt.of(level), ContaminationLevel.of(count));
    }

    /** By hand: 42 particles on 83.5 cm² are 502.99 on 1000 cm², level 10. */
    @Test
    void countsAreBroughtToAThousandSquareCentimetres() {
        double count = ContaminationLevel.perReferenceArea(42, 83.5e-4);
        assertEquals(502.99, count, 0.01);
        assertEquals(OptionalInt.of(10), ContaminationLevel.of(count));
        assertEquals(21, ContaminationLevel.perReferenceVolume(42, 200e-6), 1e-9);
        assertEquals(42, ContaminationLevel.perReferenceArea(42, 0.1), 1e-9);
    }

    @Test
    void outsideTheTableThereIsNoLevel() {
        assertTrue(ContaminationLevel.of(16_000_001).isEmpty());
        assertThrows(IllegalArgumentException.class, () -> ContaminationLevel.of(-1));
        assertThrows(IllegalArgumentException.class, () -> ContaminationLevel.of(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> ContaminationLevel.upperBound(25));
        assertThrows(IllegalArgumentException.class, () -> ContaminationLevel.lowerBound(-2));
        assertThrows(IllegalArgumentException.class, () -> ContaminationLevel.perReferenceArea(42, 0));
        assertThrows(IllegalArgumentException.class, () -> ContaminationLevel.perReferenceVolume(-1, 1));
        assertEquals("00", ContaminationLevel.text(ContaminationLevel.NONE));
        assertEquals("17", ContaminationLevel.text(17));
    }

    /** µm: bounds of the classes from the laboratory report; the lower belongs to the class, the upper to the next. */
    @ParameterizedTest
    @CsvSource({
        "5, B", "14.9, B", "15, C", "25, D", "50, E", "100, F", "150, G", "199, G", "200, H", "400, I", "600, J",
        "999, J", "1000, K", "1500, L", "2000, M", "3000, N", "9000, N"
    })
    void particlesFallIntoTheirSizeClass(double micrometres, SizeClass expected) {
        SizeClass found = SizeClass.ofSize(micrometres / 1e6).orElseThrow();
        assertEquals(expected, found);
        assertTrue(micrometres / 1e6 >= found.lowerBound() && micrometres / 1e6 < found.upperBound());
        assertEquals(Optional.of(found), SizeClass.of(found.letter()));
    }

    @Test
    void smallerThanFiveMicrometresIsNoClass() {
        assertTrue(SizeClass.ofSize(4.9e-6).isEmpty());
        assertTrue(SizeClass.of('A').isEmpty());
        assertTrue(SizeClass.of('O').isEmpty());
        assertThrows(IllegalArgumentException.class, () -> SizeClass.ofSize(0));
        for (SizeClass c : SizeClass.values()) {
            assertTrue(
                    c == SizeClass.N
                            ? Double.isInfinite(c.upperBound())
                            : c.upperBound() == SizeClass.values()[c.ordinal() + 1].lowerBound());
        }
    }
}
