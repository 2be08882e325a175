package org.washwright.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;

class QuantitiesTest {

    private static final Place HERE = Place.ofFile("test");

    /** Exact definitions of the inch, pound, gallon and the temperature scales: NIST SP 811 (2008), appendix B, from memory. */
    @ParameterizedTest
    @CsvSource({
        "1 in,          LENGTH,          0.0254",
        "1 ft2,         AREA,            0.09290304",
        "1 lb,          MASS,            0.45359237",
        "1 gal,         VOLUME,          0.003785411784",
        "1 psi,         PRESSURE,        6894.757293168361",
        "60 °C,         TEMPERATURE,     333.15",
        "140 °F,        TEMPERATURE,     333.15",
        "333.15 K,      TEMPERATURE,     333.15",
        "15 °C,         TEMPERATURE_DIFFERENCE, 15",
        "27 °F,         TEMPERATURE_DIFFERENCE, 15",
        "120 cm2,       AREA,            0.012",
        "2 g/m²,        AREAL_MASS,      0.002",
        "20 mg/m2,      AREAL_MASS,      0.00002",
        "5 mg/1000 cm2, AREAL_MASS,      0.00005",
        "3600 1/h,      RATE,            1",
        "3600 parts/h,  RATE,            1",
        "1000 N/mm2,    PRESSURE,        1e9",
        "30 µS/cm,      CONDUCTIVITY,    0.003",
        "46 HRC,        ROCKWELL_C,      46",
        "10.5,          PH,              10.5",
        "pH 10.5,       PH,              -1",
        "80 %,          RATIO,           0.8",
        "4 A/dm2,       CURRENT_DENSITY, 400",
        "1 gal/ft2,     VOLUME_PER_AREA, 0.0407458333",
    })
    void readsUsualUnitsExactly(String text, Dimension dimension, double si) {
        Diagnostics diagnostics = new Diagnostics();
        var value = Quantities.read(text, dimension, HERE, diagnostics);
        if (si < 0) {
            assertTrue(value.isEmpty());
        } else {
            assertEquals(
                    si, value.orElseThrow(), si * 1e-7, () -> diagnostics.all().toString());
        }
    }

    /** The example is advice in every message about a bad quantity, so it has to be good. */
    @ParameterizedTest
    @EnumSource
    void everyDimensionReadsItsOwnExampleAndDefaultUnit(Dimension dimension) {
        Diagnostics diagnostics = new Diagnostics();
        assertTrue(
                Quantities.read(dimension.example(), dimension, HERE, diagnostics)
                        .isPresent(),
                () -> diagnostics.all().toString());
        assertTrue(dimension == Dimension.DATE || Quantities.isUnitOf(dimension.defaultUnit(), dimension));
    }

    /** A blank between two units multiplies them, as NIST SP 811, section 6.1.5, allows (from memory). */
    @ParameterizedTest
    @CsvSource({
        "1.2 mPa s,   VISCOSITY, 0.0012",
        "1.2 mPa·s,   VISCOSITY, 0.0012",
        "14 m2 / h,   AREA_RATE, 0.0038888889",
        "5 kW h,      ENERGY,    18000000",
        "5 mg/1000 cm2, AREAL_MASS, 0.00005",
    })
    void aBlankBetweenUnitsMultiplies(String text, Dimension dimension, double si) {
        assertEquals(
                si, Quantities.read(text, dimension, HERE, new Diagnostics()).orElseThrow(), si * 1e-7);
    }

    @ParameterizedTest
    @CsvSource({
        "12 kg,      LENGTH,      WRONG_DIMENSION",
        "12,         LENGTH,      MISSING_UNIT",
        "'1,5 mm',   LENGTH,      DECIMAL_COMMA",
        "NaN mm,     LENGTH,      BAD_QUANTITY",
        "12 furlong, LENGTH,      UNKNOWN_UNIT",
        "-3 mm,      LENGTH,      OUT_OF_RANGE",
        "40..30 HRC, ROCKWELL_C,  RANGE_REVERSED",
        "450 HV,     ROCKWELL_C,  WRONG_DIMENSION",
        "1e999 mm,   LENGTH,      OUT_OF_RANGE",
        "-300 °C,    TEMPERATURE, OUT_OF_RANGE",
        "15 °C/s,    TEMPERATURE, UNKNOWN_UNIT",
    })
    void refusesWithAReason(String text, Dimension dimension, Message expected) {
        Diagnostics diagnostics = new Diagnostics();
        assertTrue(Quantities.readSpan(text, dimension, HERE, diagnostics).isEmpty());
        assertEquals(expected, diagnostics.all().get(0).message());
    }

    @ParameterizedTest
    @CsvSource({
        "30..40 HRC,       ROCKWELL_C, 30, 40",
        "30 to 40 HRC,     ROCKWELL_C, 30, 40",
        "30 HRC..40 HRC,   ROCKWELL_C, 30, 40",
        "1.5..2.5 mm,      LENGTH,     0.0015, 0.0025",
        "50..80 °C,        TEMPERATURE, 323.15, 353.15",
        "-10..20 °C,       TEMPERATURE, 263.15, 293.15",
        ">= 30 HRC,        ROCKWELL_C, 30, Infinity",
        "<= 20 mg/m2,      AREAL_MASS, 0, 2e-5",
        "9..10.5,          PH,         9, 10.5",
    })
    void readsRanges(String text, Dimension dimension, double low, double high) {
        Diagnostics diagnostics = new Diagnostics();
        Span span = Quantities.readSpan(text, dimension, HERE, diagnostics)
                .orElseThrow(() -> new AssertionError(diagnostics.all()));
        assertEquals(low, span.low(), 1e-12);
        assertEquals(high, span.high(), 1e-12);
    }

    @Test
    void writesThreeFiguresAndThinSpaces() {
        assertEquals("12\u2009300", Quantities.number(12345, 3));
        assertEquals("0.0123", Quantities.number(0.012345, 3));
        assertEquals("60 °C", Quantities.write(333.15, Dimension.TEMPERATURE, 3));
        assertEquals("3 to 10 min", Quantities.write(new Span(180, 600), Dimension.TIME, 3));
        assertEquals("8 to 22 h", Quantities.write(new Span(28800, 79200), Dimension.TIME, 3));
        assertEquals("30 s", Quantities.write(30, Dimension.TIME, 3));
        assertEquals("50 to 80 °C", Quantities.write(new Span(323.15, 353.15), Dimension.TEMPERATURE, 3));
    }
}
