package org.washwright.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A decision table cut so that it can be put together again byte for byte: lines that all rows share, an empty line, the
 * header, the rows.
 *
 * @param head the lines before the empty line: a word and what it says
 * @param gap the empty lines before the header, as they stand
 * @param header the names of the columns; a line without cells when there is none
 * @param rows the rows; empty lines stand with the row they precede
 * @param rest what stands behind the last row
 */
public record TableText(List<Line> head, String gap, Line header, List<Line> rows, String rest) {

    private static final String LINE_FEED = "\n";

    /** Keeps copies. */
    public TableText {
        head = List.copyOf(head);
        rows = List.copyOf(rows);
    }

    /**
     * A line.
     *
     * @param before empty lines before it, as they stand
     * @param line number of the line in its file, from 1; 0 for one that is new
     * @param cells what stands between the commas
     * @param end what ends it; empty for the last line of a text
     */
    public record Line(String before, int line, List<Cell> cells, String end) {

        /** Keeps a copy. */
        public Line {
            cells = List.copyOf(cells);
        }

        /** What a cell says; empty past the end. */
        public String text(int i) {
            return i < cells.size() ? cells.get(i).text() : "";
        }

        private String written() {
            return before + String.join(",", cells.stream().map(Cell::raw).toList()) + end;
        }

        private boolean hasText() {
            return cells.stream().anyMatch(c -> !c.text().isBlank());
        }

        private static Line of(String before, Csv.Row row) {
            List<Cell> cells = IntStream.range(0, row.cells().size())
                    .mapToObj(i -> new Cell(
                            row.raw().get(i), row.cells().get(i), row.columns().get(i)))
                    .toList();
            return new Line(before, row.line(), cells, row.end());
        }
    }

    /**
     * A cell.
     *
     * @param raw as it stands, with its quotes
     * @param text what it says, without the blanks around it
     * @param column where it starts in its line, from 1; 0 for one that is new
     */
    public record Cell(String raw, String text, int column) {

        /** Drops the blanks that a reader of tables does not look at. */
        public Cell {
            text = text.strip();
        }

        /** A cell that says this, in quotes where it needs them or where its column has them. */
        static Cell of(String text, boolean quoted) {
            boolean needed = text.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r')
                    || !text.equals(text.strip());
            String raw = needed || quoted && !text.isEmpty() ? '"' + text.replace("\"", "\"\"") + '"' : text;
            return new Cell(raw, text, 0);
        }

        boolean isQuoted() {
            return raw.strip().startsWith("\"");
        }
    }

    /** Cuts a text. Nothing is lost: {@link #text()} gives it back. */
    public static TableText of(String text) {
        List<Csv.Row> rows = Csv.rows(text);
        int at = 0;
        List<Line> head = new ArrayList<>();
        while (at < rows.size() && !rows.get(at).isBlank()) {
            head.add(Line.of("", rows.get(at++)));
        }
        StringBuilder gap = new StringBuilder();
        while (at < rows.size() && rows.get(at).isBlank()) {
            gap.append(Line.of("", rows.get(at++)).written());
        }
        Line header = at < rows.size() ? Line.of("", rows.get(at++)) : new Line("", 0, List.of(), "");
        List<Line> lines = new ArrayList<>();
        StringBuilder blank = new StringBuilder();
        for (; at < rows.size(); at++) {
            if (rows.get(at).isBlank()) {
                blank.append(Line.of("", rows.get(at)).written());
            } else {
                lines.add(Line.of(blank.toString(), rows.get(at)));
                blank.setLength(0);
            }
        }
        return new TableText(head, gap.toString(), header, lines, blank.toString());
    }

    /** The whole text. */
    public String text() {
        StringBuilder out = new StringBuilder();
        head.forEach(line -> out.append(line.written()));
        out.append(gap).append(header.written());
        rows.forEach(line -> out.append(line.written()));
        return out.append(rest).toString();
    }

    /** The names of the columns. */
    public List<String> columns() {
        return header.cells().stream().map(Cell::text).toList();
    }

    /** What a word of the head says; empty when it is not there. */
    public String head(String word) {
        return head.stream()
                .filter(line -> line.text(0).equals(word))
                .map(line -> line.text(1))
                .findFirst()
                .orElse("");
    }

    /** How lines end here. */
    String newline() {
        return head.stream()
                .map(Line::end)
                .filter(end -> !end.isEmpty())
                .findFirst()
                .orElse(LINE_FEED);
    }

    /** Whether most cells of a column stand in quotes, so that a new one should. */
    boolean quotes(int column) {
        long filled = rows.stream().filter(r -> !r.text(column).isEmpty()).count();
        long quoted = rows.stream()
                .filter(r -> column < r.cells().size() && !r.text(column).isEmpty())
                .filter(r -> r.cells().get(column).isQuoted())
                .count();
        return filled > 0 && quoted * 2 > filled;
    }

    /** True when no line holds anything. */
    public boolean isEmpty() {
        return head.isEmpty() && !header.hasText() && rows.isEmpty();
    }
}
