package org.washwright.taskfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;

/** Cuts one row of comma-separated text into cells. Cells are data and never evaluated. */
public final class CsvCells {

    private CsvCells() {}

    /** The rows of a whole text with the line each starts on; blank ones are left out. */
    static List<Row> rows(String text) {
        List<Row> rows = new ArrayList<>();
        StringBuilder row = new StringBuilder();
        CsvState state = CsvState.START;
        int line = 1;
        int start = 1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean end = c == '\n' && state != CsvState.QUOTED;
            boolean half = c == '\r' && state != CsvState.QUOTED && i + 1 < text.length() && text.charAt(i + 1) == '\n';
            if (end) {
                rows.add(new Row(start, row.toString()));
                row.setLength(0);
                state = CsvState.START;
                start = line + 1;
            } else if (!half) {
                row.append(c);
                state = state.next(c);
            }
            line += c == '\n' ? 1 : 0;
        }
        rows.add(new Row(start, row.toString()));
        rows.removeIf(r -> r.text().isBlank());
        return rows;
    }

    /** A row of a text before it is cut into cells. */
    record Row(int line, String text) {}

    /**
     * The cells of a row; empty when it is no row of such text.
     *
     * @param text the row without its line's end
     * @param place where the row stands; columns count cells
     */
    public static Optional<List<String>> cut(String text, Place place, Diagnostics diagnostics) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        CsvState state = CsvState.START;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            CsvState before = state;
            state = before.next(c);
            if (state == CsvState.START && c == ',') {
                cells.add(cell.toString());
                cell.setLength(0);
            } else if (before == CsvState.START && state == CsvState.QUOTED) {
                cell.setLength(0);
            } else if (state == CsvState.AFTER && !Character.isWhitespace(c)) {
                Place here = new Place(place.file(), place.line(), cells.size() + 1, "");
                diagnostics.add(Message.CELL_QUOTE, here, text.substring(Math.max(0, i - 10), i + 1));
                return Optional.empty();
            } else if (state != CsvState.CLOSED && state != CsvState.AFTER) {
                cell.append(c);
            }
        }
        if (state == CsvState.QUOTED) {
            Place here = new Place(place.file(), place.line(), cells.size() + 1, "");
            diagnostics.add(Message.CELL_UNENDED, here, cell.toString());
            return Optional.empty();
        }
        cells.add(cell.toString());
        return Optional.of(cells);
    }
}
