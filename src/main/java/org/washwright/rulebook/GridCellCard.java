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
     * The stops at these places, joined by commas.
     *
     * @throws NotFound when there are none
     */
    static List<GridPlan.Stop> stops(List<List<GridPlan.Stop>> stops, String at) {
        List<GridPlan.Stop> out = new ArrayList<>();
        for (String place : at.split(",", -1)) {
            int index = out.size();
            boolean known = place.matches("[0-9]{1,4}")
                    && index < stops.size()
                    && Integer.parseInt(place) < stops.get(index).size();
            if (!known) {
                throw NotFound.of("cell", at);
            }
            out.add(stops.get(index).get(Integer.parseInt(place)));
        }
        if (out.size() != stops.size()) {
            throw NotFound.of("cell", at);
        }
        return out;
    }

    /** The card of a grid's only cell. */
    static GridCellCard of(Grid grid, GridPlan plan, Edition edition) {
        Grid.Cell cell = grid.cells().get(0);
        CleaningTask task = Grid.task(plan, grid.stops(), cell.at());
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
