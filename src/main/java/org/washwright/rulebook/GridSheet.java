package org.washwright.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.washwright.grid.Grid;
import org.washwright.grid.GridPlan;

/**
 * One sheet of a grid: its first two axes as a table, for a value of each further one.
 *
 * @param most most recommended processes of any cell, for shading
 */
record GridSheet(String rows, String columns, List<String> heads, List<Line> lines, List<Pick> picks, int most) {

    private static final int SHADES = 5;
    private static final List<String> NAMES = List.of("third", "fourth");

    /** A row. */
    record Line(String head, List<Box> boxes) {}

    /**
     * A cell.
     *
     * @param at its place on all axes, joined by commas
     * @param shade 0 for none recommended to 5
     */
    record Box(String at, int recommended, int conditional, boolean refused, int shade, String words) {}

    /** A further axis and which value is picked. */
    record Pick(String name, String label, List<Option> options) {}

    /** A value to pick. */
    record Option(int value, String label, boolean picked) {}

    /**
     * A sheet.
     *
     * @param grid the cells of the sheet
     * @param all all stops of every axis, to pick from
     */
    static GridSheet of(Grid grid, List<List<GridPlan.Stop>> all) {
        List<Integer> places = new ArrayList<>();
        List<Pick> picks = new ArrayList<>();
        for (int i = GridPlan.TABLE; i < grid.axes().size(); i++) {
            GridPlan.Stop shown = grid.stops().get(i).get(0);
            places.add(all.get(i).indexOf(shown));
            List<Option> options = new ArrayList<>();
            for (int j = 0; j < all.get(i).size(); j++) {
                options.add(new Option(
                        j, all.get(i).get(j).label(), all.get(i).get(j).equals(shown)));
            }
            picks.add(new Pick(NAMES.get(i - GridPlan.TABLE), grid.axes().get(i).label(), options));
        }
        int most = grid.cells().stream()
                .mapToInt(c -> c.recommended().size())
                .max()
                .orElse(0);
        List<Line> lines = new ArrayList<>();
        for (int r = 0; r < grid.stops().get(0).size(); r++) {
            List<Box> boxes = new ArrayList<>();
            for (int c = 0; c < grid.stops().get(1).size(); c++) {
                List<Integer> inSheet = new ArrayList<>(List.of(r, c));
                List<Integer> inGrid = new ArrayList<>(inSheet);
                places.forEach(p -> inSheet.add(0));
                inGrid.addAll(places);
                boxes.add(box(grid.at(inSheet), inGrid, most));
            }
            lines.add(new Line(grid.stops().get(0).get(r).label(), boxes));
        }
        return new GridSheet(
                grid.axes().get(0).label(),
                grid.axes().get(1).label(),
                grid.stops().get(1).stream().map(GridPlan.Stop::label).toList(),
                lines,
                picks,
                most);
    }

    private static Box box(Grid.Cell cell, List<Integer> place, int most) {
        int n = cell.recommended().size();
        int shade = n == 0 || most == 0 ? 0 : Math.max(1, Math.round((float) SHADES * n / most));
        String at = place.stream().map(String::valueOf).collect(Collectors.joining(","));
        String words =
                n + " recommended, " + cell.conditional().size() + " conditional, " + cell.ruledOut() + " ruled out";
        return new Box(at, n, cell.conditional().size(), cell.refused(), shade, words);
    }
}
