package org.washwright.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.washwright.document.Diagnostics;
import org.washwright.drools.DrlReader;
import org.washwright.exchange.EditionFiles;
import org.washwright.exchange.EditionReader;

class RuleSentenceTest {
    private static Edition starter;

    @BeforeAll
    static void read() throws Exception {
        EditionFiles files = EditionFiles.ofFolder(Path.of("rules/starter"), new Diagnostics());
        starter = new EditionReader(new DrlReader()).read(files).edition().orElseThrow();
    }

    @Test
    void says_what_must_hold_what_follows_and_why_with_the_names_of_the_catalogue() {
        assertEquals(
                "When following operation: needs a water-break-free surface is yes. Then conclude bare surface needed, because: "
                        + "[following operation] holds only on a surface that water wets all over.",
                words("FO-01"));
    }

    @Test
    void speaks_of_conclusions_about_things_and_of_what_the_line_needs() {
        assertEquals(
                "When process: leaves a film of the medium is yes; and it is concluded: final wash needed, about the"
                        + " process. Then the line of the process needs the stage "
                        + starter.catalogue().name("stage", "alkaline-wash")
                        + " after the main cleaning, because: An alkaline wash takes off the film that [the process]"
                        + " leaves. And take from the process 16 points for running cost, because: [the process] needs a"
                        + " second washing stage.",
                words("FO-03"));
    }

    @Test
    void numbers_things_of_one_type_and_names_what_they_are_compared_with() {
        String words = words("LN-01");
        assertTrue(words.contains("; and stage 1: reaction of the bath is basic"), words);
        assertTrue(
                words.contains("stage 2: main cleaning is yes and position is above the position of stage 1"), words);
        assertTrue(words.contains("between stage 1 and stage 2"), words);
    }

    @Test
    void a_row_of_a_table_comes_apart_into_columns() {
        assertEquals(
                List.of(
                        new RuleSentence.Cell("soil: polarity", "is non-polar"),
                        new RuleSentence.Cell("soil: state", "is fluid")),
                RuleSentence.cells(starter, rule("MS-03")).orElseThrow());
        assertTrue(RuleSentence.cells(starter, rule("LN-01")).isEmpty());
    }

    @Test
    void zero_degrees_are_written_as_zero() {
        String words = starter.rules().stream()
                .filter(r -> RuleText.readable(r).contains("meltingPoint >"))
                .map(r -> words(r.id()))
                .findFirst()
                .orElseThrow();
        assertTrue(words.startsWith("When soil: melting point is above 0 °C;"), words);
    }

    @Test
    void every_rule_of_the_starter_rulebook_has_a_sentence_without_signs_of_the_rule_language() {
        starter.rules().forEach(rule -> {
            String words = RuleSentence.of(starter, rule).words();
            assertFalse(words.matches("(?s).*(==|\\$|\\{|\\}|: \\.|\\(\\)).*"), words);
        });
    }

    private static Rule rule(String id) {
        return starter.rule(id).orElseThrow();
    }

    private static String words(String id) {
        return RuleSentence.of(starter, rule(id)).words();
    }
}
