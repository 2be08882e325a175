package org.washwright.plant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Answer;
import org.washwright.document.Diagnostics;
import org.washwright.document.Hashes;
import org.washwright.generate.Starter;
import org.washwright.plant.PlantWeek.TaskOnPlant;
import org.washwright.task.CleaningTask;

/** A plant planned from a line serves the task it was planned for: that follows from what planning means. */
class PlannedPlantTest {

    @Test
    void the_line_of_a_recommended_process_blocks_its_own_task_by_nothing_but_the_basket() {
        PlantJudge judge = new PlantJudge(Starter.swept(), Starter.WISHES);
        int planned = 0;
        for (Map.Entry<String, CleaningTask> task : Starter.demoTasks().entrySet()) {
            Answer answer =
                    Starter.swept().assess(task.getValue(), Starter.WISHES).answer();
            for (Answer.Candidate candidate : answer.candidates()) {
                if (candidate.status().equals("recommended")) {
                    TaskOnPlant judged = judge.task(planned(answer, candidate.process()), SetTask.of(task.getValue()));
                    assertEquals(
                            List.of(),
                            judged.blocks().stream()
                                    .filter(b -> !b.text().contains("mass that a basket takes"))
                                    .toList(),
                            () -> task.getKey() + " " + candidate.process());
                    planned++;
                }
            }
        }
        assertTrue(planned > 20, "planned " + planned);
    }

    private static Plant planned(Answer answer, String process) {
        Map<String, Object> document =
                PlannedPlant.of(answer, process, "a task", Starter.edition()).orElseThrow();
        Diagnostics diagnostics = new Diagnostics();
        return PlantReader.read("planned.json", Hashes.canonical(document), Starter.edition(), diagnostics)
                .orElseThrow(() -> new AssertionError(diagnostics.all() + " " + document));
    }

    @Test
    void a_process_that_an_answer_does_not_hold_makes_no_plant() {
        Answer answer = Starter.swept()
                .assess(Starter.demoTasks().get("titanium-brackets.yaml"), Starter.WISHES)
                .answer();
        assertTrue(PlannedPlant.of(answer, "none-such", "x", Starter.edition()).isEmpty());
    }
}
