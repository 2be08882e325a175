package org.washwright.starter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.washwright.cases.Case;
import org.washwright.cases.CaseResult;
import org.washwright.cases.CaseRunner;
import org.washwright.drools.DrlReader;
import org.washwright.exchange.EditionReader;
import org.washwright.generate.Starter;

/** The reference cases of the starter rulebook; each names its source in its file. */
class StarterCasesTest {

    private static final List<Case> CASES =
            new EditionReader(new DrlReader()).read(Starter.files()).checks().cases();

    @Test
    void every_reference_case_holds() {
        List<String> unmet = new CaseRunner(Starter.swept(), "2026-11-25")
                .run(CASES).stream()
                        .filter(r -> !r.holds())
                        .map(CaseResult::asData)
                        .map(String::valueOf)
                        .toList();
        assertTrue(CASES.size() >= 40);
        assertEquals(List.of(), unmet);
    }

    @Test
    void every_demo_task_has_a_case_and_its_copy_in_the_edition_is_the_demo_task() {
        Set<String> titles = CASES.stream().map(c -> c.task().title()).collect(Collectors.toSet());
        Starter.demoTexts().forEach((name, text) -> {
            String copy = "cases/" + name.replace(".yaml", ".task.yaml");
            assertEquals(
                    text,
                    new String(Starter.files().files().get(copy), StandardCharsets.UTF_8),
                    "copy demo-data/tasks/" + name + " to rules/starter/" + copy);
            assertTrue(titles.contains(Starter.task(text).title()), name);
        });
    }
}
