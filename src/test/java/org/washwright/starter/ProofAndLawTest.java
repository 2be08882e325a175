package org.washwright.starter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.washwright.assessment.Wishes;
import org.washwright.generate.Starter;

/** How cleanliness is proven, and what the law adds. The source stands at each test. */
class ProofAndLawTest {

    private static String proofs(String demand) {
        return Starter.answer(
                        "title: t\nsoils: [cutting-oil]\nfeatures: []\ncomponents: []\npreceding: {rest: not applicable}\ndemand: {"
                                + demand + ", rest: not applicable}\nfollowing: {operation: assembly}\n")
                .answer()
                .verifications()
                .toString();
    }

    /** ASTM F22 (read): water must not break within a minute on withdrawal; blind to soil that water wets. */
    @Test
    void aWaterBreakFreeSurfaceIsProvenByF22AndItsBlindSpotIsNamed() {
        String proofs = proofs("waterBreakFree: yes");
        assertTrue(proofs.contains("ASTM F22"), proofs);
        assertTrue(proofs.contains("hold for a minute"), proofs);
        assertTrue(proofs.contains("can't see salts"), proofs);
        assertFalse(proofs("waterBreakFree: no").contains("F22"));
    }

    /** ISO 16232:2018 by trade explanations: particles by extraction, filter and count. */
    @Test
    void aParticleLimitIsProvenByCountAndAFilmByWeight() {
        assertTrue(proofs("waterBreakFree: no, residue: not applicable, particleCode: A(B-E17/J-K00)")
                .contains("ISO 16232"));
        assertFalse(proofs("waterBreakFree: no").contains("ISO 16232"));
        assertTrue(proofs("waterBreakFree: no, residue: 500 mg/m2").contains("ravimetry"));
    }

    /** 40 CFR 751.603 (read): 0.14 ppm over 8 h; 0.14 × 165.83 / 24.45 = 0.95 mg/m³ at 25 °C (molar volume of an ideal gas). */
    @Test
    void perchloroethyleneInTheUnitedStatesIsRegulatedAndItsLimitShown() {
        String task = "title: t\nmaterials: [carbon-steel]\nsoils: [cutting-oil]\nfollowing: {operation: storage}\n"
                + "jurisdictions: [JUR]\npermittedSolvents: [chlorinated]\n";
        Asked us = new Asked(Starter.answer(task.replace("JUR", "us")).answer());
        Asked uk = new Asked(Starter.answer(task.replace("JUR", "uk")).answer());
        assertTrue(us.cautions("chlorinated-vapour").contains("0.14 ppm"));
        assertFalse(uk.cautions("chlorinated-vapour").contains("0.14 ppm"));
        assertTrue(us.cautions("chlorinated-vapour").contains("0.95 mg/m³"));
        // IARC group 2A (list of classifications, read).
        assertTrue(uk.cautions("chlorinated-vapour").contains("2A"));
    }

    /** 40 CFR 751 (89 FR 103560, read): in force from 17 January 2025; before that day the rule only announces itself. */
    @Test
    void datedLawIsReadForTheDateOfTheQuestion() {
        String task = "title: t\nmaterials: [carbon-steel]\nsoils: [cutting-oil]\nfollowing: {operation: storage}\n"
                + "jurisdictions: [us]\npermittedSolvents: [chlorinated]\n";
        var edition = Starter.edition();
        for (String date : new String[] {"2025-01-16", "2025-01-17"}) {
            Asked asked = new Asked(Starter.interpreted()
                    .assess(Starter.task(edition, task), Wishes.on(date))
                    .answer());
            String cautions = asked.cautions("chlorinated-vapour");
            boolean inForce = date.equals("2025-01-17");
            assertEquals(inForce, cautions.contains("sets 0.14 ppm over 8 h and asks"), cautions);
            assertEquals(!inForce, cautions.contains("From 17 January 2025"), cautions);
        }
    }

    /** An exposure limit without its issuing body and year can't be checked. */
    @Test
    void everyExposureLimitNamesItsIssuingBodyAndYear() {
        Asked asked = Asked.of("{substrate: carbon-steel, hardness: 20 HRC}", "", "cutting-oil", "storage");
        for (String process : new String[] {"hydrocarbon-vacuum", "chlorinated-vapour"}) {
            assertTrue(
                    asked.cautions(process).matches("(?s).* over 8 h \\([^)]*[12][0-9]{3}[^)]*\\).*"),
                    () -> asked.cautions(process));
        }
    }

    /** Common practice: the site's permit decides; where it is not known, nothing is. */
    @Test
    void onlyPermittedSolventsStand() {
        Asked none =
                new Asked(Starter.answer("title: t\npermittedSolvents: []\n").answer());
        assertTrue(none.outBy("hydrocarbon-vacuum").contains("LA-01"));
        Asked open = new Asked(Starter.answer("title: t\n").answer());
        assertTrue(open.candidate("hydrocarbon-vacuum").isPresent());
        assertTrue(open.asks("permittedSolvents"));
    }

    /** Design: a conditional line never ranks above a recommended one. */
    @Test
    void whatIsConditionalNeverStandsBeforeWhatIsRecommended() {
        Starter.demoTasks().values().forEach(task -> {
            String order = Starter.interpreted().assess(task, Starter.WISHES).answer().candidates().stream()
                    .map(c -> c.status().substring(0, 1))
                    .reduce("", String::concat);
            assertTrue(order.matches("r*c*"), order);
        });
    }
}
