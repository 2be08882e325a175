package org.washwright.exchange;

import java.util.ArrayList;
import java.util.List;

/** Comma-separated text (RFC 4180) cut into rows of cells, each with its line. Cells are data and never evaluated. */
final class Csv {

    /** A row, the line it starts on, and what is wrong with its quotes; empty when nothing is. */
    record Row(int line, List<String> cells, String fault) {

        /** A cell; empty text past the end. */
        String cell(int i) {
            return i < cells.size() ? cells.get(i) : "";
        }

        boolean isBlank() {
            return cells.stream().allMatch(String::isBlank);
        }
    }

    private Csv() {}

    /** All rows; a quoted cell may hold commas and doubled quotes, and runs over a line's end only as a fault. */
    static List<Row> rows(String text) {
        Cutter cutter = new Cutter();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean doubled = c == '"' && cutter.quoted && i + 1 < text.length() && text.charAt(i + 1) == '"';
            cutter.take(c, doubled);
            i += doubled ? 1 : 0;
        }
        return cutter.end();
    }

    /** Where the cutting stands. */
    private static final class Cutter {
        private final List<Row> rows = new ArrayList<>();
        private final List<String> cells = new ArrayList<>();
        private final StringBuilder cell = new StringBuilder();
        private int line = 1;
        private int start = 1;
        private boolean blank = true;
        private boolean quoted;
        private boolean closed;
        private String fault = "";

        private void take(char c, boolean doubled) {
            if (quoted) {
                inQuotes(c, doubled);
            } else if (c == '"' && blank && !closed) {
                cell.setLength(0);
                quoted = true;
            } else if (c == ',') {
                cell();
            } else if (c == '\n') {
                row();
            } else if (c != '\r') {
                fault = closed && !Character.isWhitespace(c) ? "text stands behind a closed quote" : fault;
                blank &= Character.isWhitespace(c);
                cell.append(c);
            }
        }

        private void inQuotes(char c, boolean doubled) {
            if (c == '\n') {
                fault = "a cell runs over the end of its line";
                line++;
            }
            if (c == '"' && !doubled) {
                quoted = false;
                closed = true;
            } else {
                cell.append(c);
            }
        }

        private void cell() {
            cells.add(cell.toString());
            cell.setLength(0);
            blank = true;
            closed = false;
        }

        private void row() {
            cell();
            rows.add(new Row(start, List.copyOf(cells), fault));
            cells.clear();
            fault = "";
            line++;
            start = line;
        }

        private List<Row> end() {
            fault = quoted ? "a quote never closes" : fault;
            if (cell.length() > 0 || closed || quoted || !cells.isEmpty()) {
                row();
            }
            return rows;
        }
    }
}
