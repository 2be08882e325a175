package org.washwright.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Answer;
import org.washwright.document.Diagnostics;
import org.washwright.generate.Starter;

@Tag("slow")
class GridCellsIT {

    private static final String DATE = "2026-11-25";

    /** No axis has a multiple of it of stops, so that every stop of every axis comes up. */
    private static final int EACH = 53;

    private static final GridPlan PLAN =
            GridTest.plan(GridTest.SMALL, new Diagnostics()).orElseThrow();
    private static final List<List<GridPlan.Stop>> STOPS = PLAN.stops(Starter.edition());

    /**
     * Each cell says what the interpreter, which computed none of them, says of the cell's task. Only the cells looked at are
     * computed: all of them are many thousands.
     */
    @Test
    void each_cell_counts_what_the_answer_to_its_task_says() {
        List<List<Integer>> places = places();
        List<Set<Integer>> seen =
                STOPS.stream().map(s -> (Set<Integer>) new TreeSet<Integer>()).toList();
        IntStream.range(0, places.size()).filter(i -> i % EACH == 0).parallel().forEach(i -> {
            List<Integer> at = places.get(i);
            Answer answer = Starter.interpreted()
                    .assess(Grid.task(PLAN, STOPS, at), Starter.WISHES)
                    .answer();
            Grid.Cell cell = alone(at);
            assertEquals(
                    answer.candidates().stream()
                            .filter(c -> c.status().equals("recommended"))
                            .map(Answer.Candidate::process)
                            .sorted()
                            .toList(),
                    cell.recommended());
            assertEquals(answer.ruledOut().size(), cell.ruledOut());
        });
        for (int i = 0; i < places.size(); i += EACH) {
            for (int axis = 0; axis < STOPS.size(); axis++) {
                seen.get(axis).add(places.get(i).get(axis));
            }
        }
        assertEquals(
                STOPS.stream().map(List::size).toList(),
                seen.stream().map(Set::size).toList());
    }

    /** A cell of a grid is the one of its place, wherever it stands there. */
    @Test
    void the_cells_of_a_grid_stand_in_order_and_are_found_by_their_places() {
        List<List<GridPlan.Stop>> some = List.of(
                STOPS.get(0).subList(3, 5),
                STOPS.get(1).subList(0, 3),
                STOPS.get(2).subList(0, 2));
        Grid grid = Grid.of(PLAN, some, Starter.swept(), DATE);
        assertEquals(12, grid.cells().size());
        Set<List<String>> different = new TreeSet<>(java.util.Comparator.comparing(List::toString));
        int n = 0;
        for (int soil = 0; soil < 2; soil++) {
            for (int family = 0; family < 3; family++) {
                for (int feature = 0; feature < 2; feature++) {
                    Grid.Cell cell = grid.cells().get(n++);
                    assertEquals(List.of(soil, family, feature), cell.at());
                    assertEquals(cell, grid.at(cell.at()));
                    Grid.Cell same = alone(List.of(soil + 3, family, feature));
                    assertEquals(same.recommended(), cell.recommended());
                    assertEquals(same.conditional(), cell.conditional());
                    assertEquals(same.ruledOut(), cell.ruledOut());
                    assertEquals(same.refused(), cell.refused());
                    different.add(cell.conditional());
                }
            }
        }
        // Own earlier output, half of it: cells that were all alike would show no order.
        assertTrue(different.size() > 1, different::toString);
    }

    /** The cell of this place as the only one of a grid. */
    private static Grid.Cell alone(List<Integer> at) {
        List<List<GridPlan.Stop>> stops = IntStream.range(0, at.size())
                .mapToObj(axis -> List.of(STOPS.get(axis).get(at.get(axis))))
                .toList();
        return Grid.of(PLAN, stops, Starter.swept(), DATE).cells().get(0);
    }

    /** All places, the last axis running fastest. */
    private static List<List<Integer>> places() {
        List<List<Integer>> places = List.of(List.of());
        for (List<GridPlan.Stop> axis : STOPS) {
            List<List<Integer>> longer = new ArrayList<>();
            for (List<Integer> place : places) {
                for (int i = 0; i < axis.size(); i++) {
                    List<Integer> next = new ArrayList<>(place);
                    next.add(i);
                    longer.add(List.copyOf(next));
                }
            }
            places = longer;
        }
        return places;
    }
}
