package org.washwright.rulebook;

import java.util.ArrayList;
import java.util.List;
import org.washwright.grid.Grid;
import org.washwright.grid.GridPlan;
import org.washwright.problem.NotFound;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;
import org.washwright.task.TaskWriter;

/** A cell of a grid with the task behind it. */
record GridCellCard(
        String title, List<String> recommended, List<String> conditional, int ruledOut, boolean refused, String task) {

    /**
     * The cell at these places, joined by commas.
     *
     * @throws NotFound when there is none
     */
    static GridCellCard of(Grid grid, String at, GridPlan plan, Edition edition) {
        List<Integer> places = new ArrayList<>();
        for (String place : at.split(",", -1)) {
            int index = places.size();
            boolean known = place.matches("[0-9]{1,4}")
                    && index < grid.stops().size()
                    && Integer.parseInt(place) < grid.stops().get(index).size();
            if (!known) {
                throw NotFound.of("cell", at);
            }
            places.add(Integer.parseInt(place));
        }
        if (places.size() != grid.stops().size()) {
            throw NotFound.of("cell", at);
        }
        Grid.Cell cell = grid.at(places);
        CleaningTask task = Grid.task(plan, grid.stops(), places);
        return new GridCellCard(
                task.title(),
                names(cell.recommended(), edition),
                names(cell.conditional(), edition),
                cell.ruledOut(),
                cell.refused(),
                TaskWriter.yaml(task, edition, ""));
    }

    private static List<String> names(List<String> ids, Edition edition) {
        return ids.stream().map(id -> edition.catalogue().name("process", id)).toList();
    }
}
