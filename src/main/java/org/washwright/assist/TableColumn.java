package org.washwright.assist;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds the column of a decision table in which a caret stands. */
final class TableColumn {

    private TableColumn() {}

    /** Name of the column; empty in the table's first lines and in its header. */
    static Optional<String> at(String text, int caret) {
        String[] lines = text.split("\n", -1);
        int start = 0;
        int header = -1;
        boolean blank = false;
        for (int i = 0; i < lines.length; i++) {
            int end = start + lines[i].length();
            boolean here = start <= caret && caret <= end;
            if (header >= 0 && here) {
                List<String> names = cells(lines[header]);
                int column = cells(lines[i].substring(0, caret - start)).size() - 1;
                return column < names.size() ? Optional.of(names.get(column)) : Optional.empty();
            }
            if (header < 0 && blank && !isBlank(lines[i])) {
                header = i;
            }
            blank = blank || isBlank(lines[i]);
            start = end + 1;
        }
        return Optional.empty();
    }

    private static boolean isBlank(String line) {
        return line.replace(",", "").isBlank();
    }

    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char c : line.toCharArray()) {
            if (c == '"') {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString().strip());
        return cells;
    }
}
