package org.washwright.exchange;

import java.util.ArrayList;
import java.util.List;

/** Comma-separated text (RFC 4180) cut into rows of cells, each with its line. Cells are data and never evaluated. */
final class Csv {

    /**
     * A row.
     *
     * @param line the line it starts on
     * @param cells what they say
     * @param columns where each cell starts on that line, from 1
     * @param raw the bytes of each cell as they stand between the commas
     * @param fault what is wrong with its quotes; empty when nothing is
     * @param end what ends the row: a line feed with or without a carriage return, or nothing at the end of the text
     */
    record Row(int line, List<String> cells, List<Integer> columns, List<String> raw, String fault, String end) {

        /** A cell; empty text past the end. */
        String cell(int i) {
            return i < cells.size() ? cells.get(i) : "";
        }

        /** Where a cell starts; the start of the row past the end. */
        int column(int i) {
            return i < columns.size() ? columns.get(i) : 1;
        }

        boolean isBlank() {
            return cells.stream().allMatch(String::isBlank);
        }
    }

    private Csv() {}

    /** All rows; a quoted cell may hold commas and doubled quotes, and runs over a line's end only as a fault. */
    static List<Row> rows(String text) {
        Cutter cutter = new Cutter(text);
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean doubled = c == '"' && cutter.quoted && i + 1 < text.length() && text.charAt(i + 1) == '"';
            cutter.at = i;
            cutter.take(c, doubled);
            i += doubled ? 1 : 0;
        }
        cutter.at = text.length();
        return cutter.end();
    }

    /** Where the cutting stands. */
    private static final class Cutter {
        private final List<Row> rows = new ArrayList<>();
        private final String text;
        private final List<String> cells = new ArrayList<>();
        private final List<Integer> columns = new ArrayList<>();
        private final List<String> raw = new ArrayList<>();
        private final StringBuilder cell = new StringBuilder();
        private int line = 1;
        private int start = 1;
        private boolean blank = true;
        private boolean quoted;
        private boolean closed;
        private String fault = "";
        private int at;
        private int rowStart;
        private int cellStart;

        private Cutter(String text) {
            this.text = text;
        }

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
            columns.add(cellStart - rowStart + 1);
            int end = at < text.length() && text.charAt(at) == '\n' && at > cellStart && text.charAt(at - 1) == '\r'
                    ? at - 1
                    : at;
            raw.add(text.substring(cellStart, end));
            cellStart = at + 1;
            cell.setLength(0);
            blank = true;
            closed = false;
        }

        private void row() {
            cell();
            boolean returned = at > 0 && at < text.length() && text.charAt(at - 1) == '\r';
            String end = at >= text.length() ? "" : returned ? "\r\n" : "\n";
            rows.add(new Row(start, List.copyOf(cells), List.copyOf(columns), List.copyOf(raw), fault, end));
            cells.clear();
            columns.clear();
            raw.clear();
            rowStart = at + 1;
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
