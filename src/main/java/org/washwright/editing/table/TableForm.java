package org.washwright.editing.table;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.washwright.editing.Posted;
import org.washwright.exchange.TableDraft;
import org.washwright.exchange.TableDraft.Column;
import org.washwright.exchange.TableDraft.Row;

/**
 * A table as the grid sends it. Fields: {@code h.WORD} for the head, {@code c.N} and {@code cf.N} for name and origin of a
 * column, {@code rf.N} for the origin of a row, {@code r.N.M} for its cells.
 */
final class TableForm {

    /** Words of the head, in the order in which they are asked. */
    static final List<String> HEAD = List.of("title", "then", "basis", "source", "note", "since");

    private TableForm() {}

    static TableDraft draft(Posted posted) {
        Map<String, String> head = new LinkedHashMap<>();
        HEAD.stream().filter(w -> posted.has("h." + w)).forEach(w -> head.put(w, posted.word("h." + w)));
        List<Integer> numbers = posted.numbers("c");
        List<Column> columns = numbers.stream()
                .map(n -> new Column(posted.number("cf." + n).orElse(-1), posted.word("c." + n)))
                .toList();
        List<Row> rows = posted.numbers("rf").stream()
                .map(r -> new Row(
                        posted.number("rf." + r).orElse(-1),
                        numbers.stream()
                                .map(c -> posted.word("r." + r + "." + c))
                                .toList()))
                .toList();
        return new TableDraft(head, columns, rows);
    }

    /** The draft after what the button asks for; which row it leaves the reader at, -1 for none. */
    record Acted(TableDraft draft, int row) {}

    static Acted act(TableDraft draft, Posted posted) {
        Posted.Asked asked = posted.asked();
        int n = asked.number();
        List<Row> rows = new ArrayList<>(draft.rows());
        List<Column> columns = new ArrayList<>(draft.columns());
        boolean known = n >= 0 && n < rows.size();
        switch (asked.word()) {
            case "below" ->
                rows.add(known ? n + 1 : rows.size(), new Row(-1, blank(draft, known ? n : rows.size() - 1)));
            case "copy" -> {
                if (known) {
                    rows.add(n + 1, new Row(-1, copied(draft, rows.get(n))));
                }
            }
            case "delete" -> {
                if (known) {
                    rows.remove(n);
                }
            }
            case "up", "down" -> {
                int to = asked.word().equals("up") ? n - 1 : n + 1;
                if (known && to >= 0 && to < rows.size()) {
                    rows.add(to, rows.remove(n));
                }
            }
            case "column" -> add(columns, rows, posted.word("new-column"));
            case "drop" -> {
                if (n >= 0 && n < columns.size()) {
                    columns.remove(n);
                    rows.replaceAll(r -> without(r, n));
                }
            }
            default -> {
                // saving alone changes nothing
            }
        }
        int row = switch (asked.word()) {
            case "below", "copy" -> known ? n + 1 : rows.size() - 1;
            case "up" -> Math.max(0, n - 1);
            case "down" -> Math.min(rows.size() - 1, n + 1);
            case "delete" -> Math.min(rows.size() - 1, n);
            default -> -1;
        };
        return new Acted(new TableDraft(draft.head(), columns, rows), row);
    }

    /** A new row holds an id, so that it is a row of its file even before anything else is said. */
    private static List<String> blank(TableDraft draft, int after) {
        List<String> cells = new ArrayList<>();
        draft.columns().forEach(c -> cells.add(c.name().equals("id") ? nextId(draft, after) : ""));
        return cells;
    }

    private static List<String> copied(TableDraft draft, Row row) {
        List<String> cells = new ArrayList<>(row.cells());
        int id = id(draft);
        if (id >= 0 && id < cells.size()) {
            cells.set(id, nextId(draft, draft.rows().indexOf(row)));
        }
        return cells;
    }

    private static int id(TableDraft draft) {
        return draft.columns().stream().map(Column::name).toList().indexOf("id");
    }

    /** The first id behind that of a row that no row here has: MS-17 leads to MS-18. */
    static String nextId(TableDraft draft, int after) {
        int column = id(draft);
        List<String> ids =
                draft.rows().stream().map(r -> r.cell(Math.max(column, 0))).toList();
        String model = after >= 0 && after < ids.size() ? ids.get(after) : "";
        if (!model.matches(".*[0-9]{1,6}")) {
            model = model.isEmpty() ? "NEW-0" : model + "-1";
        }
        String stem = model.replaceFirst("[0-9]{1,6}$", "");
        String digits = model.substring(stem.length());
        int number = Integer.parseInt(digits);
        String next;
        do {
            number++;
            next = stem + String.format(java.util.Locale.ROOT, "%0" + digits.length() + "d", number);
        } while (ids.contains(next));
        return next;
    }

    private static void add(List<Column> columns, List<Row> rows, String name) {
        if (name.isEmpty() || columns.stream().anyMatch(c -> c.name().equals(name))) {
            return;
        }
        int at = place(columns, name);
        columns.add(at, new Column(-1, name));
        rows.replaceAll(r -> {
            List<String> cells = new ArrayList<>(r.cells());
            cells.add(Math.min(at, cells.size()), "");
            return new Row(r.from(), cells);
        });
    }

    /** Conditions stand behind the last condition, everything else last. */
    private static int place(List<Column> columns, String name) {
        if (!name.contains(".")) {
            return columns.size();
        }
        int at = Math.min(1, columns.size());
        for (int i = 0; i < columns.size(); i++) {
            at = columns.get(i).name().contains(".") ? i + 1 : at;
        }
        return at;
    }

    private static Row without(Row row, int column) {
        List<String> cells = new ArrayList<>(row.cells());
        if (column < cells.size()) {
            cells.remove(column);
        }
        return new Row(row.from(), cells);
    }
}
