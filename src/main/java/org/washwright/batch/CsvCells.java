package org.washwright.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.Message;
import org.washwright.document.Place;

/** Cuts one row of comma-separated text into cells. Cells are data and never evaluated. */
final class CsvCells {

    private CsvCells() {}

    /** The cells of a row; empty when it is no row of such text. */
    static Optional<List<String>> of(InputRecord row, Diagnostics diagnostics) {
        return DocumentReader.decode(row.key(), row.bytes(), diagnostics)
                .flatMap(text -> cut(text, new Place(row.key(), (int) row.line(), 0, ""), diagnostics));
    }

    private static Optional<List<String>> cut(String text, Place place, Diagnostics diagnostics) {
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
