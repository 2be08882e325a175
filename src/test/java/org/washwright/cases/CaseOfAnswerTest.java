package org.washwright.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Asked;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.Node;
import org.washwright.generate.Starter;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;

class CaseOfAnswerTest {

    @Test
    void what_is_kept_of_every_demo_task_reads_and_holds_on_the_edition_that_answered() throws Exception {
        Edition edition = Starter.edition();
        Map<String, Node> documents = new TreeMap<>();
        Map<String, Integer> processes = new LinkedHashMap<>();
        Diagnostics diagnostics = new Diagnostics();
        for (Map.Entry<String, CleaningTask> demo : Starter.demoTasks().entrySet()) {
            FrozenAnswer frozen = Starter.swept().assess(demo.getValue(), Starter.WISHES);
            Answer answer = frozen.answer();
            String file = CaseReader.FOLDER + demo.getKey() + ".yaml";
            String yaml = CaseOfAnswer.yaml(
                    answer, Asked.of(answer.request(), edition.catalogue()), edition, "kept " + demo.getKey());
            documents.put(
                    file,
                    DocumentReader.read(file, yaml.getBytes(StandardCharsets.UTF_8), diagnostics)
                            .orElseThrow());
            processes.put(
                    demo.getKey(),
                    answer.candidates().size() + answer.ruledOut().size());
        }
        List<Case> cases = CaseReader.read(documents, edition, diagnostics);
        assertEquals(List.of(), diagnostics.all());
        assertEquals(processes.size(), cases.size());
        for (CaseResult result : new CaseRunner(Starter.swept(), "2026-11-25").run(cases)) {
            assertTrue(result.holds(), () -> result.asData().toString());
        }
        assertEquals(
                processes.values().stream().mapToInt(n -> n).sum(),
                cases.stream().mapToInt(c -> c.expectations().size()).sum(),
                "each process is expected to stand as it did");
    }

    @ParameterizedTest
    @CsvSource({
        "Screws for a gearbox!, screws-for-a-gearbox",
        "Copper heat sinks with flux before electronics assembly, copper-heat-sinks-with-flux-before-electronics",
        "'  42 – Ünder <b>', nder-b",
        "'', kept-case",
        "'///', kept-case"
    })
    void a_title_becomes_an_id(String title, String id) {
        assertEquals(id, CaseOfAnswer.id(title));
    }
}
