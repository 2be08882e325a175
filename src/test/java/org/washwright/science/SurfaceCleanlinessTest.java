package org.washwright.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.science.ProductCleanlinessLevel.AreaBasis;

/** Particles and residue by MIL-STD-1246C (1994) and IEST-STD-CC1246D (2002). */
class SurfaceCleanlinessTest {

    private static final AreaBasis METRIC = AreaBasis.TENTH_SQUARE_METRE;

    /** Particles of a size in µm and larger on the reference area: MIL-STD-1246C, table I, from memory; it rounds: 2 %. */
    @ParameterizedTest
    @CsvSource({
        "5, 1, 2.8",
        "5, 2, 2.3",
        "5, 5, 1",
        "10, 1, 8.4",
        "10, 2, 7.0",
        "10, 5, 3.0",
        "10, 10, 1",
        "25, 2, 53",
        "25, 5, 23",
        "25, 15, 3.4",
        "25, 25, 1",
        "50, 5, 166",
        "50, 15, 25",
        "50, 25, 7.3",
        "50, 50, 1",
        "100, 5, 1785",
        "100, 15, 265",
        "100, 25, 78",
        "100, 50, 11",
        "100, 100, 1",
        "200, 15, 4189",
        "200, 25, 1240",
        "200, 50, 170",
        "200, 100, 16",
        "200, 200, 1",
        "300, 25, 7455",
        "300, 50, 1021",
        "300, 100, 95",
        "300, 250, 2.3",
        "300, 300, 1",
        "500, 50, 11817",
        "500, 100, 1100",
        "500, 250, 26",
        "500, 500, 1",
        "750, 50, 95807",
        "750, 100, 8919",
        "750, 250, 214",
        "750, 500, 8.1",
        "750, 750, 1",
        "1000, 100, 42658",
        "1000, 250, 1022",
        "1000, 500, 39",
        "1000, 750, 4.8",
        "1000, 1000, 1",
    })
    void countsAreThoseOfTheTable(double level, double micrometres, double count) {
        Estimate perSquareMetre = ProductCleanlinessLevel.count(level, micrometres / 1e6, METRIC);
        // The table gives two figures below a hundred.
        double tolerance = count < 100 ? StrictMath.max(0.05 * (count < 10 ? 1 : 10), 0.02 * count) : 0.005 * count;
        assertEquals(count, perSquareMetre.value() / 10, tolerance);
        assertTrue(perSquareMetre.warnings().isEmpty());
    }

    /** By hand: 1000 particles of 25 µm and larger on 0.1 m² are level 190.1. */
    @Test
    void theLevelOfACountIsReadBackwards() {
        assertEquals(190.1, ProductCleanlinessLevel.level(1e4, 25e-6, METRIC).value(), 0.1);
        for (double level = 1; level <= 1000; level *= 1.5) {
            for (AreaBasis basis : AreaBasis.values()) {
                double count = ProductCleanlinessLevel.count(level, 5e-6, basis).value();
                if (count * basis.area() * StrictMath.pow(5, 0.926 * StrictMath.log10(5)) >= 1) {
                    assertEquals(
                            level,
                            ProductCleanlinessLevel.level(count, 5e-6, basis).value(),
                            1e-6 * level);
                }
            }
        }
    }

    /** One square foot is 0.09290304 m² (NIST SP 811), so the military edition allows 7.6 % more a square metre. */
    @Test
    void theEditionsDifferBySevenPerCent() {
        double foot =
                ProductCleanlinessLevel.count(200, 25e-6, AreaBasis.SQUARE_FOOT).value();
        double metre = ProductCleanlinessLevel.count(200, 25e-6, METRIC).value();
        assertEquals(1.0764, foot / metre, 1e-4);
    }

    /** An article of 2005 prints "0.1 ft²" for the military edition, against its own next sentence: it would be tenfold. */
    @Test
    void theReferenceAreaIsAWholeSquareFootNotATenth() {
        assertEquals(0.3048 * 0.3048, AreaBasis.SQUARE_FOOT.area(), 1e-12);
    }

    @Test
    void theLawWarnsBelowAMicrometreAboveTheLevelAndAboveAThousand() {
        assertEquals(
                "At level 100 less than one particle is larger than 150 µm on the reference area: count on more area",
                ProductCleanlinessLevel.count(100, 150e-6, METRIC).warnings().get(0));
        assertTrue(ProductCleanlinessLevel.count(100, 0.5e-6, METRIC)
                .warnings()
                .get(0)
                .startsWith("The cleanliness law holds from 1 µm, not at 0.5 µm"));
        assertTrue(ProductCleanlinessLevel.level(1e9, 100e-6, METRIC)
                .warnings()
                .get(0)
                .contains("from 1 to 1000"));
        assertThrows(IllegalArgumentException.class, () -> ProductCleanlinessLevel.count(0.5, 5e-6, METRIC));
        assertThrows(IllegalArgumentException.class, () -> ProductCleanlinessLevel.level(0.01, 2e-6, METRIC));
        assertThrows(IllegalArgumentException.class, () -> ProductCleanlinessLevel.level(-1, 5e-6, METRIC));
    }

    /** mg/m² of residue: MIL-STD-1246C, table II, from memory, times ten. */
    @ParameterizedTest
    @CsvSource({
        "A/100, 0.1",
        "A/50, 0.2",
        "A/20, 0.5",
        "A/10, 1",
        "A/5, 2",
        "A/2, 5",
        "A, 10",
        "B, 20",
        "C, 30",
        "D, 40",
        "E, 50",
        "F, 70",
        "G, 100",
        "H, 150",
        "J, 250"
    })
    void residueLevelsAreThoseOfTheTable(String text, double milligrams) {
        ResidueLevel level = ResidueLevel.parse(text);
        assertEquals(milligrams * 1e-6, level.massPerArea(), 1e-15);
        assertEquals(text, level.text());
        assertEquals(Optional.of(level), ResidueLevel.of(level.massPerArea()));
        assertEquals(Optional.of(level), ResidueLevel.of(level.massPerArea() * 0.99));
    }

    @Test
    void aResidueAboveTheHighestLevelHasNone() {
        assertTrue(ResidueLevel.of(251e-6).isEmpty());
        assertThrows(IllegalArgumentException.class, () -> ResidueLevel.of(-1e-6));
    }

    /** NASA PRC-5001: "200B" is particle level 200 and residue level B; the others in the same form. */
    @ParameterizedTest
    @CsvSource({"200B, 200, B", "100A/10, 100, A_10", "500, 500, ", "B, , B", "Level 300 A, 300, A", "1000J, 1000, J"})
    void combinedCodesAreReadInTwoParts(String text, Double level, ResidueLevel residue) {
        ProductCleanlinessCode code = ProductCleanlinessCode.parse(text);
        assertEquals(level == null ? OptionalDouble.empty() : OptionalDouble.of(level), code.particleLevel());
        assertEquals(Optional.ofNullable(residue), code.residue());
        assertEquals(code, ProductCleanlinessCode.parse(code.text()));
    }

    /** There is no level I, and A is parted in six. */
    @ParameterizedTest
    @ValueSource(strings = {"", "I", "200I", "A/3", "B/2", "0", "1001A", "200-B", "B200", "200 b", "A/", "-200"})
    void whatIsNoLevelIsRefusedWithAdvice(String text) {
        var refused = assertThrows(IllegalArgumentException.class, () -> ProductCleanlinessCode.parse(text));
        assertTrue(refused.getMessage().length() > 30, refused.getMessage());
    }

    /** nm of oil of 880 kg/m³, by hand: 10 mg/m² 11.4; a gram a square metre 1.14 µm. */
    @ParameterizedTest
    @CsvSource({"10, 880, 11.4", "1000, 880, 1136", "1, 1000, 1"})
    void aFewMilligramsAreAFewMolecules(double milligrams, double density, double nanometres) {
        assertEquals(
                nanometres,
                ResidueLevel.meanFilmThickness(milligrams * 1e-6, density).value() * 1e9,
                0.005 * nanometres);
    }

    @Test
    void aThickFilmIsALayer() {
        assertEquals(1, ResidueLevel.meanFilmThickness(2, 900).warnings().size());
        assertThrows(IllegalArgumentException.class, () -> ResidueLevel.meanFilmThickness(1, 0));
    }

    @Test
    void countsFallWithSizeAndRiseWithLevel() {
        for (double level = 10; level < 1000; level *= 1.3) {
            for (double size = 1e-6; size < 1e-3; size *= 1.3) {
                double here = ProductCleanlinessLevel.count(level, size, METRIC).value();
                assertTrue(
                        ProductCleanlinessLevel.count(level, size * 1.1, METRIC).value() < here);
                assertTrue(
                        ProductCleanlinessLevel.count(level * 1.1, size, METRIC).value() > here);
            }
        }
    }
}
