package org.washwright.plant;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.Wishes;
import org.washwright.document.Diagnostics;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;

/** An edition whose words mean nothing, with a few rules over one process, and a plant and a task that can be worked by hand. */
final class SmallPlant {

    private static final String RULES = """
            rule "hard parts are rinsed" @id("R-1") @basis("common practice")
            when $m : Material(hardness >= "50 HRC")
            then require("tub", "rinse", after("main"), "Hard parts are rinsed."); end
            rule "spots" @id("R-2") @basis("common practice")
            when Demand(spotFree == true)
            then require("tub", "dry", after("main"), "Spots are dried away."); end
            rule "soil A" @id("R-3") @basis("common practice")
            when Soil(kind == "soil-a")
            then ruleOut("tub", "main", "Soil A stays on."); end
            rule "B warps" @id("R-4") @basis("common practice")
            when Material(substrate == "substrate-b")
            then limit("tub", "main", "temperature", max("40 °C"), "Substrate B warps."); end
            rule "B melts" @id("R-5") @basis("common practice")
            when Soil(kind == "soil-b")
            then limit("tub", "main", "temperature", min("60 °C"), "Soil B melts late."); end
            rule "chamber" @id("R-6") @basis("common practice")
            when Feature(kind == "feature-a")
            then require("tub", "flush", before("main"), "Holes are flushed."); end
            rule "before" @id("R-7") @basis("common practice")
            when Feature(kind == "feature-b")
            then require("tub", "before", before("main"), "Thick soil goes first."); end
            """;

    private static final Edition EDITION = edition();

    private SmallPlant() {}

    private static Edition edition() {
        Map<String, String> texts = SmallEdition.texts();
        texts.put(
                "catalogue/kinds.yaml",
                texts.get("catalogue/kinds.yaml")
                        .replace("  stage: {name: stage}\n", """
                                  stage:
                                    name: stage
                                    properties:
                                      inChamber: {label: in the chamber, flag: yes}
                                """)
                        .replace("  charging: {name: charging}\n", """
                                  charging:
                                    name: charging
                                    properties:
                                      partsAtOnce: {label: parts at once, quantity: ratio}
                                """));
        texts.put("catalogue/charging-terms.yaml", """
                kind: charging
                terms:
                  - {id: charging-a, name: A}
                  - {id: charging-b, name: B, properties: {partsAtOnce: 1}}
                """);
        texts.put("catalogue/parameter-terms.yaml", """
                kind: parameter
                terms:
                  - {id: temperature, name: temperature, quantity: temperature, unit: °C, scale: 0..100 °C, factor: temperature}
                  - {id: time, name: time, quantity: time, unit: min, scale: 0..20 min, factor: time}
                """);
        texts.put("catalogue/process-terms.yaml", """
                kind: process
                terms:
                  - {id: any, name: any, group: yes}
                  - {id: water, name: water, parent: any, group: yes}
                  - {id: tub, name: tub wash, parent: water, phrase: wash, windows: {temperature: 20..80 °C, time: 2..10 min}, properties: {medium: medium-a, technique: technique-a, charges: no, heat: 60 °C}}
                  - {id: pan, name: pan wash, parent: water, phrase: soak, windows: {temperature: 20..60 °C}, properties: {medium: medium-b, technique: technique-b, charges: no, heat: 60 °C}}
                """);
        texts.put("catalogue/stage-terms.yaml", """
                kind: stage
                terms:
                  - {id: before, name: prewash, position: 10, cleaning: yes, phrase: start, windows: {temperature: 20..60 °C, time: 1..3 min}, alternatives: [beside]}
                  - {id: beside, name: mild prewash, position: 20, cleaning: yes, phrase: go on, windows: {temperature: 20..60 °C, time: 1..3 min}}
                  - {id: flush, name: flush, position: 90, cleaning: no, phrase: flush, windows: {time: 1..3 min}, properties: {inChamber: yes}}
                  - {id: rinse, name: rinse, position: 200, cleaning: no, phrase: rinse, windows: {temperature: 20..40 °C, time: 1..3 min}}
                  - {id: dry, name: dry, position: 210, cleaning: no, phrase: dry, windows: {temperature: 60..100 °C, time: 4..8 min}}
                """);
        texts.put("assumptions.yaml", """
                assumptions:
                  - {id: hours-per-shift, label: hours, value: 8 h, source: assumption}
                  - {id: operating-point, label: place in each window, value: 50 %, source: assumption}
                  - {id: availability, label: share of the hours at work, value: 80 %, source: assumption}
                  - {id: transfer-time, label: time to lift a load, value: 30 s, source: assumption}
                """);
        texts.put("rules/all.drl", RULES);
        return SmallEdition.read(SmallEdition.files(texts));
    }

    static Edition words() {
        return EDITION;
    }

    static final String PLANT = """
            name: Tub in hall 1
            process: tub
            stages: [rinse]
            settings:
              main: {temperature: 50..70 °C, time: 4..6 min}
              rinse: {temperature: 20..30 °C, time: 2 min}
            basket: {volume: 60 L, mass: 50 kg, area: 6 m2}
            largestPart: 600 mm
            chambers: 2
            hours: 40 h
            transfer: 30 s
            availability: 80 %
            """;

    static final String TASK = """
            title: Bolts
            part: {mass: 2 kg, wettedArea: 500 cm2, largestDimension: 100 mm, annualQuantity: 52000 1/year, rest: not applicable}
            materials: [{substrate: substrate-a, hardness: 40 HRC, rest: not applicable}]
            components: []
            features: []
            soils: [{kind: soil-c, rest: not applicable}]
            lot: {charging: charging-a, rest: not applicable}
            preceding: {rest: not applicable}
            following: {rest: not applicable}
            demand: {spotFree: no, rest: not applicable}
            jurisdictions: []
            site: {rest: not applicable}
            permittedSolvents: []
            plants: []
            attributes: {att-flag: no, att-heat: not applicable, att-soil: not applicable}
            """;

    /** The plant, which has to be sound. */
    static Plant plant(String yaml) {
        Diagnostics diagnostics = new Diagnostics();
        return PlantReader.read("plant.yaml", yaml.getBytes(StandardCharsets.UTF_8), EDITION, diagnostics)
                .orElseThrow(() -> new AssertionError(diagnostics.all().toString()));
    }

    static CleaningTask task(String yaml) {
        return Starter.task(EDITION, yaml);
    }

    static PlantJudge judge() {
        return new PlantJudge(Assessor.of(EDITION, SweepInference.factory()), Wishes.on("2026-11-25"));
    }

    /** The tasks on the plant. */
    static PlantWeek week(String plant, String... tasks) {
        return judge().week(
                        plant(plant),
                        List.of(tasks).stream().map(t -> SetTask.of(task(t))).toList());
    }
}
