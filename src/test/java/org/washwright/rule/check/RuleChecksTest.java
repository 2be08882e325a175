package org.washwright.rule.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.washwright.rule.check.Checked.SAY;
import static org.washwright.rule.check.Checked.checked;
import static org.washwright.rule.check.Checked.text;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.drools.DrlReader;
import org.washwright.exchange.EditionReader;
import org.washwright.generate.SmallEdition;
import org.washwright.rule.Rule;

/** What a rule needs besides conditions and consequences, and how rules fit together. */
class RuleChecksTest {

    @Test
    void aBadHeaderSpoilsTheRule() {
        String body = "when Soil() then " + SAY + "; end\n";
        String basis = "@basis(\"common practice\") ";
        assertEquals(1, checked("rule \"r\" @id(\"R\") " + basis + body).size());
        assertEquals(List.of(), checked("rule \"r\" " + basis + body));
        assertEquals(List.of(), checked("rule \"r\" @id(\"9\") " + basis + body));
        assertEquals(List.of(), checked("rule \"r\" @id(\"R\") " + basis + "@sinse(\"x\") " + body));
        assertEquals(List.of(), checked("rule \"r\" @id(\"R\") " + body));
        assertEquals(List.of(), checked("rule \"r\" @id(\"R\") @basis(\"handbook\") " + body));
        assertEquals(List.of(), checked("rule \"r\" @id(\"R\") @basis(\"handbook\") @source(\"NONE\") " + body));
        Rule cited = checked("rule \"r\" @id(\"R\") @basis(\"handbook\") @source(\"BOOK, page 3; BOOK; \") "
                        + "@title(\"T\") @since(\"now\") @note(\"n\") " + body)
                .get(0);
        assertEquals(List.of(new Rule.Cite("BOOK", "page 3"), new Rule.Cite("BOOK", "")), cited.sources());
        assertEquals(List.of("T", "now", "n"), List.of(cited.title(), cited.since(), cited.note()));
        assertEquals(List.of(), checked("rule \"r\" @id(\"R\") " + basis + "when Soil() then end\n"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '¦',
            quoteCharacter = '\'',
            value = {
                "@basis(\"physics\") @source(\"BOOK\") ¦ the rule \"r\" has no id. Add @id",
                "@id(\"9\") @basis(\"common practice\") ¦ \"9\"",
                "@id(\"R\") ¦ the rule \"R\" has no basis. Add @basis",
                "@id(\"R\") @basis(\"hearsay\") ¦ \"hearsay\"",
                "@id(\"R\") @basis(\"physics\") ¦ \"R\"",
                "@id(\"R\") @basis(\"physics\") @source(\"BOOC\") ¦ did you mean \"BOOK\"?",
                "@id(\"R\") @basis(\"common practice\") @sinse(\"x\") ¦ did you mean \"since\"?"
            })
    void aBadHeaderIsToldInWords(String header, String words) {
        assertSaid("rule \"r\" " + header + " when Soil() then " + SAY + "; end\n", words);
    }

    @Test
    void aRuleNeedsAnIdOfItsOwnAConditionAndAConsequence() {
        assertSaid(text("R", "Soil()", SAY) + text("R", "Part()", SAY), "rule id");
        String header = "rule \"r\" @id(\"R\") @basis(\"common practice\") ";
        assertSaid(header + "when then " + SAY + "; end\n", "R");
        assertSaid(header + "when Soil() then end\n", "\"r\"");
        assertEquals(
                1, checked(text("R", "Soil()", SAY) + text("R", "Part()", SAY)).size());
    }

    private static void assertSaid(String drl, String words) {
        Diagnostics diagnostics = new Diagnostics();
        checked(drl, diagnostics);
        List<String> found =
                diagnostics.all().stream().map(Diagnostic::toString).toList();
        assertTrue(found.stream().anyMatch(f -> f.contains(words)), found::toString);
    }

    @Test
    void rulesThatWaitForEachOtherAreToldWhereTheCircleStarts() {
        String circle = text("B", "Conclusion(id == \"conclusion-a\")", "conclude(\"conclusion-b\", \"So.\")")
                + text("C", "Conclusion(id == \"conclusion-b\")", "conclude(\"conclusion-a\", \"So.\")");
        List<Diagnostic> found = read(SmallEdition.texts(), text("A", "Soil()", SAY) + circle)
                .diagnostics()
                .all();
        assertEquals(1, found.size(), found::toString);
        assertTrue(found.get(0).text().endsWith("B, C"), found.get(0).text());
        assertEquals(2, found.get(0).place().line());
    }

    @Test
    void aConclusionThatSomeRuleDrawsIsNotCalledMissing() {
        String rules = text("A", "Soil()", "conclude(\"conclusion-a\", \"So.\")")
                + text("B", "Conclusion(id == \"conclusion-a\")", SAY);
        assertEquals(List.of(), read(SmallEdition.texts(), rules).diagnostics().all());
        assertEquals(
                1,
                read(SmallEdition.texts(), text("B", "Conclusion(id == \"conclusion-a\")", SAY))
                        .diagnostics()
                        .all()
                        .size());
    }

    private static EditionReader.Result read(Map<String, String> texts, String drl) {
        Map<String, String> all = new TreeMap<>(texts);
        all.put("rules/all.drl", drl);
        return new EditionReader(new DrlReader()).read(SmallEdition.files(all));
    }
}
