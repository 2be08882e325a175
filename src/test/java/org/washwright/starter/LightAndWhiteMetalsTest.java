package org.washwright.starter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Zinc, aluminium, titanium and magnesium: what each stands. The source stands at each test. */
class LightAndWhiteMetalsTest {

    /**
     * ASTM B252: a cleaner above about pH 10.5 attacks the aluminium-rich phase of zinc die castings and plating blisters (a
     * trade report on the standard). The two ends have to be named: the bath starts at pH 11, zinc ends at 10.5.
     */
    @Test
    void zincClosesTheStronglyAlkalineWindowAndBothEndsAreNamed() {
        Asked asked = Asked.of("{substrate: zinc-die-cast, porous: no}", "", "cutting-emulsion", "electroplating");
        String why = asked.whyOut("alkaline-ultrasonic");
        assertTrue(why.contains("at least 11 "), why);
        assertTrue(why.contains("at most 10.5 "), why);
        assertEquals(java.util.List.of("MA-08"), asked.outBy("alkaline-ultrasonic"));
        assertEquals(9.5, asked.window("neutral-spray", "neutral-spray", "ph").high(), 1e-9);
    }

    /** ASTM B252 by a trade report: anodic, 1.6 to 3.2 A/dm², 25 to 45 s; Metal Finishing guidebook 2013, p. 57: 1.1 to 3.2. */
    @Test
    void zincIsElectrocleanedMildlyInPlaceOfTheStrongBath() {
        Asked asked = Asked.of("{substrate: zinc-die-cast, porous: no}", "", "cutting-emulsion", "electroplating");
        assertFalse(asked.stages("neutral-spray").contains("anodic-electroclean"));
        assertEquals(
                3.2,
                asked.window("neutral-spray", "mild-electroclean", "current-density")
                        .high(),
                1e-9);
        assertTrue(asked.window("neutral-spray", "mild-electroclean", "current-density")
                        .low()
                >= 1.1);
        assertTrue(asked.window("neutral-spray", "mild-electroclean", "ph").high() <= 10.5);
        assertTrue(asked.window("neutral-spray", "mild-electroclean", "time").high() <= 45 + 1e-6);
        assertTrue(asked.inOrder(
                "neutral-spray",
                "neutral-spray",
                "rinse",
                "mild-electroclean",
                "wash-rinse",
                "acid-dip",
                "acid-rinse"));
    }

    /** Supplier notes on aluminium cleaners: free alkali above about pH 10 etches and blackens; inhibited products go higher. */
    @Test
    void aluminiumStandsNoStrongAlkali() {
        Asked asked = Asked.of("{substrate: aluminium-alloy, porous: no}", "", "cutting-oil", "painting");
        String why = asked.whyOut("alkaline-ultrasonic");
        assertTrue(why.contains("at least 11 ") && why.contains("at most 10 "), why);
        // The film of the emulsion is washed off in the mild wash, pH 10 at most.
        assertTrue(asked.window("emulsion-soak", "mild-alkaline-wash", "ph").high() <= 10);
        assertEquals("ruled out", asked.status("acid-pickling"));
    }

    /** From memory: fresh aluminium fines break chlorinated solvent down with heat and acid. */
    @Test
    void aluminiumInChlorinatedSolventIsWarnedOf() {
        Asked asked = Asked.of("{substrate: aluminium-alloy, porous: no}", "", "cutting-oil", "storage");
        assertTrue(asked.cautions("chlorinated-vapour").contains("acid acceptance"));
    }

    /** From memory, aerospace practice: no chlorine on titanium before hot service (stress corrosion). */
    @Test
    void titaniumBeforeHeatTakesNoChlorinatedSolvent() {
        Asked hot = Asked.of("titanium-alloy", "", "cutting-oil", "vacuum-heat-treatment");
        assertEquals(java.util.List.of("MA-11"), hot.outBy("chlorinated-vapour"));
        assertEquals("recommended", hot.status("hydrocarbon-vacuum"));
        Asked welded = Asked.of("titanium-alloy", "", "cutting-oil", "welding");
        assertEquals(java.util.List.of("MA-11"), welded.outBy("chlorinated-vapour"));
        Asked cold = Asked.of("titanium-alloy", "", "cutting-oil", "storage");
        assertEquals("recommended", cold.status("chlorinated-vapour"));
        Asked open = Asked.of("titanium-alloy", "", "cutting-oil", "unknown");
        assertEquals("conditional", open.status("chlorinated-vapour"));
        assertTrue(open.asks("following/operation"));
    }

    /** From memory: magnesium is passive above about pH 10.5 and takes no acid but chromic, phosphoric and fluoride ones. */
    @Test
    void magnesiumWantsAlkaliAndNoAcid() {
        Asked asked = Asked.of("{substrate: magnesium-alloy, porous: no}", "", "cutting-oil", "storage");
        assertTrue(asked.whyOut("neutral-spray").contains("at least 10.5 "), asked.whyOut("neutral-spray"));
        assertEquals("ruled out", asked.status("acid-pickling"));
        assertEquals("recommended", asked.status("alkaline-ultrasonic"));
    }

    /** ASTM B253, B254, B480 (headings, from memory): zincate, nickel strike and the like come before plating on these metals. */
    @Test
    void lightMetalsAndStainlessAreNotSentToThePlatingLineOfSteel() {
        for (String metal : java.util.List.of("aluminium-alloy", "magnesium-alloy", "stainless-steel")) {
            Asked asked = Asked.of("{substrate: " + metal + ", porous: no}", "", "cutting-oil", "electroplating");
            String process = metal.equals("magnesium-alloy") ? "alkaline-ultrasonic" : "neutral-spray";
            assertTrue(asked.stages(process).contains("special-activation"), metal);
            assertFalse(asked.stages(process).contains("acid-dip"), metal);
        }
    }
}
