package org.washwright.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.Outcome;
import org.washwright.assessment.Wishes;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.engine.Firing;
import org.washwright.engine.ReferenceInterpreter;
import org.washwright.generate.SmallEdition;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;

/** Every finding stands on a proof or on a task; tasks are judged here by the plain interpreter, which found none of them. */
class ExaminerTest {

    private static final String DATE = "2026-11-25";

    private static String rule(String id, String when, String then) {
        return "rule \"" + id + "\"\n@id(\"" + id + "\") @basis(\"common practice\")\nwhen\n" + when + "\nthen\n" + then
                + "\nend\n";
    }

    private static Edition edition(String... rules) {
        return SmallEdition.with(String.join("\n", rules));
    }

    private static List<Finding> findings(Edition edition) {
        return new Examiner(edition, DATE, 500).examine(List.of()).findings();
    }

    private static Outcome outcome(Edition edition, CleaningTask task) {
        return Assessor.of(edition, ReferenceInterpreter.factory()).outcome(task, Wishes.on(DATE));
    }

    private static boolean fires(Edition edition, CleaningTask task, String rule) {
        return outcome(edition, task).of(rule).stream().anyMatch(Firing::certain);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Soil(kind == \"soil-a\", kind == \"soil-b\")",
                "Material(hardness > \"40 HRC\", hardness <= \"40 HRC\")",
                "Material(substrate.family == \"family-b\", substrate.rusts == true)",
                "$p : Process(node == \"water\", medium.wet == true, technique.jet == false, charges == true)",
                "Following(operation == \"operation-a\")\nFollowing(operation == \"operation-b\")",
                "Soil(oily == true)\nnot Soil(oily == true)",
                "Conclusion(id == \"conclusion-a\")",
                "$m : Material(substrate == \"substrate-a\")\nConclusion(id == \"conclusion-b\", subject == $m)"
            })
    void what_can_never_fire_is_proved_so(String when) {
        String written = when.replace("Soil(oily", "Soil(kind.oily");
        Edition edition = edition(
                rule("FEED", "$m : Material(substrate == \"substrate-b\")", "conclude(\"conclusion-b\", $m, \"So.\");"),
                rule("DEAD", written, "caution(\"hazard-a\", \"So.\");"));
        List<Finding> findings = findings(edition);
        assertEquals(1, findings.size(), findings::toString);
        assertEquals(Finding.Kind.DEAD, findings.get(0).kind());
        assertEquals(List.of("DEAD"), findings.get(0).rules());
        assertEquals(Optional.empty(), findings.get(0).witness());
    }

    @Test
    void what_is_behind_a_dead_rule_is_dead_too() {
        List<Finding> findings = findings(edition(
                rule("ONE", "Soil(kind == \"soil-a\", kind == \"soil-b\")", "conclude(\"conclusion-a\", \"So.\");"),
                rule("TWO", "Conclusion(id == \"conclusion-a\")", "caution(\"hazard-a\", \"So.\");")));
        assertEquals(
                List.of(List.of("ONE"), List.of("TWO")),
                findings.stream().map(Finding::rules).toList());
    }

    /** The substrate may be of the family and may rust; the catalogue never says surely, so nothing is claimed. */
    @Test
    void what_can_be_neither_shown_nor_refuted_is_said_to_be_undecided() {
        List<Finding> findings = findings(edition(rule(
                "OPEN",
                "Material(substrate.family == \"family-c\", substrate.rusts == true)",
                "caution(\"hazard-a\", \"So.\");")));
        assertEquals(Finding.Kind.NOT_DECIDED, findings.get(0).kind());
        assertTrue(findings.get(0).words().contains("500 tasks"));
    }

    @Test
    void the_same_rule_written_twice_is_found_with_a_task_on_which_both_fire() {
        Edition edition = edition(
                rule(
                        "A",
                        "Soil(kind == \"soil-a\")\n$p : Process(node == \"water\")",
                        "caution(\"hazard-a\", $p, \"So.\");"),
                rule(
                        "B",
                        "$q : Process(node == \"water\")\nSoil(kind == \"soil-a\")",
                        "caution(\"hazard-a\", $q, \"Thus.\");"));
        Finding finding = only(findings(edition));
        assertEquals(Finding.Kind.DUPLICATE, finding.kind());
        assertTrue(fires(edition, finding.witness().orElseThrow(), "A"));
        assertTrue(fires(edition, finding.witness().orElseThrow(), "B"));
    }

    @Test
    void a_narrower_rule_that_says_no_more_adds_nothing() {
        Edition edition = edition(
                rule("WIDE", "Material(hardness >= \"31 HRC\")", "support(\"any\", \"works\", 2, \"So.\");"),
                rule(
                        "NARROW",
                        "Material(hardness >= \"40 HRC\", substrate == \"substrate-a\")",
                        "support(\"water-a\", \"works\", 1, \"So.\");"));
        Finding finding = only(findings(edition));
        assertEquals(Finding.Kind.SUBSUMED, finding.kind());
        assertEquals(List.of("NARROW", "WIDE"), finding.rules());
        assertTrue(fires(edition, finding.witness().orElseThrow(), "WIDE"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "support(\"any\", \"works\", 3, \"So.\");",
                "support(\"any\", \"fine\", 1, \"So.\");",
                "oppose(\"oil\", \"works\", 1, \"So.\");",
                "limit(\"any\", \"main\", \"temperature\", max(\"50 °C\"), \"So.\");"
            })
    void a_narrower_rule_that_says_more_or_something_else_is_left_alone(String then) {
        assertEquals(
                List.of(),
                findings(edition(
                        rule("WIDE", "Material(hardness >= \"31 HRC\")", "support(\"any\", \"works\", 2, \"So.\");"),
                        rule("NARROW", "Material(hardness >= \"40 HRC\")", then))));
    }

    @Test
    void rules_that_say_the_opposite_wherever_one_fires_contradict_each_other() {
        Edition edition = edition(
                rule("FOR", "Material(hardness >= \"31 HRC\")", "support(\"water\", \"works\", 2, \"So.\");"),
                rule("AGAINST", "Material(hardness >= \"40 HRC\")", "oppose(\"any\", \"works\", 2, \"So.\");"));
        Finding finding = only(findings(edition));
        assertEquals(Finding.Kind.CONTRADICTORY, finding.kind());
        assertTrue(fires(edition, finding.witness().orElseThrow(), "FOR"));
    }

    /** Windows of the small edition: water A runs at 20 to 80 °C. */
    @Test
    void two_limits_that_leave_no_value_on_some_task_are_a_conflict() {
        Edition edition = edition(
                rule(
                        "HOT",
                        "Soil(kind == \"soil-a\")",
                        "limit(\"water-a\", \"main\", \"temperature\", min(\"60 °C\"), \"So.\");"),
                rule(
                        "COLD",
                        "Material(substrate == \"substrate-b\")",
                        "limit(\"any\", \"main\", \"temperature\", max(\"50 °C\"), \"So.\");"));
        Finding finding = only(findings(edition));
        assertEquals(Finding.Kind.CONFLICT, finding.kind());
        Outcome outcome = outcome(edition, Variants.closed(finding.witness().orElseThrow()));
        assertEquals("ruled out", outcome.line("water-a").orElseThrow().status().word());
    }

    @Test
    void limits_that_meet_in_one_value_leave_it() {
        assertEquals(
                List.of(),
                findings(edition(
                        rule(
                                "HOT",
                                "Soil(kind == \"soil-a\")",
                                "limit(\"water-a\", \"main\", \"temperature\", min(\"50 °C\"), \"So.\");"),
                        rule(
                                "COLD",
                                "Material(substrate == \"substrate-b\")",
                                "limit(\"any\", \"main\", \"temperature\", max(\"50 °C\"), \"So.\");"))));
    }

    @Test
    void every_comparison_gets_tasks_at_its_edge_and_a_number_its_next_writable_neighbours() {
        Edition edition = edition(rule(
                "EDGE",
                "Material(hardness >= \"31 HRC\", substrate.family == \"family-a\")\nnot Soil(kind == \"soil-b\")",
                "caution(\"hazard-a\", \"So.\");"));
        List<Example> examples =
                new Examiner(edition, DATE, 500).examples(edition.rules().get(0));
        examples.forEach(e -> {
            List<Firing> firings = outcome(edition, e.task()).of("EDGE");
            assertEquals(e.fires(), firings.stream().anyMatch(Firing::certain), e::toString);
            assertTrue(e.fires() || firings.isEmpty(), e::toString);
        });
        String all = String.join(
                "\n",
                examples.stream()
                        .map(e -> e.fires() + " " + org.washwright.task.TaskWriter.yaml(e.task(), edition, ""))
                        .toList());
        assertTrue(all.contains("hardness: 31 HRC"), all);
        assertTrue(all.contains("hardness: 30.99 HRC"), all);
        assertTrue(all.contains("kind: soil-b"), all);
        assertTrue(examples.stream().anyMatch(e -> !e.fires() && e.pattern() == 1), all);
    }

    @Test
    void a_finding_that_the_authors_live_with_is_shown_as_accepted_and_a_wrong_word_for_it_refused() {
        Edition edition = edition(
                rule("A", "Soil(kind == \"soil-a\")", "caution(\"hazard-a\", \"So.\");"),
                rule("B", "Soil(kind == \"soil-a\")", "caution(\"hazard-a\", \"So.\");"));
        Diagnostics diagnostics = new Diagnostics();
        List<KnownFinding> known = KnownFindingReader.read(
                DocumentReader.read(
                                "known-findings.yaml",
                                "known:\n  - {finding: duplicate, rules: [B, A], why: For teaching.}\n",
                                diagnostics)
                        .orElseThrow(),
                edition,
                diagnostics);
        Examination examination = new Examiner(edition, DATE, 500).examine(known);
        assertEquals(List.of(), examination.open());
        assertEquals("For teaching.", examination.findings().get(0).accepted().orElseThrow());
        KnownFindingReader.read(
                DocumentReader.read("known-findings.yaml", "known:\n  - {finding: twins, rules: [A, C]}\n", diagnostics)
                        .orElseThrow(),
                edition,
                diagnostics);
        assertTrue(diagnostics.all().toString().contains("\"twins\" is no kind of finding"));
        assertTrue(diagnostics.all().toString().contains("\"C\" is no rule of this edition"));
        assertTrue(diagnostics.all().toString().contains("lacks \"why\""));
    }

    @Test
    void a_row_of_a_table_that_a_wider_row_covers_is_shadowed() {
        Map<String, String> texts = new TreeMap<>(SmallEdition.texts());
        texts.put(
                "tables/t.csv",
                "title,T\nbasis,common practice\nthen,support\n\nid,Soil.kind,Material.substrate,target,criterion,points,reason\n"
                        + "T-01,soil-a,,any,works,2,So.\nT-02,soil-a,substrate-a,water,works,1,So.\n");
        Finding finding = only(findings(SmallEdition.read(SmallEdition.files(texts))));
        assertEquals(Finding.Kind.SHADOWED, finding.kind());
        assertEquals(List.of("T-02", "T-01"), finding.rules());
    }

    private static Finding only(List<Finding> findings) {
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0);
    }
}
