package org.washwright.assist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.washwright.drools.DrlReader;
import org.washwright.exchange.EditionFiles;
import org.washwright.exchange.EditionReader;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;

/** What a word under the caret means, and what rules say, also in text that is broken elsewhere. */
class HelpTest {

    private static final String HEAD = "rule \"r\" @id(\"R-1\") @basis(\"standard\") @source(\"BOOK, p. 3\")\nwhen\n  ";

    /** A text with the caret at the bar; what the help is titled and what it says. */
    record Word(String file, String text, String title, String says) {
        @Override
        public String toString() {
            return text.replace('\n', ' ');
        }
    }

    private static Word drl(String text, String title, String says) {
        return new Word("rules/r.drl", text, title, says);
    }

    /** Source of what is expected: docs/rule-language.md, docs/task-attributes.md and the small edition's own words. */
    static Stream<Word> words() {
        return Stream.of(
                drl("rule \"r\" @ba|sis(\"standard\")", "@basis", "where the rule comes from"),
                drl("rule \"r\" @source(\"BO|OK, p. 3\")", "A book", "2000"),
                drl(HEAD + "Mat|erial(", "Material", "at most 12"),
                drl(HEAD + "Material(hard|ness > \"31 HRC\")", "hardness", "Rockwell C hardness"),
                drl(HEAD + "Soil(kind.mel|ts < \"60 °C\")", "melting point of the soil", "temperature"),
                drl(HEAD + "Soil(kind == \"soil|-a\")", "A", "60 °C"),
                drl(HEAD + "Soil(amount > \"2 g|/m2\")", "2 g/m2", "mg/m2"),
                drl(HEAD + "Soil() n|ot Feature()", "not", "nothing can match"),
                drl(HEAD + "$s : Soil()\nthen\n  rule|Out(\"any\", \"main\", \"So.\");", "ruleOut", "may not stand"),
                drl(HEAD + "$s : Soil()\nthen\n  ruleOut(\"wat|er\", \"main\", \"So.\");", "water", ""),
                drl(HEAD + "$s : Soil()\nthen\n  caution(\"hazard|-a\", \"So.\");", "A", "Mind A."),
                drl(HEAD + "$s : Soil()\nthen\n  ask(\"Material.hard|ness\", \"So.\");", "hardness", "?"),
                drl(
                        HEAD + "$s : Soil()\nthen\n  caution(\"hazard-a\", \"So {$s.am|ount}.\");",
                        "amount",
                        "mass per area"),
                new Word("tables/t.csv", "then,support\n\nid,Soil.kind\nT-1,soi|l-a\n", "A", "60 °C"),
                new Word("tables/t.csv", "then,support\n\nid,Soil.ki|nd\n", "soil", "A term of kind soil"),
                new Word("trees/t.yaml", "      - {id: a, say: A, propose: soil|-a}", "A", "60 °C"));
    }

    @ParameterizedTest
    @MethodSource("words")
    void a_word_is_explained(Word word) {
        int caret = word.text().indexOf('|');
        String text = word.text().replaceFirst("\\|", "");
        Optional<Help> help = assistant(Map.of()).help(word.file(), text, caret);
        assertTrue(help.isPresent(), "no help");
        assertEquals(word.title(), help.get().title());
        assertTrue(help.get().words().contains(word.says()), help.get().words());
    }

    private static Assistant assistant(Map<String, String> more) {
        Map<String, String> texts = SmallEdition.withFewRules();
        texts.putAll(more);
        EditionFiles files = SmallEdition.files(texts);
        return new Assistant(new EditionReader(new DrlReader()).inspect(files).readable(), new DrlReader());
    }

    @Test
    void cells_of_a_table_are_proposed_by_their_column() {
        String text = "then,support\n\nid,Soil.kind,target,criterion\nT-1,";
        assertTrue(labels("tables/t.csv", text).contains("soil-a"));
        assertTrue(labels("tables/t.csv", text + "soil-a,").contains("water"));
        assertTrue(labels("tables/t.csv", text + "soil-a,water,").contains("works"));
        assertTrue(labels("trees/t.yaml", "propose: soil-").contains("soil-b"));
        assertEquals(List.of(), labels("trees/t.yaml", "propose: "), "nothing is typed yet");
    }

    private static List<String> labels(String file, String text) {
        return assistant(Map.of()).proposals(file, text, text.length()).list().stream()
                .map(Proposal::label)
                .toList();
    }

    @Test
    void rules_are_said_with_their_lines_and_sources() {
        String text = HEAD + "$s : Soil(kind == \"soil-a\")\nthen\n  caution(\"hazard-a\", \"So it is.\");\nend\n\n"
                + "rule \"two\" @id(\"R-2\") @basis(\"common practice\")\nwhen\n  Feature()\nthen\n"
                + "  ask(\"Soil\", \"Which?\");\nend\n";
        List<SaidRule> said = assistant(Map.of("rules/r.drl", text)).said("rules/r.drl", text);
        assertEquals(List.of("R-1", "R-2"), said.stream().map(SaidRule::id).toList());
        assertEquals(List.of(1, 8), said.stream().map(SaidRule::from).toList());
        assertEquals(8, said.get(0).to());
        assertEquals(List.of("A book (2000), p. 3"), said.get(0).sources());
        assertTrue(
                said.get(0).sentence().words().contains("soil is A"),
                said.get(0).sentence().words());
    }

    @Test
    void a_rule_is_said_while_another_of_its_file_is_broken() {
        String sound = "rule \"two\" @id(\"R-2\") @basis(\"common practice\")\nwhen\n  Feature()\nthen\n"
                + "  ask(\"Soil\", \"Which?\");\nend\n";
        String text = "rule \"half\" @id(\"R-1\")\nwhen\n  Soil(kind ==\n\n" + sound + "\nrule \"";
        List<SaidRule> said = assistant(Map.of("rules/r.drl", text)).said("rules/r.drl", text);
        assertEquals(List.of("R-2"), said.stream().map(SaidRule::id).toList());
        assertEquals(5, said.get(0).from(), "the line on which it starts");
        assertEquals(12, said.get(0).to(), "the line on which the next begins, though it can't be read");
    }

    @Test
    void every_rule_of_the_starter_is_said_in_its_file() {
        Assistant assistant = new Assistant(Starter.edition(), new DrlReader());
        int said = 0;
        for (Map.Entry<String, byte[]> file : Starter.files().files().entrySet()) {
            if (file.getKey().matches("(rules|tables)/.*")) {
                String text = new String(file.getValue(), StandardCharsets.UTF_8);
                said += assistant.said(file.getKey(), text).size();
            }
        }
        assertEquals(Starter.edition().rules().size(), said);
    }
}
