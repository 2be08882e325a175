package org.washwright.exchange;

import java.util.ArrayList;
import java.util.List;

/** Comma-separated text (RFC 4180) cut into rows of cells, each with its line. Cells are data and never evaluated. */
final class Csv {

    /** A row and the line it starts on. */
    record Row(int line, List<String> cells) {

        /** A cell; empty text past the end. */
        String cell(int i) {
            return i < cells.size() ? cells.get(i) : "";
        }

        boolean isBlank() {
            return cells.stream().allMatch(String::isBlank);
        }
    }

    private Csv() {}

    static List<Row> rows(String text) {
        List<Row> rows = new ArrayList<>();
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        int line = 1;
        int start = 1;
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n') {
                line++;
            }
            if (quoted) {
                if (c == '"' && i + 1 < text.length() && text.charAt(i + 1) == '"') {
                    cell.append('"');
                    i++;
                } else if (c == '"') {
                    quoted = false;
                } else {
                    cell.append(c);
                }
            } else if (c == '"' && cell.toString().isBlank()) {
                cell.setLength(0);
                quoted = true;
            } else if (c == ',') {
                cells.add(cell.toString());
                cell.setLength(0);
            } else if (c == '\n') {
                cells.add(cell.toString());
                cell.setLength(0);
                rows.add(new Row(start, List.copyOf(cells)));
                cells.clear();
                start = line;
            } else if (c != '\r') {
                cell.append(c);
            }
        }
        if (cell.length() > 0 || !cells.isEmpty()) {
            cells.add(cell.toString());
            rows.add(new Row(start, List.copyOf(cells)));
        }
        return rows;
    }
}
