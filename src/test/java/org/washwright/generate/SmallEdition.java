package org.washwright.generate;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.washwright.catalogue.Catalogue;
import org.washwright.document.Diagnostics;
import org.washwright.drools.DrlReader;
import org.washwright.exchange.EditionFiles;
import org.washwright.exchange.EditionReader;
import org.washwright.rule.Edition;
import org.washwright.task.FieldType;
import org.washwright.task.Group;

/**
 * A small edition whose words mean nothing. Its terms cover what a property can be: a value, a range, one of several,
 * unknown, and left out, which is not applicable.
 */
public final class SmallEdition {

    private static final String KINDS = """
            kinds:
              process:
                name: process
                properties:
                  medium: {label: medium, kind: medium}
                  technique: {label: technique, kind: technique}
                  charges: {label: charges, flag: yes}
                  heat: {label: heat, quantity: temperature, unit: °C}
              medium:
                name: medium
                properties:
                  wet: {label: wet, flag: yes}
                  flash: {label: flash point, quantity: temperature, unit: °C}
                  class: {label: class, kind: solvent-class}
              technique:
                name: technique
                properties:
                  jet: {label: jet, flag: yes}
                  reach: {label: reach, quantity: length, unit: mm}
              substrate:
                name: substrate
                properties:
                  family: {label: family, kind: family}
                  rusts: {label: rusts, flag: yes}
                  limit: {label: limit, quantity: rockwell-c, unit: HRC}
              soil:
                name: soil
                properties:
                  polarity: {label: polarity, kind: polarity}
                  melts: {label: melting point, quantity: temperature, unit: °C}
                  oily: {label: oily, flag: yes}
              feature:
                name: feature
                properties:
                  dead: {label: dead end, flag: yes}
              mouth:
                name: mouth
                properties:
                  fills: {label: fills by itself, flag: yes}
              operation:
                name: operation
                properties:
                  wet: {label: enters wet, flag: yes}
            """;

    private static final Map<String, String> TERMS = Map.ofEntries(
            Map.entry("medium", """
                      - {id: medium-a, name: A, properties: {wet: yes, flash: 60 °C, class: solvent-class-a}}
                      - {id: medium-b, name: B, properties: {wet: no, flash: 20..100 °C}}
                      - {id: medium-c, name: C, properties: {wet: unknown, class: [solvent-class-a, solvent-class-b]}}
                    """),
            Map.entry("technique", """
                      - {id: technique-a, name: A, properties: {jet: yes, reach: 2 mm}}
                      - {id: technique-b, name: B, properties: {jet: no, reach: 1..5 mm}}
                      - {id: technique-c, name: C}
                    """),
            Map.entry("substrate", """
                      - {id: substrate-a, name: A, properties: {family: family-a, rusts: yes, limit: 31 HRC}}
                      - {id: substrate-b, name: B, properties: {family: family-b, rusts: no, limit: 20..40 HRC}}
                      - {id: substrate-c, name: C, properties: {family: [family-a, family-c], rusts: unknown}}
                    """),
            Map.entry("soil", """
                      - {id: soil-a, name: A, properties: {polarity: polarity-a, melts: 60 °C, oily: yes}}
                      - {id: soil-b, name: B, properties: {polarity: polarity-b, melts: unknown, oily: no}}
                      - {id: soil-c, name: C, properties: {oily: yes}}
                    """),
            Map.entry("feature", """
                      - {id: feature-a, name: A, properties: {dead: yes}}
                      - {id: feature-b, name: B, properties: {dead: no}}
                      - {id: feature-c, name: C}
                    """),
            Map.entry("mouth", """
                      - {id: mouth-a, name: A, properties: {fills: yes}}
                      - {id: mouth-b, name: B, properties: {fills: no}}
                      - {id: mouth-c, name: C, properties: {fills: unknown}}
                    """),
            Map.entry("operation", """
                      - {id: operation-a, name: A, properties: {wet: yes}}
                      - {id: operation-b, name: B, properties: {wet: no}}
                      - {id: operation-c, name: C, properties: {wet: unknown}}
                    """),
            Map.entry("process", """
                      - {id: any, name: any, group: yes}
                      - {id: water, name: water, parent: any, group: yes}
                      - {id: oil, name: oil, parent: any, group: yes}
                      - {id: water-a, name: water A, parent: water, phrase: wash, windows: {temperature: 20..80 °C}, properties: {medium: medium-a, technique: technique-a, charges: yes, heat: 60 °C}}
                      - {id: water-b, name: water B, parent: water, phrase: soak, windows: {temperature: 40..90 °C}, properties: {medium: medium-b, technique: technique-b, charges: no, heat: 20..100 °C}}
                      - {id: oil-a, name: oil A, parent: oil, phrase: flood, windows: {temperature: 20..60 °C}, properties: {medium: medium-c, technique: technique-c, charges: no}}
                      - {id: oil-b, name: oil B, parent: oil, phrase: wipe, properties: {medium: [medium-a, medium-b], technique: technique-a, heat: unknown}}
                    """),
            Map.entry("stage", """
                      - {id: first, name: first, position: 10, cleaning: yes, phrase: start, windows: {temperature: 20..60 °C}, alternatives: [second]}
                      - {id: second, name: second, position: 20, cleaning: no, phrase: go on, windows: {temperature: 10..30 °C}}
                      - {id: last, name: last, position: 200, cleaning: no, phrase: end}
                    """),
            Map.entry("parameter", """
                      - {id: temperature, name: temperature, quantity: temperature, unit: °C, scale: 0..100 °C, factor: temperature}
                    """),
            Map.entry("hazard", """
                      - {id: hazard-a, name: A, caution: Mind A.}
                      - {id: hazard-b, name: B, caution: Mind B.}
                    """));

    private static final String GRADING = """
            steps: {1: 5, 2: 10, 3: 20}
            areas:
              - {id: technology, name: technology, weight: 3, criteria: [{id: works, name: works, weight: 1, start: 50}]}
              - {id: quality, name: quality, weight: 2, criteria: [{id: fine, name: fine, weight: 1, start: 40}]}
              - id: health-and-safety
                name: safety
                weight: 2
                criteria:
                  - {id: safe, name: safe, weight: 1, start: 60, figure: {of: medium.flash, curve: [["20 °C", 10], ["60 °C", 40], ["100 °C", 30]]}}
              - {id: environment, name: environment, weight: 1, criteria: [{id: green, name: green, weight: 1, start: 50}]}
              - {id: cost, name: cost, weight: 1, criteria: [{id: cheap, name: cheap, weight: 1, start: 50}]}
            """;

    private static final String ATTRIBUTES = """
            attributes:
              - {id: att-flag, label: a flag, question: "Is it?", flag: yes}
              - {id: att-heat, label: a heat, question: "How hot?", quantity: temperature, unit: °C}
              - {id: att-soil, label: a soil, question: "Which?", kind: soil}
            """;

    private static final String HEAD = """
            name: small
            title: Small edition
            language: en
            licence: none
            sources:
              - {id: BOOK, title: A book, year: 2000, locator: nowhere, seen: yes}
            """;

    /** Hang on what is cleaned and how heavy it is. */
    private static final String FEW = """
            rule "soft" @id("S-01") @basis("common practice")
            when $m : Material(substrate.rusts == true) then caution("hazard-a", "It rusts."); end
            rule "heavy" @id("S-02") @basis("common practice")
            when Part(mass >= "1 kg") $p : Process(charges == true) then ruleOut($p, "main", "Too heavy."); end
            """;

    private SmallEdition() {}

    /** Its files without any rule. */
    public static Map<String, String> texts() {
        Map<String, String> files = new TreeMap<>();
        files.put("edition.yaml", HEAD);
        files.put("grading.yaml", GRADING);
        files.put(
                "assumptions.yaml",
                "assumptions:\n  - {id: hours-per-shift, label: hours, value: 8 h, source: assumption}\n");
        files.put("catalogue/attributes.yaml", ATTRIBUTES);
        StringBuilder kinds = new StringBuilder(KINDS);
        Set<String> more = new TreeSet<>(List.of("family", "polarity"));
        for (Group group : Group.values()) {
            group.attributes().forEach(a -> {
                if (a.type() instanceof FieldType.TermType t && !t.isFlag()) {
                    more.add(t.kind());
                }
            });
        }
        more.removeAll(Catalogue.KINDS_KNOWN);
        for (String kind : Catalogue.KINDS_KNOWN) {
            if (!KINDS.contains("\n  " + kind + ":")) {
                kinds.append("  ").append(kind).append(": {name: ").append(kind).append("}\n");
            }
            files.put("catalogue/" + kind + "-terms.yaml", terms(kind));
        }
        for (String kind : more) {
            if (!KINDS.contains("\n  " + kind + ":")) {
                kinds.append("  ").append(kind).append(": {name: ").append(kind).append("}\n");
            }
            files.put("catalogue/" + kind + "-terms.yaml", terms(kind));
        }
        files.put("catalogue/kinds.yaml", kinds.toString());
        return files;
    }

    /** Its files with a few rules, for tests of what is around an edition: how large it is does not matter there. */
    public static Map<String, String> withFewRules() {
        Map<String, String> files = texts();
        files.put("rules/all.drl", FEW);
        return files;
    }

    private static String terms(String kind) {
        String terms = TERMS.get(kind);
        if (terms == null) {
            StringBuilder out = new StringBuilder();
            for (String letter : List.of("a", "b", "c", "d", "e", "f")) {
                out.append("  - {id: " + kind + "-" + letter + ", name: " + kind + " " + letter + "}\n");
            }
            terms = out.toString();
        }
        return "kind: " + kind + "\nterms:\n" + terms;
    }

    /** These texts as the files of an edition. */
    public static EditionFiles files(Map<String, String> texts) {
        Map<String, byte[]> bytes = new TreeMap<>();
        texts.forEach((name, text) -> bytes.put(name, text.getBytes(StandardCharsets.UTF_8)));
        return new EditionFiles(bytes);
    }

    /** The edition with one file of rules. */
    public static Edition with(String drl) {
        Map<String, String> texts = texts();
        texts.put("rules/all.drl", drl);
        return read(files(texts));
    }

    /** Reads an edition that has to be sound. */
    public static Edition read(EditionFiles files) {
        Diagnostics diagnostics = new Diagnostics();
        EditionReader.Result result = new EditionReader(new DrlReader()).read(files, diagnostics);
        return result.edition()
                .orElseThrow(() -> new AssertionError(String.join(
                        "\n", diagnostics.all().stream().map(String::valueOf).toList())));
    }
}
