package org.washwright.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.washwright.document.Diagnostic;
import org.washwright.document.Message;
import org.washwright.drools.DrlReader;
import org.washwright.exchange.EditionReader;
import org.washwright.generate.SmallEdition;

class CaseReaderTest {

    private static final String RULE = "rule \"r\"\n@id(\"R\") @basis(\"common practice\")\nwhen\n"
            + "Material(hardness >= \"31 HRC\")\nthen\ncaution(\"hazard-a\", \"So.\");\nend\n";

    private static EditionReader.Result read(Map<String, String> cases) {
        Map<String, String> texts = new TreeMap<>(SmallEdition.texts());
        texts.put("rules/r.drl", RULE);
        cases.forEach((name, text) -> texts.put("cases/" + name, text));
        return new EditionReader(new DrlReader()).read(SmallEdition.files(texts));
    }

    private static Case only(String text) {
        EditionReader.Result result = read(Map.of("c.yaml", text));
        assertEquals(List.of(), result.diagnostics().all());
        return result.checks().cases().get(result.checks().cases().size() - 1);
    }

    @Test
    void everything_wrong_with_cases_comes_at_once_with_its_line() {
        List<Diagnostic> found = read(Map.of("c.yaml", """
                        cases:
                          - id: one
                            basis: hearsay
                            task: {title: t, materials: [{substrate: cheese}]}
                            expect: {proposes: [nothing-such], fires: [R, Q]}
                          - id: one
                            title: again
                            task: {title: t}
                            change: {of: one, set: {/title: x}}
                            expect: {fires: [R]}
                          - {id: two, title: two, task: {title: t}, colour: red, expect: {}}
                          - {id: three, title: three, basis: standard, change: {of: four, set: {/title: x}}, expect: {fires: [R]}}
                          - {id: four, title: four, change: {of: three, set: {/title: x}}, expect: {asks: [materials/0/colour]}}
                          - {id: five, title: five, change: {of: nobody, set: {title: x}}, expect: {windows: [{process: water-a, stage: main, parameter: temperature}]}}
                          - {id: six, title: six, task: {title: t}, expect: {windows: [{process: water-a, stage: main, parameter: temperature, max: 3 mm}]}}
                        """)).diagnostics().all();
        String all = String.join("\n", found.stream().map(Diagnostic::toString).toList());
        for (String wanted : List.of(
                "c.yaml:2:5 (/cases/0): a case lacks \"title\"",
                "c.yaml:3:12 (/cases/0/basis): \"hearsay\" is no basis",
                "c.yaml:4:46 (/cases/0/task/materials/0/substrate): \"cheese\" is no substrate",
                "c.yaml:5:25 (/cases/0/expect/proposes/0): \"nothing-such\" is no process",
                "c.yaml:5:51 (/cases/0/expect/fires/1): \"Q\" is no rule of this edition",
                "c.yaml:6:5 (/cases/1): \"one\" is used twice as case id",
                "c.yaml:11:5 (/cases/2): the case \"two\" expects nothing",
                "\"colour\" is not known in a case",
                "c.yaml:12:5 (/cases/3): the case \"three\" names no source",
                "c.yaml:12:61 (/cases/3/change/of): the case \"four\" is made from itself",
                "\"materials/0/colour\" is no attribute such as materials/0/hardness",
                "\"nobody\" is no case or file of a task below cases/",
                "an entry of \"windows\" lacks \"min, max or within\"",
                "\"3 mm\" is no temperature")) {
            assertTrue(all.contains(wanted), () -> wanted + "\nis missing in\n" + all);
        }
    }

    @Test
    void an_edition_with_a_wrong_case_is_refused_like_one_with_a_wrong_rule() {
        assertTrue(read(Map.of("c.yaml", "cases: [{id: x}]\n")).edition().isEmpty());
    }

    @Test
    void a_wrong_file_of_a_task_is_told_once_however_many_cases_are_made_from_it() {
        List<Diagnostic> found = read(Map.of(
                        "base.task.yaml",
                        "title: t\ncolour: red\n",
                        "c.yaml",
                        "cases:\n  - {id: a, title: a, task: base.task.yaml, expect: {fires: [R]}}\n"
                                + "  - {id: b, title: b, task: base.task.yaml, expect: {fires: [R]}}\n"))
                .diagnostics()
                .all();
        assertEquals(
                1,
                found.stream().filter(d -> d.message() == Message.UNKNOWN_FIELD).count());
    }

    @Test
    void a_change_sets_values_adds_entries_and_builds_on_another_change() {
        Case last = only("""
                cases:
                  - {id: a, title: a, task: {title: t, materials: [{substrate: substrate-a, hardness: 20 HRC}]}, expect: {doesNotFire: [R]}}
                  - {id: b, title: b, change: {of: a, set: {/materials/0/hardness: 40 HRC, /materials/-: substrate-b}}, expect: {fires: [R]}}
                  - {id: c, title: c, change: {of: b, set: {/following: {operation: operation-a}}}, expect: {fires: [R]}}
                """);
        String yaml = org.washwright.task.TaskWriter.yaml(last.task(), SmallEdition.with(RULE), "");
        assertEquals("""
                title: t
                materials:
                  - {substrate: substrate-a, hardness: 40 HRC}
                  - {substrate: substrate-b}
                following: {operation: operation-a}
                """, yaml);
    }

    @Test
    void a_pointer_that_leads_nowhere_says_why() {
        String all = read(Map.of("c.yaml", """
                        cases:
                          - {id: a, title: a, task: {title: t, materials: [substrate-a]}, expect: {fires: [R]}}
                          - {id: b, title: b, change: {of: a, set: {/materials/0/hardness: 40 HRC}}, expect: {fires: [R]}}
                          - {id: c, title: c, change: {of: a, set: {/materials/3: substrate-b}}, expect: {fires: [R]}}
                          - {id: d, title: d, change: {of: a, set: {/following/operation: operation-a}}, expect: {fires: [R]}}
                          - {id: e, title: e, change: {of: a, set: {materials: []}}, expect: {fires: [R]}}
                        """)).diagnostics().all().toString();
        assertTrue(all.contains("A single value stands on the way"), all);
        assertTrue(all.contains("The list holds 1 entries"), all);
        assertTrue(all.contains("There is no \"following\" on the way"), all);
        assertTrue(all.contains("Write a JSON pointer"), all);
    }
}
