package org.washwright.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Assessor;
import org.washwright.document.Diagnostics;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.generate.Starter;

@Tag("slow")
class GridCellsIT {

    private static final String DATE = "2026-11-25";

    /** Each cell says what the interpreter, which computed none of them, says of the cell's task. */
    @Test
    void each_cell_counts_what_the_answer_to_its_task_says() {
        Diagnostics diagnostics = new Diagnostics();
        GridPlan plan = GridTest.plan(GridTest.SMALL, diagnostics).orElseThrow();
        Grid grid = Grid.of(
                plan, plan.stops(Starter.edition()), Assessor.of(Starter.edition(), SweepInference.factory()), DATE);
        for (int i = 0; i < grid.cells().size(); i += 53) {
            Grid.Cell cell = grid.cells().get(i);
            Answer answer = Starter.interpreted()
                    .assess(Grid.task(plan, grid.stops(), cell.at()), Starter.WISHES)
                    .answer();
            assertEquals(
                    answer.candidates().stream()
                            .filter(c -> c.status().equals("recommended"))
                            .map(Answer.Candidate::process)
                            .sorted()
                            .toList(),
                    cell.recommended());
            assertEquals(answer.ruledOut().size(), cell.ruledOut());
            assertEquals(cell, grid.at(cell.at()));
        }
    }
}
