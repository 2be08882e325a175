package org.washwright.hostile;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.document.Diagnostics;
import org.washwright.drools.DrlReader;
import org.washwright.drools.DroolsInference;
import org.washwright.engine.ReferenceInterpreter;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;
import org.washwright.rule.RuleText;
import org.washwright.rule.check.RuleChecker;
import org.washwright.rule.check.Terms;
import org.washwright.task.CleaningTask;

/** Words that look like code are words: they are compiled as nothing, shown as they were written, and nothing runs. */
@Tag("slow")
class LegalTextsIT {

    private static final String SING = "org.washwright.hostile.Canary.sing()";

    private static final List<String> WORDS = List.of(
            ");System.exit(1);//",
            "\"); " + SING + "; //",
            "\") || eval(org.washwright.hostile.Canary.sings()) //",
            "end",
            "So. end rule \"x\" when then " + SING + ";",
            "rule when then end query declare import global function",
            "*/ " + SING + "; /*",
            "// " + SING,
            "# " + SING,
            "a backslash \\ and two \\\\ and one at the end \\",
            "\\n \\t \\0 \\x41 \\'",
            "\\\\server\\share",
            "' or '1'='1' --",
            "it's, \"quoted\", «so»",
            "= " + SING,
            "=cmd|' /C calc'!A0",
            "@SUM(A1)",
            "+1-2",
            "%s %n %1$s",
            "$1 $target $sink \\$1",
            "#if x",
            "<script>alert(1)</script> <!-- & ]]> &lt;",
            "salience 10 no-loop true dialect \"mvel\"",
            "modify(x) insertLogical(x) drools.halt() kcontext",
            "null true false NaN Infinity 0x7f 1e999",
            "Überzug, ☂, 𝒳, ﷽, שלום",
            "a; b, c | d ! e ? f : g",
            "Robert'); DROP TABLE students;--");

    private static String drl(String word) {
        return "\"" + word.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    private static String yaml(String word) {
        return "'" + word.replace("'", "''") + "'";
    }

    private static String csv(String word) {
        return "\"" + word.replace("\"", "\"\"") + "\"";
    }

    private static Edition edition() {
        StringBuilder rules = new StringBuilder();
        StringBuilder table =
                new StringBuilder("title,T\nbasis,common practice\nthen,verify\n\nid,Soil.kind,method,reason,note\n");
        StringBuilder hazards = new StringBuilder("kind: hazard\nterms:\n");
        for (int i = 0; i < WORDS.size(); i++) {
            String word = WORDS.get(i);
            // A name and an annotation hold no quotes and no backslash, and say so when they do.
            String plain = word.replace("\"", "").replace("\\", "");
            rules.append("rule \"").append(plain).append("\"\n  @id(\"D-").append(i);
            rules.append("\") @basis(\"common practice\") @note(\"")
                    .append(plain)
                    .append("\")\nwhen\n");
            rules.append("  Soil(kind == \"soil-a\")\nthen\n  caution(\"hazard-x")
                    .append(i)
                    .append("\", ");
            rules.append(drl(word)).append("); // ").append(word).append("\nend\n");
            table.append("T-").append(i).append(",soil-a,test-method-a,").append(csv(word));
            table.append(',').append(csv(word)).append('\n');
            hazards.append("  - {id: hazard-x").append(i).append(", name: ").append(yaml(word + " " + i));
            hazards.append(", definition: ")
                    .append(yaml(word))
                    .append(", caution: ")
                    .append(yaml(word));
            hazards.append(", synonyms: [").append(yaml("also " + word + i)).append("]}\n");
        }
        Map<String, String> texts = SmallEdition.texts();
        texts.put("rules/words.drl", rules.toString());
        texts.put("tables/words.csv", table.toString());
        texts.put("catalogue/words.yaml", hazards.toString());
        texts.put("trees/words.yaml", tree());
        return SmallEdition.read(SmallEdition.files(texts));
    }

    private static String tree() {
        String questions = IntStream.range(0, WORDS.size())
                .mapToObj(i -> "  q" + i + ":\n    ask: " + yaml(WORDS.get(i)) + "\n    help: " + yaml(WORDS.get(i))
                        + "\n    answers:\n      - {id: x, say: " + yaml(WORDS.get(i)) + ", propose: soil-a}\n"
                        + (i + 1 < WORDS.size() ? "      - {id: y, say: no, next: q" + (i + 1) + "}\n" : ""))
                .collect(Collectors.joining());
        return "id: words\ntitle: " + yaml(WORDS.get(0)) + "\nproposes: Soil.kind\nbasis: common practice\nstart: q0\n"
                + "questions:\n" + questions;
    }

    @Test
    void wordsThatLookLikeCodeAreShownAsTheyAreAndNeverRun() {
        int songs = Canary.songs();
        Edition edition = edition();
        CleaningTask task = Starter.task(edition, "title: " + yaml(WORDS.get(1)) + "\nsoils: [soil-a]\n");
        FrozenAnswer compiled = Assessor.of(edition, DroolsInference.factory()).assess(task, Starter.WISHES);
        assertArrayEquals(
                Assessor.of(edition, ReferenceInterpreter.factory())
                        .assess(task, Starter.WISHES)
                        .bytes(),
                compiled.bytes());
        Answer answer = compiled.answer();
        for (int i = 0; i < WORDS.size(); i++) {
            // A finding is a sentence and starts with a capital.
            String shown = WORDS.get(i).substring(0, 1).toUpperCase(Locale.ROOT)
                    + WORDS.get(i).substring(1);
            assertEquals(Set.of(shown), said(answer, "D-" + i), "rule text");
            assertEquals(Set.of(shown), said(answer, "T-" + i), "table");
        }
        String text = new String(compiled.bytes(), UTF_8);
        assertTrue(text.contains(");System.exit(1);//"), text);
        assertEquals(songs, Canary.songs(), "the canary sang");
    }

    private static Set<String> said(Answer answer, String rule) {
        return answer.firings().stream()
                .filter(f -> f.rule().equals(rule))
                .flatMap(f -> f.findings().stream())
                .map(Answer.Finding::text)
                .collect(Collectors.toSet());
    }

    @Test
    void theirRulesMeanTheSameWhenWrittenAndReadAgain() {
        Edition edition = edition();
        List<Rule> rules =
                edition.rules().stream().filter(r -> r.id().startsWith("D-")).toList();
        String written = rules.stream().map(RuleText::canonical).collect(Collectors.joining("\n"));
        Diagnostics diagnostics = new Diagnostics();
        List<Rule> again = new RuleChecker(
                        new Terms(edition.catalogue(), edition.types(), edition.grading(), edition.sources()),
                        diagnostics)
                .check(new DrlReader().read("written.drl", written, diagnostics));
        assertEquals(List.of(), diagnostics.all());
        assertEquals(
                rules.stream().map(RuleText::canonical).toList(),
                again.stream().map(RuleText::canonical).toList());
        assertEquals(WORDS.size(), again.size());
    }

    @Test
    void conditionsJoinedInPrefixFormAreThoseOfTwoLines() {
        String two = RuleText.canonical(
                SmallEdition.with(Bombs.rule("  Soil()\n  Feature()", "  caution(\"hazard-a\", \"So.\");"))
                        .rules()
                        .get(0));
        String one = RuleText.canonical(
                SmallEdition.with(Bombs.rule("  ( and Soil() Feature() )", "  caution(\"hazard-a\", \"So.\");"))
                        .rules()
                        .get(0));
        assertEquals(two, one);
    }
}
