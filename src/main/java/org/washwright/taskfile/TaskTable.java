package org.washwright.taskfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.task.Vocabulary;

/**
 * Tasks in comma-separated text (RFC 4180): one a row below a header of names, or a single one on its side, one attribute a
 * line. Names and cells are the same in both.
 */
final class TaskTable {

    /** First two names in the header of a task that lies on its side; further columns are remarks. */
    static final List<String> ON_ITS_SIDE = List.of("attribute", "value");

    private final String name;
    private final Vocabulary vocabulary;
    private final Diagnostics diagnostics;

    private TaskTable(String name, Vocabulary vocabulary, Diagnostics diagnostics) {
        this.name = name;
        this.vocabulary = vocabulary;
        this.diagnostics = diagnostics;
    }

    static List<TaskFile.Made> read(String name, byte[] bytes, Vocabulary vocabulary, Diagnostics diagnostics) {
        TaskTable table = new TaskTable(name, vocabulary, diagnostics);
        return DocumentReader.decode(name, bytes, diagnostics)
                .map(text -> table.tasks(CsvCells.rows(text)))
                .orElse(List.of());
    }

    private List<TaskFile.Made> tasks(List<CsvCells.Row> rows) {
        if (rows.isEmpty()) {
            diagnostics.add(Message.EMPTY_DOCUMENT, Place.ofFile(name), "");
            return List.of();
        }
        Optional<List<String>> header = cells(rows.get(0));
        if (header.isEmpty()) {
            return List.of();
        }
        List<CsvCells.Row> body = rows.subList(1, rows.size());
        boolean side = header.get().size() >= ON_ITS_SIDE.size()
                && header.get().stream().limit(2).map(String::strip).toList().equals(ON_ITS_SIDE);
        return side ? lying(body) : upright(header.get(), rows.get(0), body);
    }

    private List<TaskFile.Made> lying(List<CsvCells.Row> rows) {
        List<TaskCells.Cell> cells = new ArrayList<>();
        for (CsvCells.Row row : rows) {
            List<String> parts = cells(row).orElse(List.of());
            String path = parts.isEmpty() ? "" : parts.get(0).strip().replaceFirst("^/", "");
            if (parts.size() > 1 && !path.startsWith("#") && !parts.get(1).isBlank()) {
                cells.add(new TaskCells.Cell(path, parts.get(1), new Place(name, row.line(), 2, "")));
            }
        }
        return one(cells, vocabulary, diagnostics);
    }

    /** The one task that named cells make. */
    static List<TaskFile.Made> one(List<TaskCells.Cell> cells, Vocabulary vocabulary, Diagnostics diagnostics) {
        new TaskPaths(vocabulary).check(cells, diagnostics);
        return TaskCells.document(cells, diagnostics)
                .map(document -> List.of(new TaskFile.Made(document, p -> at(p, cells))))
                .orElse(List.of());
    }

    private static Place at(Place found, List<TaskCells.Cell> cells) {
        Optional<Place> place = TaskCells.at(found.pointer(), cells).map(TaskCells.Cell::place);
        String pointer = found.pointer();
        return place.map(p -> new Place(p.file(), p.line(), p.column(), pointer))
                .orElse(new Place(found.file(), 0, 0, pointer));
    }

    private List<TaskFile.Made> upright(List<String> header, CsvCells.Row first, List<CsvCells.Row> rows) {
        TaskColumns columns = TaskColumns.read(header, place(first), vocabulary, diagnostics);
        if (rows.isEmpty() && !diagnostics.hasErrors()) {
            diagnostics.add(Message.NO_TASK_ROWS, Place.ofFile(name), "");
        }
        if (rows.size() > TaskFile.MOST_TASKS) {
            diagnostics.add(
                    Message.LIST_TOO_LONG,
                    Place.ofFile(name),
                    String.valueOf(rows.size()),
                    "tasks in a table",
                    TaskFile.MOST_TASKS);
        }
        if (diagnostics.hasErrors()) {
            return List.of();
        }
        List<TaskFile.Made> made = new ArrayList<>();
        for (CsvCells.Row row : rows) {
            Diagnostics own = new Diagnostics();
            Optional<List<String>> cells = CsvCells.cut(row.text(), place(row), own);
            cells.flatMap(c -> columns.document(c, place(row), own)).ifPresent(document -> {
                List<String> parts = cells.get();
                made.add(new TaskFile.Made(
                        document, p -> new Place(name, row.line(), columns.columnOf(p.pointer(), parts), p.pointer())));
            });
            diagnostics.addAll(own);
        }
        return made;
    }

    private Optional<List<String>> cells(CsvCells.Row row) {
        return CsvCells.cut(row.text(), place(row), diagnostics);
    }

    private Place place(CsvCells.Row row) {
        return new Place(name, row.line(), 0, "");
    }
}
