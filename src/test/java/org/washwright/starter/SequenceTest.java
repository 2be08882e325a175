package org.washwright.starter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** In which order stages stand. The source stands at each test. */
class SequenceTest {

    private static final String SOFT = "{substrate: carbon-steel, hardness: 20 HRC}";

    /** ASM Handbook vol. 5, acid cleaning (read): acid does not wet oily areas, so degreasing always precedes pickling. */
    @Test
    void degreaseBeforePickling() {
        Asked asked = Asked.of(SOFT, "", "cutting-oil, rust", "storage");
        assertTrue(asked.inOrder("acid-pickling", "degrease", "acid-pickling"));
        Asked dry = Asked.of(SOFT, "", "rust", "storage");
        assertFalse(dry.stages("acid-pickling").contains("degrease"));
    }

    /** ASM Handbook vol. 5, acid cleaning (read): several rinses between alkali and acid. */
    @Test
    void rinseBetweenAlkaliAndAcid() {
        Asked asked = Asked.of(SOFT, "", "cutting-oil, rust", "storage");
        assertTrue(asked.inOrder("acid-pickling", "degrease", "interstage-rinse", "acid-pickling", "rinse"));
        Asked dry = Asked.of(SOFT, "", "rust", "storage");
        assertFalse(dry.stages("acid-pickling").contains("interstage-rinse"));
    }

    /** ASM Handbook vol. 5, emulsion cleaning (read): the oily film is washed off in alkali when plated or painted. */
    @Test
    void alkalineWashAfterEmulsionBeforePaintAndPlating() {
        Asked painted = Asked.of(SOFT, "", "cutting-oil", "painting");
        assertTrue(painted.inOrder(
                "emulsion-soak", "emulsion-soak", "alkaline-wash", "wash-rinse", "deionised-rinse", "dry"));
        Asked plated = Asked.of(SOFT, "", "cutting-oil", "electroplating");
        assertTrue(plated.inOrder(
                "emulsion-soak", "emulsion-soak", "alkaline-wash", "anodic-electroclean", "wash-rinse", "acid-dip"));
    }

    /** ASM Handbook vol. 5, emulsion cleaning (read): the film may be wanted as rust protection between operations. */
    @Test
    void theFilmOfTheEmulsionStaysOnWhatGoesToStore() {
        Asked asked = Asked.of(SOFT, "", "cutting-oil", "storage");
        assertFalse(asked.stages("emulsion-soak").contains("alkaline-wash"));
        assertFalse(asked.stages("emulsion-soak").contains("protect"));
        assertTrue(asked.stages("neutral-spray").contains("protect"));
    }

    /** ASTM B322-99, sequence (read): preclean, intermediate alkaline, electroclean, rinse, acid dip, rinse, plate. */
    @Test
    void theSequenceBeforeElectroplatingIsThatOfTheStandard() {
        Asked asked = Asked.of(SOFT, "", "cutting-oil", "electroplating");
        assertTrue(
                asked.inOrder(
                        "alkaline-ultrasonic",
                        "alkaline-ultrasonic",
                        "rinse",
                        "anodic-electroclean",
                        "wash-rinse",
                        "acid-dip",
                        "acid-rinse"),
                asked.stages("alkaline-ultrasonic")::toString);
        assertTrue(asked.inOrder(
                "hydrocarbon-vacuum",
                "hydrocarbon-vacuum",
                "anodic-electroclean",
                "wash-rinse",
                "acid-dip",
                "acid-rinse"));
        // ASTM B254, from memory, and common practice: straight into the plating bath, without drying.
        assertFalse(asked.stages("alkaline-ultrasonic").contains("dry"));
        assertEquals(
                "acid-rinse",
                asked.stages("alkaline-ultrasonic")
                        .get(asked.stages("alkaline-ultrasonic").size() - 1));
    }

    /** Metal Finishing guidebook 2013, p. 57 (read): ferrous 4.3 to 16.1 A/dm², brass 1.6 to 4.3 A/dm². */
    @Test
    void theCurrentOfElectrocleaningFitsTheMetal() {
        Asked steel = Asked.of(SOFT, "", "cutting-oil", "electroplating");
        assertEquals(
                4.3,
                steel.window("alkaline-ultrasonic", "anodic-electroclean", "current-density")
                        .low(),
                1e-9);
        assertEquals(
                16.1,
                steel.window("alkaline-ultrasonic", "anodic-electroclean", "current-density")
                        .high(),
                1e-9);
        Asked brass = Asked.of("brass", "", "cutting-oil", "electroplating");
        assertEquals(
                1.6,
                brass.window("alkaline-ultrasonic", "anodic-electroclean", "current-density")
                        .low(),
                1e-9);
        assertEquals(
                4.3,
                brass.window("alkaline-ultrasonic", "anodic-electroclean", "current-density")
                        .high(),
                1e-9);
        assertEquals(
                4.3,
                brass.window("electrolytic-alkaline", "electrolytic-alkaline", "current-density")
                        .high(),
                1e-9);
    }

    /** ASM Handbook vol. 5, rust and scale, example 4 (read): welded low-carbon steel before paint is blasted or pickled. */
    @Test
    void scaleBeforePaintIsBlastedOffTheDryPart() {
        Asked asked = Asked.of(SOFT, "oversize-envelope", "cutting-oil, scale", "painting");
        assertTrue(asked.inOrder("neutral-spray", "neutral-spray", "rinse", "dry", "blast"));
        Asked small = Asked.of(SOFT, "", "cutting-oil, scale", "painting");
        assertEquals("recommended", small.status("acid-pickling"));
    }

    /** Common practice, no source: water spots and flash rust; dry at once, protect what waits. */
    @Test
    void steelThatWaitsIsRinsedWithInhibitorDriedAndOiled() {
        Asked asked = Asked.of(SOFT, "", "cutting-oil", "assembly");
        assertTrue(asked.inOrder("neutral-spray", "neutral-spray", "rinse", "inhibited-rinse", "dry", "protect"));
        assertTrue(asked.cautions("neutral-spray").contains("rusts within minutes"));
    }
}
