package org.washwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.washwright.document.Diagnostics;
import org.washwright.drools.DrlReader;
import org.washwright.exchange.EditionFiles;
import org.washwright.exchange.EditionReader;
import org.washwright.rule.Edition;
import org.washwright.rule.RuleText;
import org.washwright.rule.check.RuleChecker;
import org.washwright.rule.check.Terms;
import org.washwright.rule.syntax.SyntaxRule;
import org.washwright.task.TaskReader;

/** What the docs show is what the program reads. */
class DocumentedExamplesTest {

    private static final Edition STARTER = starter();
    private static final List<String> VERBS =
            List.of("conclude", "ruleOut", "support", "oppose", "require", "limit", "caution", "ask", "verify");

    private static Edition starter() {
        try {
            Diagnostics diagnostics = new Diagnostics();
            EditionFiles files = EditionFiles.ofFolder(Path.of("rules/starter"), diagnostics);
            EditionReader.Result result = new EditionReader(new DrlReader()).read(files, diagnostics);
            return result.edition()
                    .orElseThrow(() -> new AssertionError(result.diagnostics().all()));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static String block(String file, String fence) throws IOException {
        String text = Files.readString(Path.of("docs", file));
        Matcher matcher =
                Pattern.compile("```" + fence + "\\n(.*?)```", Pattern.DOTALL).matcher(text);
        assertTrue(matcher.find(), file + " has an example");
        return matcher.group(1);
    }

    @Test
    void the_task_of_the_task_format_is_a_task_of_the_starter() throws IOException {
        Diagnostics diagnostics = new Diagnostics();
        byte[] yaml = block("task-format.md", "yaml").getBytes(StandardCharsets.UTF_8);
        var task = TaskReader.read("docs/task-format.md", yaml, STARTER, diagnostics);
        assertTrue(task.isPresent(), () -> diagnostics.all().toString());
    }

    @Test
    void the_rule_of_the_rule_language_is_a_rule_and_comes_back_from_its_readable_form() throws IOException {
        List<SyntaxRule> written =
                new DrlReader().read("docs/rule-language.md", block("rule-language.md", ""), new Diagnostics());
        assertEquals(1, written.size());
        Terms terms = new Terms(STARTER.catalogue(), STARTER.types(), STARTER.grading(), STARTER.sources());
        Diagnostics diagnostics = new Diagnostics();
        var rules = new RuleChecker(terms, diagnostics).check(written);
        assertFalse(diagnostics.hasErrors(), () -> diagnostics.all().toString());
        String readable = RuleText.readable(rules.get(0));
        var again = new RuleChecker(terms, diagnostics).check(new DrlReader().read("readable", readable, diagnostics));
        assertFalse(diagnostics.hasErrors(), () -> diagnostics.all() + readable);
        assertEquals(RuleText.canonical(rules.get(0)), RuleText.canonical(again.get(0)));
    }

    @Test
    void every_rule_of_the_rule_language_is_sound_and_every_verb_stands_in_one() throws IOException {
        String text = Files.readString(Path.of("docs/rule-language.md"));
        Matcher blocks = Pattern.compile("```\\n(rule .*?)```", Pattern.DOTALL).matcher(text);
        Terms terms = new Terms(STARTER.catalogue(), STARTER.types(), STARTER.grading(), STARTER.sources());
        Set<String> verbs = new TreeSet<>();
        while (blocks.find()) {
            Diagnostics diagnostics = new Diagnostics();
            var rules = new RuleChecker(terms, diagnostics)
                    .check(new DrlReader().read("docs/rule-language.md", blocks.group(1), diagnostics));
            assertFalse(diagnostics.hasErrors(), () -> diagnostics.all().toString());
            rules.forEach(r -> r.effects().forEach(e -> verbs.add(e.verb())));
        }
        assertEquals(new TreeSet<>(VERBS), verbs);
    }

    @Test
    void the_conditions_shown_alone_in_the_rule_language_are_sound() throws IOException {
        String text = Files.readString(Path.of("docs/rule-language.md"));
        Matcher blocks = Pattern.compile("(?m)(?:^    (?:\\$|[A-Z]).*\\n)+").matcher(text);
        Terms terms = new Terms(STARTER.catalogue(), STARTER.types(), STARTER.grading(), STARTER.sources());
        int seen = 0;
        while (blocks.find()) {
            Diagnostics diagnostics = new Diagnostics();
            String rule = "rule \"x\" @id(\"X\") @basis(\"common practice\")\nwhen\n" + blocks.group()
                    + "then\n  ask(\"Soil\", \"So?\");\nend\n";
            new RuleChecker(terms, diagnostics).check(new DrlReader().read("shown", rule, diagnostics));
            assertFalse(diagnostics.hasErrors(), () -> diagnostics.all().toString());
            seen++;
        }
        assertTrue(seen > 0, "the docs show conditions");
    }

    @Test
    void every_rule_of_the_starter_comes_back_from_its_readable_form() {
        Terms terms = new Terms(STARTER.catalogue(), STARTER.types(), STARTER.grading(), STARTER.sources());
        StringBuilder all = new StringBuilder();
        STARTER.rules().forEach(r -> all.append(RuleText.readable(r)).append('\n'));
        Diagnostics diagnostics = new Diagnostics();
        var again = new RuleChecker(terms, diagnostics)
                .check(new DrlReader().read("readable", all.toString(), diagnostics));
        assertFalse(diagnostics.hasErrors(), () -> diagnostics.all().toString());
        assertEquals(
                STARTER.rules().stream().map(RuleText::canonical).toList(),
                again.stream().map(RuleText::canonical).toList());
    }

    @Test
    void the_counts_in_the_starter_s_description_are_the_starter_s() throws IOException {
        String text = Files.readString(Path.of("docs/knowledge.md"));
        Matcher line = Pattern.compile("\\| `(rules/[a-z-]+/[a-z-]+\\.drl|tables/)` \\| ([0-9]+) (?:rules|rows)")
                .matcher(text);
        int counted = 0;
        while (line.find()) {
            String file = line.group(1);
            long rules = STARTER.rules().stream()
                    .filter(r -> r.place().file().startsWith(file))
                    .count();
            assertEquals(Long.parseLong(line.group(2)), rules, file);
            counted += (int) rules;
        }
        assertEquals(STARTER.rules().size(), counted);
    }

    @Test
    void every_verb_of_the_rule_language_is_documented() throws IOException {
        String text = Files.readString(Path.of("docs/rule-language.md"));
        for (String verb : VERBS) {
            assertTrue(text.contains("`" + verb + "("), verb);
        }
    }
}
