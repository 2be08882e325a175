package org.washwright.starter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Assessor;
import org.washwright.cases.Case;
import org.washwright.cases.CaseResult;
import org.washwright.cases.CaseRunner;
import org.washwright.drools.DrlReader;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.exchange.EditionFiles;
import org.washwright.exchange.EditionReader;
import org.washwright.rule.Edition;
import org.washwright.rule.RuleText;

/** The larger rulebook: it reads without a complaint, its reference cases hold, and its description counts right. */
@Tag("slow")
class PracticeRulebookIT {

    private static final Path FOLDER = Path.of("rules/practice");
    private static final EditionReader.Result READ = new EditionReader(new DrlReader()).read(files());
    private static final Edition EDITION = READ.edition()
            .orElseThrow(() -> new AssertionError(READ.diagnostics().all().toString()));

    private static EditionFiles files() {
        Map<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(FOLDER)) {
            for (Path path : all.filter(Files::isRegularFile).toList()) {
                files.put(FOLDER.relativize(path).toString().replace('\\', '/'), Files.readAllBytes(path));
            }
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        return new EditionFiles(files);
    }

    @Test
    void it_reads_without_a_complaint() {
        assertEquals(List.of(), READ.diagnostics().all());
    }

    /** Standards, handbook cells and facts of the trade; each case names its basis and source. */
    @Test
    void its_reference_cases_hold() {
        List<Case> cases = READ.checks().cases();
        assertTrue(cases.size() >= 200, cases.size() + " cases");
        CaseRunner runner = new CaseRunner(Assessor.of(EDITION, SweepInference.factory()), "2026-11-25");
        List<String> unmet = cases.stream()
                .map(runner::run)
                .flatMap(result -> result.unmet().stream().map(check -> said(result, check)))
                .toList();
        assertEquals(List.of(), unmet);
    }

    private static String said(CaseResult result, CaseResult.Check check) {
        return result.reference().id() + " expects " + check.expected() + "; found " + check.found();
    }

    @Test
    void at_most_a_fifth_of_its_rules_name_a_single_process() {
        List<String> leaves =
                EDITION.catalogue().leaves().stream().map(l -> l.id()).toList();
        long single = EDITION.rules().stream()
                .filter(r -> leaves.stream().anyMatch(id -> RuleText.readable(r).contains("\"" + id + "\"")))
                .count();
        assertTrue(single > 0 && single * 5 <= EDITION.rules().size(), single + " rules");
    }

    @Test
    void the_counts_in_its_description_are_its_own() throws IOException {
        String text = Files.readString(Path.of("docs/knowledge.md"));
        Matcher line = Pattern.compile("\\| `(rules/[a-z-]+/[a-z-]+\\.drl|tables/)` \\| ([0-9]+) (?:rules|rows)")
                .matcher(text);
        int counted = 0;
        while (line.find()) {
            String file = line.group(1);
            long rules = EDITION.rules().stream()
                    .filter(r -> r.place().file().startsWith(file))
                    .count();
            assertEquals(Long.parseLong(line.group(2)), rules, file);
            counted += (int) rules;
        }
        assertEquals(EDITION.rules().size(), counted);
    }
}
