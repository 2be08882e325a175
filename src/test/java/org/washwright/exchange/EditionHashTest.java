package org.washwright.exchange;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.document.Diagnostics;
import org.washwright.engine.ReferenceInterpreter;
import org.washwright.generate.Defaults;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;

/** What the two hashes of an edition see and what they don't: files and order are text, the rest is meaning. */
class EditionHashTest {

    private static final Pattern RULE = Pattern.compile("(?ms)^rule .*?^end\\s*$");

    @Test
    void movingRulesBetweenFilesChangesTheTextAndNothingElse() {
        Map<String, String> texts = texts();
        Map<String, String> moved = new TreeMap<>(texts);
        moved.keySet().removeIf(n -> n.startsWith("rules/"));
        List<String> rules = new ArrayList<>();
        texts.forEach((name, text) -> {
            if (name.startsWith("rules/")) {
                RULE.matcher(text).results().forEach(r -> rules.add(r.group()));
            }
        });
        assertEquals(
                texts.values().stream()
                        .mapToLong(t ->
                                t.lines().filter(l -> l.startsWith("  @id(")).count())
                        .sum(),
                rules.size());
        // Backwards, some in files of their own, some three to a file, under names that sort another way.
        for (int i = 0; i < rules.size(); i++) {
            String name = "rules/moved/" + (100 - i / 3) + ".drl";
            moved.merge(name, rules.get(i), (a, b) -> b + "\n\n" + a);
        }
        moved.put("tables/aaa.csv", moved.remove("tables/standing-cautions.csv"));
        moved.put("catalogue/aaa.yaml", moved.remove("catalogue/substrates.yaml"));
        moved.put("trees/aaa.yaml", moved.remove("trees/what-is-this-soil.yaml"));
        sameMeaning(moved);
    }

    @Test
    void reorderingTermsPropertiesAndSynonymsChangesTheTextAndNothingElse() {
        Map<String, String> texts = texts();
        for (String name : List.of("catalogue/substrates.yaml", "catalogue/soils.yaml", "catalogue/stages.yaml")) {
            texts.put(name, reversed(texts.get(name), "  - "));
        }
        texts.put("catalogue/kinds.yaml", reversed(texts.get("catalogue/kinds.yaml"), "      "));
        String soils = texts.get("catalogue/soils.yaml");
        texts.put(
                "catalogue/soils.yaml",
                soils.replace("[honing fluid, grinding oil]", "[grinding oil, honing fluid]")
                        .replace("{polarity: non-polar, oily: yes,", "{oily: yes, polarity: non-polar,"));
        assertNotEquals(texts().get("catalogue/kinds.yaml"), texts.get("catalogue/kinds.yaml"));
        sameMeaning(texts);
    }

    /** Unit conversions are exact: 60 °C = 333.15 K = 140 °F; 75 °C = 348.15 K (definition of the degree Celsius). */
    @ParameterizedTest
    @CsvSource({
        "rules/safety/safety.drl, max(\"60 °C\"), max(\"333.15 K\")",
        "rules/safety/safety.drl, max(\"60 °C\"), max(\"140 °F\")",
        "rules/safety/safety.drl, medium.flashPoint <= \"100 °C\", medium.flashPoint <= \"373.15 K\"",
        "rules/soil/soils.drl, amount > \"1 g/m2\", amount > \"1000 mg/m2\"",
        "catalogue/media.yaml, value: 75 °C, value: 348.15 K",
        "catalogue/stages.yaml, bake-time: 8..22 h, bake-time: 480..1320 min",
        "grading.yaml, 10 mg/m3, 0.01 g/m3",
        "rules/line/lines.drl, 'basic\", position >', 'basic\",   position>'",
        "tables/how-to-prove.csv, <= 0.2 mm, <= 200 um",
    })
    void anotherUnitOfTheSameAmountKeepsTheMeaning(String file, String from, String to) {
        Edition changed = changed(file, from, to);
        assertEquals(Starter.edition().meaningHash(), changed.meaningHash());
        assertNotEquals(Starter.edition().textHash(), changed.textHash());
    }

    @ParameterizedTest
    @CsvSource({
        "rules/safety/safety.drl, max(\"60 °C\"), max(\"61 °C\")",
        "rules/material/materials.drl, rockwell >= \"31 HRC\", rockwell > \"31 HRC\"",
        "rules/material/materials.drl, Above pH 10 alkali etches, Above pH 10 alkali attacks",
        "rules/material/materials.drl, '@source(\"B850, bake table; B849, scope\")', '@source(\"B850, bake table\")'",
        "rules/material/materials.drl, @basis(\"handbook\"), @basis(\"trial\")",
        "rules/shape/geometry.drl, 'rule \"A jet', 'rule \"The jet'",
        "rules/soil/soils.drl, @id(\"SO-12\"), @id(\"SO-92\")",
        "grading.yaml, weight: 30, weight: 31",
        "grading.yaml, 3: 28, 3: 29",
        "grading.yaml, '[\"1 mg/m3\", 5]', '[\"1 mg/m3\", 6]'",
        "catalogue/media.yaml, value: 75 °C, value: 76 °C",
        "catalogue/hazards.yaml, keep the plant shut, keep the doors shut",
        "catalogue/processes.yaml, phrase: soak in warm emulsion, phrase: soak in cold emulsion",
        "catalogue/attributes.yaml, Will the part touch, Will any part touch",
        "tables/medium-for-soil.csv, 'solvent,soil-removal,3', 'solvent,soil-removal,2'",
        "trees/what-is-this-soil.yaml, propose: rust}, propose: scale}",
        "assumptions.yaml, value: 8 h, value: 7 h",
        "edition.yaml, 'year: 1998', 'year: 1999'",
        "edition.yaml, licence: Apache-2.0, licence: MIT",
    })
    void whateverShapesAnAnswerChangesTheMeaning(String file, String from, String to) {
        assertNotEquals(Starter.edition().meaningHash(), changed(file, from, to).meaningHash());
    }

    @Test
    void aCommentChangesTheTextOnly() {
        Edition changed = changed("rules/soil/soils.drl", "package starter.soils;", "package starter.soils;\n// Note.");
        assertEquals(Starter.edition().meaningHash(), changed.meaningHash());
        assertNotEquals(Starter.edition().textHash(), changed.textHash());
    }

    @ParameterizedTest
    @CsvSource({"en, UTC", "tr, Pacific/Kiritimati", "ar-EG, America/St_Johns"})
    void aZipAndBackIsTheSameToTheByteWhereverItIsMade(String locale, String zone) {
        byte[] here = Starter.files().toZip();
        byte[] there = Defaults.under(locale, zone, () -> Starter.files().toZip());
        assertArrayEquals(here, there);
        Diagnostics diagnostics = new Diagnostics();
        EditionFiles back = EditionFiles.ofZip(there, diagnostics);
        assertTrue(diagnostics.all().isEmpty(), diagnostics.all()::toString);
        assertEquals(Starter.files().files().keySet(), back.files().keySet());
        back.files()
                .forEach((name, bytes) ->
                        assertArrayEquals(Starter.files().files().get(name), bytes, name));
        assertEquals(Starter.edition().textHash(), back.textHash());
        assertArrayEquals(here, back.toZip());
        assertEquals(Starter.edition().meaningHash(), SmallEdition.read(back).meaningHash());
    }

    @Test
    void theTextHashTellsNamesFromContents() {
        assertNotEquals(
                SmallEdition.files(Map.of("a", "bc")).textHash(),
                SmallEdition.files(Map.of("ab", "c")).textHash());
        assertNotEquals(
                SmallEdition.files(Map.of("a", "b", "c", "d")).textHash(),
                SmallEdition.files(Map.of("a", "bcd")).textHash());
    }

    private static void sameMeaning(Map<String, String> texts) {
        Edition changed = SmallEdition.read(SmallEdition.files(texts));
        assertEquals(Starter.edition().meaningHash(), changed.meaningHash());
        assertNotEquals(Starter.edition().textHash(), changed.textHash());
        Assessor assessor = Assessor.of(changed, ReferenceInterpreter.factory());
        Starter.demoTasks().forEach((name, task) -> {
            Answer one = Starter.interpreted().assess(task, Starter.WISHES).answer();
            Answer other = assessor.assess(task, Starter.WISHES).answer();
            assertEquals(text(one), text(other), name);
        });
    }

    /** The bytes of an answer apart from the text hash and the places of rules. */
    private static String text(Answer a) {
        Answer.Request r = a.request();
        Answer.Request request = new Answer.Request(
                r.task(),
                r.edition(),
                r.meaningHash(),
                "",
                r.weights(),
                r.comparisons(),
                r.assumptions(),
                r.asOf(),
                r.seed(),
                r.program());
        Answer bare = new Answer(
                a.format(),
                request,
                "",
                a.headline(),
                a.intended(),
                a.facts(),
                a.firings(),
                a.candidates(),
                a.ruledOut(),
                a.cautions(),
                a.questions(),
                a.doubts(),
                a.verifications(),
                a.ranking(),
                a.figures(),
                a.inputs(),
                a.rules().stream()
                        .map(x -> new Answer.Rule(x.id(), x.title(), x.basis(), x.sources(), x.since(), x.note(), ""))
                        .toList(),
                a.sources());
        return new String(FrozenAnswer.of(bare).bytes(), StandardCharsets.UTF_8);
    }

    private static Edition changed(String file, String from, String to) {
        Map<String, String> texts = texts();
        assertTrue(texts.get(file).contains(from), from);
        texts.put(file, texts.get(file).replace(from, to));
        if (from.startsWith("@id(")) {
            // Cases name rules, and a rule under another id is another rule to them.
            texts.replaceAll((name, text) -> name.startsWith("cases/") ? text.replace(id(from), id(to)) : text);
        }
        return SmallEdition.read(SmallEdition.files(texts));
    }

    private static String id(String annotation) {
        return annotation.substring("@id(\"".length(), annotation.length() - "\")".length());
    }

    private static Map<String, String> texts() {
        Map<String, String> texts = new TreeMap<>();
        Starter.files().files().forEach((name, bytes) -> texts.put(name, new String(bytes, StandardCharsets.UTF_8)));
        return texts;
    }

    /** The same text with each run of blocks that start with this indent the other way round. */
    private static String reversed(String text, String indent) {
        List<String> out = new ArrayList<>();
        List<String> blocks = new ArrayList<>();
        for (String line : text.lines().toList()) {
            boolean starts =
                    line.startsWith(indent) && line.length() > indent.length() && line.charAt(indent.length()) != ' ';
            boolean belongs =
                    !blocks.isEmpty() && line.startsWith(" ".repeat(indent.length())) && !starts && !line.isBlank();
            if (starts) {
                blocks.add(line);
            } else if (belongs) {
                blocks.set(blocks.size() - 1, blocks.get(blocks.size() - 1) + "\n" + line);
            } else {
                Collections.reverse(blocks);
                out.addAll(blocks);
                blocks.clear();
                out.add(line);
            }
        }
        Collections.reverse(blocks);
        out.addAll(blocks);
        return String.join("\n", out) + "\n";
    }
}
