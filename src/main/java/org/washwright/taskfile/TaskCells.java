package org.washwright.taskfile;

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

/** Cells that each say one thing of a task, and the task document that they make together. */
final class TaskCells {

    /** What a program that shows tables would take for the start of a formula. */
    private static final String FORMULA = "=+-@\t\r";

    private TaskCells() {}

    /** The name of what a cell says, what stands in it, and where. */
    record Cell(String path, String text, Place place) {}

    /** The task of cells as JSON; empty after an error. Blank cells say nothing; names were checked before. */
    static Optional<byte[]> document(List<Cell> cells, Diagnostics diagnostics) {
        Map<String, Object> task = new LinkedHashMap<>();
        Map<String, TreeMap<Integer, Object>> lists = new TreeMap<>();
        for (Cell cell : cells) {
            if (cell.text().startsWith("=")) {
                diagnostics.add(Message.CELL_FORMULA, cell.place(), cell.text());
            } else if (!cell.text().isBlank()) {
                put(cell, task, lists, diagnostics);
            }
        }
        lists.forEach((key, entries) -> map(task, key).put("list", List.copyOf(entries.values())));
        return diagnostics.hasErrors() ? Optional.empty() : Optional.of(Hashes.canonical(task));
    }

    private static void put(
            Cell cell, Map<String, Object> task, Map<String, TreeMap<Integer, Object>> lists, Diagnostics diagnostics) {
        String path = cell.path();
        if (TaskPaths.TEXTS.contains(path)) {
            task.put(path, unguarded(cell.text()));
            return;
        }
        Place p = cell.place();
        Place place = new Place(p.file(), p.line(), p.column(), "/" + path);
        Object value = CellValue.read(cell.text(), place, diagnostics).orElse("");
        String[] steps = path.split("/", -1);
        int index = TaskPaths.index(path);
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

    // Names never lie within each other, so what is below a path is always a map made here.
    @SuppressWarnings("unchecked")
    private static Map<String, Object> map(Object value) {
        return (Map<String, Object>) value;
    }

    /** Free text as a table holds it: with an apostrophe before what would be taken for a formula. */
    static String guarded(String text) {
        return isFormula(text) || text.startsWith("'") ? "'" + text : text;
    }

    private static String unguarded(String text) {
        boolean guarded = text.startsWith("'") && (isFormula(text.substring(1)) || text.startsWith("''"));
        return guarded ? text.substring(1) : text;
    }

    private static boolean isFormula(String text) {
        return !text.isEmpty() && FORMULA.indexOf(text.charAt(0)) >= 0;
    }

    /** The cell that a pointer of the cells' document leads to. */
    static Optional<Cell> at(String pointer, List<Cell> cells) {
        String path = pointer.replaceFirst("^/", "").replaceFirst("^([A-Za-z]+)/list(/|$)", "$1$2");
        int index = TaskPaths.index(path);
        if (index >= 0) {
            List<Integer> used = used(path.substring(0, path.indexOf('/')), cells);
            if (index < used.size()) {
                path = path.replaceFirst("/" + index, "/" + used.get(index));
            }
        }
        for (String p = path; !p.isEmpty(); p = p.substring(0, Math.max(0, p.lastIndexOf('/')))) {
            String wanted = p;
            Optional<Cell> cell =
                    cells.stream().filter(c -> c.path().equals(wanted)).findFirst();
            if (cell.isPresent()) {
                return cell;
            }
        }
        return Optional.empty();
    }

    /** The entries of a list of which anything is said: those left out are not counted in the document. */
    private static List<Integer> used(String key, List<Cell> cells) {
        TreeSet<Integer> used = new TreeSet<>();
        cells.stream()
                .filter(c -> c.path().startsWith(key + "/") && !c.text().isBlank())
                .map(c -> TaskPaths.index(c.path()))
                .filter(i -> i >= 0)
                .forEach(used::add);
        return List.copyOf(used);
    }
}
