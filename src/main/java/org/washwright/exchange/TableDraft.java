package org.washwright.exchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A table as somebody wants it: what it says, and which line and column of the file each part comes from, so that what was
 * not touched keeps its bytes.
 *
 * @param head words of the head with what they say; an empty one is taken out
 * @param columns columns in order
 * @param rows rows in order
 */
public record TableDraft(Map<String, String> head, List<Column> columns, List<Row> rows) {

    /** Keeps copies in order. */
    public TableDraft {
        head = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(head));
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /**
     * A column.
     *
     * @param from number of the column in the file, from 0; -1 for a new one
     */
    public record Column(int from, String name) {}

    /**
     * A row.
     *
     * @param from number of the row in the file, from 0; -1 for a new one
     * @param cells what its cells say, in the order of the columns
     */
    public record Row(int from, List<String> cells) {

        /** Keeps a copy. */
        public Row {
            cells = List.copyOf(cells);
        }

        /** What a cell says; empty past the end. */
        public String cell(int i) {
            return i < cells.size() ? cells.get(i) : "";
        }

        /** True when nothing is filled in yet; such a row is not written. */
        public boolean isBlank() {
            return cells.stream().allMatch(String::isBlank);
        }
    }

    /** What a file says, nothing changed. */
    public static TableDraft of(TableText table) {
        Map<String, String> head = new LinkedHashMap<>();
        table.head().forEach(line -> head.putIfAbsent(line.text(0), line.text(1)));
        List<Column> columns = new ArrayList<>();
        List<Row> rows = new ArrayList<>();
        List<String> names = table.columns();
        for (int i = 0; i < names.size(); i++) {
            columns.add(new Column(i, names.get(i)));
        }
        for (int i = 0; i < table.rows().size(); i++) {
            TableText.Line line = table.rows().get(i);
            List<String> cells = new ArrayList<>();
            for (int c = 0; c < Math.max(names.size(), line.cells().size()); c++) {
                cells.add(line.text(c));
            }
            rows.add(new Row(i, cells));
        }
        return new TableDraft(head, columns, rows);
    }

    /** The same told of another file: columns are found by name, rows by their id, so that a file from elsewhere keeps what it can. */
    public TableDraft onto(TableText table) {
        List<String> names = table.columns();
        List<Column> found = columns.stream()
                .map(c -> new Column(names.indexOf(c.name()), c.name()))
                .toList();
        int id = names.indexOf("id");
        int here = columns.stream().map(Column::name).toList().indexOf("id");
        List<String> ids =
                table.rows().stream().map(r -> r.text(Math.max(id, 0))).toList();
        List<Row> moved = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            int same = here < 0 || id < 0 ? i : ids.indexOf(rows.get(i).cell(here));
            moved.add(
                    new Row(same < table.rows().size() ? same : -1, rows.get(i).cells()));
        }
        return new TableDraft(head, found, moved);
    }

    /** The file with this in it; what says the same keeps its bytes. */
    public TableText in(TableText table) {
        String newline = table.newline();
        List<TableText.Line> lines = head(table, newline);
        boolean bare = table.header().cells().isEmpty();
        String gap = bare && table.gap().isEmpty() ? newline : table.gap();
        TableText.Line header =
                line(table.header(), columns.stream().map(Column::name).toList(), table, newline);
        List<TableText.Line> written = new ArrayList<>();
        for (Row row : rows) {
            if (!row.isBlank()) {
                Optional<TableText.Line> old =
                        row.from() >= 0 && row.from() < table.rows().size()
                                ? Optional.of(table.rows().get(row.from()))
                                : Optional.empty();
                written.add(
                        line(old.orElse(new TableText.Line("", 0, List.of(), newline)), row.cells(), table, newline));
            }
        }
        return new TableText(
                ended(lines, newline),
                gap,
                ended(header, !written.isEmpty(), newline),
                between(written, newline),
                table.rest());
    }

    /** Only the last line may lack its end. */
    private static List<TableText.Line> between(List<TableText.Line> lines, String newline) {
        List<TableText.Line> out = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            out.add(ended(lines.get(i), i < lines.size() - 1, newline));
        }
        return out;
    }

    private static List<TableText.Line> ended(List<TableText.Line> lines, String newline) {
        return lines.stream().map(line -> ended(line, true, newline)).toList();
    }

    private static TableText.Line ended(TableText.Line line, boolean more, String newline) {
        return more && line.end().isEmpty()
                ? new TableText.Line(line.before(), line.line(), line.cells(), newline)
                : line;
    }

    private List<TableText.Line> head(TableText table, String newline) {
        Map<String, String> left = new LinkedHashMap<>(head);
        List<TableText.Line> lines = new ArrayList<>();
        for (TableText.Line line : table.head()) {
            String word = line.text(0);
            String says = left.remove(word);
            boolean twice = says == null && head.containsKey(word);
            if (twice || line.text(1).equals(says)) {
                lines.add(line);
            } else if (says != null && !says.isBlank()) {
                List<TableText.Cell> cells = new ArrayList<>(line.cells());
                TableText.Cell changed =
                        TableText.Cell.of(says, cells.size() > 1 && cells.get(1).isQuoted());
                if (cells.size() > 1) {
                    cells.set(1, changed);
                } else {
                    cells.add(changed);
                }
                lines.add(new TableText.Line(line.before(), line.line(), cells, line.end()));
            }
        }
        left.forEach((word, says) -> {
            if (!says.isBlank()) {
                lines.add(new TableText.Line(
                        "", 0, List.of(TableText.Cell.of(word, false), TableText.Cell.of(says, false)), newline));
            }
        });
        return lines;
    }

    private TableText.Line line(TableText.Line old, List<String> texts, TableText table, String newline) {
        int width = Math.max(texts.size(), isUntouched(table) ? old.cells().size() : 0);
        List<TableText.Cell> cells = new ArrayList<>();
        for (int i = 0; i < width; i++) {
            int from = i < columns.size() ? columns.get(i).from() : i;
            String text = i < texts.size() ? texts.get(i) : "";
            Optional<TableText.Cell> kept = from >= 0 && from < old.cells().size()
                    ? Optional.of(old.cells().get(from)).filter(c -> c.text().equals(text.strip()))
                    : Optional.empty();
            boolean quoted = from >= 0
                    && (from < old.cells().size() && old.cells().get(from).isQuoted()
                            || old.line() == 0 && table.quotes(from));
            cells.add(kept.orElseGet(() -> TableText.Cell.of(text.strip(), quoted)));
        }
        // A row that was shorter than the header stays so as long as nothing is said behind its end.
        while (isUntouched(table)
                && cells.size() > Math.max(1, old.cells().size())
                && old.line() > 0
                && cells.get(cells.size() - 1).text().isEmpty()) {
            cells.remove(cells.size() - 1);
        }
        return new TableText.Line(
                old.before(), old.line(), cells, old.end().isEmpty() && old.line() == 0 ? newline : old.end());
    }

    private boolean isUntouched(TableText table) {
        if (columns.size() != table.columns().size()) {
            return false;
        }
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).from() != i) {
                return false;
            }
        }
        return true;
    }
}
