package org.washwright.starter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.generate.Starter;

/** What soils and shapes ask for. The source stands at each test. */
class SoilAndShapeTest {

    private static final String SOFT = "{substrate: carbon-steel, hardness: 20 HRC}";

    /**
     * ASM Handbook vol. 5, emulsion cleaning (read): no emulsion where blind holes can't be rinsed; that sprays and jets do
     * not reach in is common practice, as are the ratio of 5 and the width of 1 mm.
     */
    @Test
    void slenderBlindHolesPutOutEmulsionSprayAndSnow() {
        Asked asked = Asked.of(SOFT, "{kind: blind-hole, diameter: 6 mm, depth: 48 mm}", "cutting-oil", "assembly");
        assertTrue(asked.outBy("emulsion-soak").contains("GE-01"));
        assertTrue(asked.outBy("neutral-spray").contains("GE-02"));
        assertTrue(asked.outBy("co2-snow").contains("GE-02"));
        assertEquals("recommended", asked.status("hydrocarbon-vacuum"));
        assertTrue(asked.inOrder("alkaline-ultrasonic", "dry", "vacuum-dry"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{kind: blind-hole, diameter: 6 mm, depth: 20 mm}",
                "{kind: through-bore, diameter: 6 mm, depth: 48 mm}",
                "{kind: thread, diameter: 6 mm, depth: 48 mm}"
            })
    void shallowOrOpenHolesPutNothingOut(String feature) {
        Asked asked = Asked.of(SOFT, feature, "cutting-oil", "assembly");
        assertEquals("recommended", asked.status("neutral-spray"));
        assertEquals("recommended", asked.status("emulsion-soak"));
    }

    @Test
    void aBlindHoleOfUnknownDepthLeavesTheSprayOpen() {
        Asked asked = Asked.of(SOFT, "{kind: blind-hole, diameter: 6 mm, depth: unknown}", "cutting-oil", "assembly");
        assertEquals("conditional", asked.status("neutral-spray"));
        assertTrue(asked.asks("features/0/depth"));
    }

    /**
     * ASM Handbook vol. 5, vapour degreasing (read): pigmented drawing compound, chips and buffing compound need spray,
     * brushing or ultrasonics beside the vapour; ordinary oil does not.
     */
    @ParameterizedTest
    @CsvSource({
        "pigmented-drawing-compound, true",
        "chips, true",
        "polishing-compound, true",
        "cutting-oil, false",
        "drawing-fat, false"
    })
    void solidsInVapourNeedMechanicalSupport(String soil, boolean flush) {
        Asked asked = Asked.of(SOFT, "", soil, "storage");
        assertEquals(flush, asked.stages("chlorinated-vapour").contains("solvent-flush"));
        assertFalse(asked.stages("hydrocarbon-vacuum").contains("solvent-flush"));
        if (flush) {
            assertTrue(asked.inOrder("chlorinated-vapour", "solvent-flush", "chlorinated-vapour"));
        }
    }

    /** ASM Handbook vol. 5, emulsion cleaning, safety (read): at least 15 K under the flash point, here of 75 °C. */
    @Test
    void theEmulsionBathStaysFifteenKelvinUnderItsFlashPoint() {
        Asked asked = Asked.of(SOFT, "", "cutting-oil", "storage");
        assertEquals(
                75 - 15,
                asked.window("emulsion-soak", "emulsion-soak", "temperature").high(),
                1e-9);
        assertTrue(asked.cautions("emulsion-soak").contains("flashes at 75 °C"));
        double flash = ((org.washwright.task.Value.Number) Starter.edition()
                        .catalogue()
                        .term("medium", "emulsion-cleaner")
                        .orElseThrow()
                        .property("flashPoint"))
                .span()
                .low();
        assertEquals(60 + 273.15, flash - 15, 1e-9, "the literal of the rule and the catalogue go together");
    }

    /** Two finishing tutorials: saponifiable fats leave easily in hot alkali; polar soil favours water, non-polar solvent. */
    @Test
    void fatsFavourAlkaliOilsFavourSolventAndSaltsFavourWater() {
        Asked fat = Asked.of(SOFT, "", "drawing-fat", "storage");
        Asked oil = Asked.of(SOFT, "", "cutting-oil", "storage");
        Asked coolant = Asked.of(SOFT, "", "cutting-emulsion", "storage");
        assertTrue(
                fat.points("alkaline-ultrasonic", "soil-removal") > oil.points("alkaline-ultrasonic", "soil-removal"));
        assertTrue(
                oil.points("hydrocarbon-vacuum", "soil-removal") > oil.points("alkaline-ultrasonic", "soil-removal"));
        assertTrue(coolant.points("hydrocarbon-vacuum", "soil-removal") < 0);
        assertTrue(coolant.points("alkaline-ultrasonic", "soil-removal") > 0);
    }

    /** Physics: wax floats off only once it melts; the wax of the catalogue melts at 60 °C. */
    @Test
    void waxIsWashedAboveItsMeltingPoint() {
        Asked asked = Asked.of(SOFT, "", "preserving-wax", "storage");
        assertTrue(asked.window("alkaline-ultrasonic", "alkaline-ultrasonic", "temperature")
                        .low()
                >= 60 - 1e-9);
    }

    /** ASM Handbook vol. 5, Table 1 (from memory): demagnetise where steel fines cling. */
    @Test
    void steelFinesOnSteelAreDemagnetisedFirst() {
        assertEquals(
                "demagnetise",
                Asked.of(SOFT, "", "honing-oil", "storage")
                        .stages("neutral-spray")
                        .get(0));
        assertFalse(Asked.of("brass", "", "honing-oil", "storage")
                .stages("neutral-spray")
                .contains("demagnetise"));
    }

    /** Physics: what is longer than a tank does not go into it. */
    @Test
    void whatFitsNoTankIsSprayed() {
        Asked asked = Asked.of(SOFT, "oversize-envelope", "cutting-oil", "assembly");
        assertEquals("recommended", asked.status("neutral-spray"));
        assertEquals("ruled out", asked.status("hydrocarbon-vacuum"));
        assertEquals("ruled out", asked.status("alkaline-ultrasonic"));
    }
}
