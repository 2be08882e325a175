package org.washwright.taskfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.task.Vocabulary;

/** The columns of a table of tasks, and the task document that a row of it makes. */
public final class TaskColumns {

    private final List<String> paths;

    private TaskColumns(List<String> paths) {
        this.paths = List.copyOf(paths);
    }

    /**
     * Reads a header; finds every error at once.
     *
     * @param header the names
     * @param place where the header stands
     */
    public static TaskColumns read(List<String> header, Place place, Vocabulary vocabulary, Diagnostics diagnostics) {
        List<TaskCells.Cell> names = new ArrayList<>();
        for (String cell : header) {
            String path = cell.strip().replaceFirst("^/", "");
            names.add(new TaskCells.Cell(path, "", column(place, names.size())));
        }
        new TaskPaths(vocabulary).check(names, diagnostics);
        List<String> paths = names.stream().map(TaskCells.Cell::path).toList();
        if (!diagnostics.hasErrors() && !paths.contains("title")) {
            diagnostics.add(Message.MISSING_FIELD, column(place, 0), "", "the header", "title");
        }
        return new TaskColumns(paths);
    }

    /**
     * The task of a row as JSON; empty when the row is none.
     *
     * @param cells the row's cells
     * @param place where the row stands
     */
    public Optional<byte[]> document(List<String> cells, Place place, Diagnostics diagnostics) {
        if (cells.size() != paths.size()) {
            Place end = new Place(place.file(), place.line(), Math.min(cells.size(), paths.size()), "");
            diagnostics.add(Message.CELL_COUNT, end, String.valueOf(cells.size()), paths.size());
            return Optional.empty();
        }
        return TaskCells.document(named(cells, place), diagnostics);
    }

    /** Number from 1 of the column that a pointer of a row's task document leads to; 0 when there is none. */
    public int columnOf(String pointer, List<String> cells) {
        return TaskCells.at(pointer, named(cells, Place.ofFile("")))
                .map(c -> c.place().column())
                .orElse(0);
    }

    private List<TaskCells.Cell> named(List<String> cells, Place place) {
        List<TaskCells.Cell> named = new ArrayList<>();
        for (int i = 0; i < paths.size(); i++) {
            // A row that is too short may still be asked where something of it stands.
            named.add(new TaskCells.Cell(paths.get(i), i < cells.size() ? cells.get(i) : "", column(place, i)));
        }
        return named;
    }

    private static Place column(Place row, int index) {
        return new Place(row.file(), row.line(), index + 1, "");
    }
}
