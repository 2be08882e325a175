package org.washwright.starter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * No emulsion cleaning of sintered parts or of parts with blind holes that can't be rinsed: ASM Handbook vol. 5 (1994),
 * emulsion cleaning, limitations (read). That acid and strong alkali bleed out as well is common practice, no source.
 */
class PoresTest {

    @Test
    void sinteredPartsAreNotCleanedInEmulsionAcidOrCurrent() {
        Asked asked = Asked.of("{substrate: sintered-steel, hardness: 24 HRC}", "", "cutting-oil", "storage");
        assertTrue(asked.outBy("emulsion-soak").contains("MA-03"));
        assertTrue(asked.outBy("acid-pickling").contains("MA-03"));
        assertTrue(asked.outBy("electrolytic-alkaline").contains("MA-03"));
        assertEquals("recommended", asked.status("hydrocarbon-vacuum"));
        assertTrue(asked.inOrder("neutral-spray", "neutral-spray", "dry", "vacuum-dry"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"grey-cast-iron", "aluminium-alloy", "zinc-die-cast"})
    void aCastingIsTreatedAlikeWhenItIsPorousAndAskedWhenThatIsOpen(String metal) {
        Asked porous = Asked.of("{substrate: " + metal + ", porous: yes}", "", "cutting-oil", "storage");
        assertTrue(porous.outBy("emulsion-soak").contains("MA-03"));
        Asked sound = Asked.of("{substrate: " + metal + ", porous: no}", "", "cutting-oil", "storage");
        assertEquals("recommended", sound.status("emulsion-soak"));
        Asked open = Asked.of("{substrate: " + metal + ", porous: unknown}", "", "cutting-oil", "storage");
        assertEquals("conditional", open.status("emulsion-soak"));
        assertTrue(open.asks("materials/0/porous"));
    }

    @Test
    void nobodyIsAskedForPoresInWroughtSteel() {
        Asked asked = Asked.of("{substrate: carbon-steel, hardness: 20 HRC}", "", "cutting-oil", "storage");
        assertFalse(asked.asks("materials/0/porous"));
        assertEquals("recommended", asked.status("emulsion-soak"));
    }
}
