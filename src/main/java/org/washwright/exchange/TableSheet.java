package org.washwright.exchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A decision table as its author sees it, for display.
 *
 * @param head what all rows share, by word
 * @param rows the rows in order
 */
public record TableSheet(Map<String, String> head, List<Row> rows) {

    private static final Set<String> ABOUT = Set.of("basis", "source", "note");

    /**
     * One row.
     *
     * @param id rule id
     * @param when conditions that are not empty, by column
     * @param then arguments that are not empty, by column, without the reason
     * @param reason the reason
     * @param about basis, source and note of the row alone
     */
    public record Row(
            String id, Map<String, String> when, Map<String, String> then, String reason, Map<String, String> about) {}

    /** Cuts a table; empty when it has no header. */
    public static Optional<TableSheet> of(String text) {
        List<Csv.Row> lines = Csv.rows(text);
        Map<String, String> head = new LinkedHashMap<>();
        int at = 0;
        while (at < lines.size() && !lines.get(at).isBlank()) {
            head.put(lines.get(at).cell(0).strip(), lines.get(at).cell(1).strip());
            at++;
        }
        while (at < lines.size() && lines.get(at).isBlank()) {
            at++;
        }
        if (at >= lines.size()) {
            return Optional.empty();
        }
        List<String> columns = lines.get(at).cells().stream().map(String::strip).toList();
        List<Row> rows = new ArrayList<>();
        lines.subList(at + 1, lines.size()).stream()
                .filter(line -> !line.isBlank())
                .forEach(line -> rows.add(row(columns, line)));
        return Optional.of(new TableSheet(head, List.copyOf(rows)));
    }

    private static Row row(List<String> columns, Csv.Row line) {
        String id = "";
        String reason = "";
        Map<String, String> when = new LinkedHashMap<>();
        Map<String, String> then = new LinkedHashMap<>();
        Map<String, String> about = new LinkedHashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            String column = columns.get(i);
            String cell = line.cell(i).strip();
            if (cell.isEmpty()) {
                continue;
            }
            if (column.equals("id")) {
                id = cell;
            } else if (column.equals("reason")) {
                reason = cell;
            } else if (column.contains(".")) {
                when.put(column, cell);
            } else if (ABOUT.contains(column)) {
                about.put(column, cell);
            } else {
                then.put(column, cell);
            }
        }
        return new Row(id, when, then, reason, about);
    }
}
