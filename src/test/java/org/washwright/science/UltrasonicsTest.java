package org.washwright.science;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The layer that shields particles and the bubble that resonates; worked by hand outside the program, within 1 %. */
class UltrasonicsTest {

    /** µm, water of 25 °C (0.893 mm²/s) and of 60 °C (0.474 mm²/s). */
    @ParameterizedTest
    @CsvSource({
        "25, 25, 3.37",
        "25, 40, 2.67",
        "25, 80, 1.88",
        "25, 132, 1.47",
        "25, 200, 1.19",
        "25, 400, 0.843",
        "25, 850, 0.578",
        "25, 1000, 0.533",
        "60, 25, 2.46",
        "60, 40, 1.94",
        "60, 132, 1.07",
        "60, 1000, 0.388",
    })
    void theLayerThinsWithTheRootOfFrequency(double celsius, double kilohertz, double micrometres) {
        double viscosity = WaterViscosity.kinematic(celsius + 273.15).value();
        Estimate layer = AcousticBoundaryLayer.thickness(viscosity, kilohertz * 1e3);
        assertEquals(micrometres, layer.value() * 1e6, 0.01 * micrometres);
        assertTrue(layer.warnings().isEmpty());
        assertEquals(
                kilohertz * 1e3,
                AcousticBoundaryLayer.frequency(viscosity, layer.value()).value(),
                1e-6);
    }

    @Test
    void soundThatIsNoUltrasoundWarns() {
        assertEquals(
                "The layer is reckoned for ultrasonic and megasonic baths from 16 kHz to 3000 kHz, not at 1 kHz",
                AcousticBoundaryLayer.thickness(1e-6, 1000).warnings().get(0));
        assertEquals(1, AcousticBoundaryLayer.frequency(1e-6, 1e-9).warnings().size());
        assertThrows(IllegalArgumentException.class, () -> AcousticBoundaryLayer.thickness(1e-6, 0));
    }

    /** µm in water under 100 kPa, where radius times frequency is 3.26 m/s. */
    @ParameterizedTest
    @CsvSource({"20, 163", "40, 81.5", "80, 40.7", "132, 24.7"})
    void bubblesResonateByMinnaert(double kilohertz, double micrometres) {
        Estimate radius = MinnaertBubble.radius(kilohertz * 1e3, 100e3, 998.2);
        assertEquals(micrometres, radius.value() * 1e6, 0.005 * micrometres);
        assertEquals(
                kilohertz * 1e3,
                MinnaertBubble.frequency(radius.value(), 100e3, 998.2).value(),
                1e-6);
    }

    /** Minnaert 1933 (from memory): a bubble of 1 mm radius in water sings at 3.26 kHz; Leighton 1994: near 3 kHz mm. */
    @Test
    void aMillimetreBubbleSingsAtThreeKilohertz() {
        assertEquals(3260, MinnaertBubble.frequency(1e-3, 101_325, 998.2).value(), 0.01 * 3260);
    }

    /** A trade text prints 75 µm at 40 kHz, 9 % less than the formula: rounded, or for another pressure; not said there. */
    @Test
    void aTradeFigureForTheBubbleIsATenthSmaller() {
        double micrometres = MinnaertBubble.radius(40e3, 101_325, 998.2).value() * 1e6;
        assertEquals(0.91, 75 / micrometres, 0.01);
    }

    @Test
    void bubblesTooSmallOrTooLargeWarn() {
        assertEquals(
                "Minnaert's resonance without surface tension holds for bubbles from 10 µm to 10"
                        + "\u2009000 µm, not at 3.286 µm",
                MinnaertBubble.radius(1e6, 101_325, 998.2).warnings().get(0));
        assertEquals(
                1, MinnaertBubble.frequency(0.05, 101_325, 998.2).warnings().size());
        assertThrows(IllegalArgumentException.class, () -> MinnaertBubble.radius(-40e3, 101_325, 998.2));
    }
}
