package org.washwright.batch;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.washwright.document.Diagnostics;
import org.washwright.document.Hashes;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.task.Vocabulary;

/** The columns of a table of tasks, and the task document that a row of it makes. */
final class CsvColumns {

    private final List<String> paths;

    private CsvColumns(List<String> paths) {
        this.paths = List.copyOf(paths);
    }

    /** Reads a header; finds every error at once. */
    static CsvColumns read(InputRecord header, Vocabulary vocabulary, Diagnostics diagnostics) {
        header.unusable().forEach(diagnostics::add);
        List<String> cells = diagnostics.hasErrors()
                ? List.of()
                : CsvCells.of(header, diagnostics).orElse(List.of());
        CsvPaths known = new CsvPaths(vocabulary);
        List<String> paths = new ArrayList<>();
        for (String cell : cells) {
            String path = cell.strip().replaceFirst("^/", "");
            Place place = new Place(header.key(), (int) header.line(), paths.size() + 1, "");
            known.check(path, place, diagnostics);
            if (paths.contains(path)) {
                diagnostics.add(Message.DUPLICATE_KEY, place, path);
            }
            paths.stream()
                    .filter(p -> p.startsWith(path + "/") || path.startsWith(p + "/"))
                    .findFirst()
                    .ifPresent(p -> diagnostics.add(Message.COLUMN_WITHIN, place, path, p));
            paths.add(path);
        }
        if (!diagnostics.hasErrors() && !paths.contains("title")) {
            Place place = new Place(header.key(), (int) header.line(), 1, "");
            diagnostics.add(Message.MISSING_FIELD, place, "", "the header", "title");
        }
        return new CsvColumns(paths);
    }

    /** The task of a row as JSON; empty when the row is none. */
    Optional<byte[]> document(InputRecord row, Diagnostics diagnostics) {
        Optional<List<String>> cells = CsvCells.of(row, diagnostics);
        if (cells.isEmpty()) {
            return Optional.empty();
        }
        int count = cells.get().size();
        if (count != paths.size()) {
            Place place = new Place(row.key(), (int) row.line(), Math.min(count, paths.size()), "");
            diagnostics.add(Message.CELL_COUNT, place, String.valueOf(count), paths.size());
            return Optional.empty();
        }
        Map<String, Object> task = new LinkedHashMap<>();
        Map<String, TreeMap<Integer, Object>> lists = new TreeMap<>();
        for (int i = 0; i < count; i++) {
            if (!cells.get().get(i).isBlank()) {
                put(i, cells.get().get(i), row, task, lists, diagnostics);
            }
        }
        lists.forEach((key, entries) -> map(task, key).put("list", List.copyOf(entries.values())));
        return diagnostics.hasErrors() ? Optional.empty() : Optional.of(Hashes.canonical(task));
    }

    private void put(
            int column,
            String cell,
            InputRecord row,
            Map<String, Object> task,
            Map<String, TreeMap<Integer, Object>> lists,
            Diagnostics diagnostics) {
        String path = paths.get(column);
        if (CsvPaths.TEXTS.contains(path)) {
            task.put(path, cell);
            return;
        }
        Place place = new Place(row.key(), (int) row.line(), column + 1, "/" + path);
        Object value = CellValue.read(cell, place, diagnostics).orElse("");
        String[] steps = path.split("/", -1);
        int index = CsvPaths.index(path);
        if (steps.length == 1) {
            task.put(path, value);
        } else if (index < 0) {
            map(task, steps[0]).put(steps[1], value);
        } else {
            TreeMap<Integer, Object> entries = lists.computeIfAbsent(steps[0], k -> new TreeMap<>());
            if (steps.length == 2) {
                entries.put(index, value);
            } else {
                map(entries.computeIfAbsent(index, k -> new LinkedHashMap<String, Object>()))
                        .put(steps[2], value);
            }
        }
    }

    private static Map<String, Object> map(Map<String, Object> task, String key) {
        return map(task.computeIfAbsent(key, k -> new LinkedHashMap<String, Object>()));
    }

    // Columns never lie within each other, so what is below a path is always a map made here.
    @SuppressWarnings("unchecked")
    private static Map<String, Object> map(Object value) {
        return (Map<String, Object>) value;
    }

    /** Number from 1 of the column that a pointer of a row's task document leads to; 0 when there is none. */
    int columnOf(String pointer, InputRecord row) {
        String path = pointer.replaceFirst("^/", "").replaceFirst("^([A-Za-z]+)/list(/|$)", "$1$2");
        int index = CsvPaths.index(path);
        if (index >= 0) {
            String key = path.substring(0, path.indexOf('/'));
            List<Integer> used = used(key, row);
            if (index < used.size()) {
                path = path.replaceFirst("/" + index, "/" + used.get(index));
            }
        }
        for (String p = path; !p.isEmpty(); p = p.substring(0, Math.max(0, p.lastIndexOf('/')))) {
            if (paths.contains(p)) {
                return paths.indexOf(p) + 1;
            }
        }
        return 0;
    }

    /** The entries of a list that a row says anything of: those it leaves out are not counted in its document. */
    private List<Integer> used(String key, InputRecord row) {
        TreeSet<Integer> used = new TreeSet<>();
        List<String> cells = CsvCells.of(row, new Diagnostics()).orElse(List.of());
        for (int i = 0; i < Math.min(cells.size(), paths.size()); i++) {
            if (paths.get(i).startsWith(key + "/") && !cells.get(i).isBlank() && CsvPaths.index(paths.get(i)) >= 0) {
                used.add(CsvPaths.index(paths.get(i)));
            }
        }
        return List.copyOf(used);
    }
}
