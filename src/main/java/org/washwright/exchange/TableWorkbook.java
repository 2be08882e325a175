package org.washwright.exchange;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.taskfile.WorkbookGuard;

/**
 * A decision table as a workbook of one sheet, line by line and cell by cell as in its file, every cell as text. What comes
 * back is data: formulas, links, macros, hidden sheets, merged cells and dates are refused with the cell named.
 */
public final class TableWorkbook {

    private static final String SHEET = "table";
    private static final String TEXT = "@";
    private static final String SHADE = "E3F0F2";
    private static final int WIDE = 60;
    private static final int NARROW = 18;

    private final String name;
    private final Diagnostics diagnostics;

    private TableWorkbook(String name, Diagnostics diagnostics) {
        this.name = name;
        this.diagnostics = diagnostics;
    }

    /** The bytes of the workbook of a table's text. */
    public static byte[] write(String text) {
        List<Csv.Row> rows = Csv.rows(text);
        int header = header(rows);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(out, "Washwright", "1.0")) {
            Worksheet sheet = book.newWorksheet(SHEET);
            for (int r = 0; r < rows.size(); r++) {
                List<String> cells = rows.get(r).cells();
                for (int c = 0; c < cells.size(); c++) {
                    boolean head = r < header && c == 0 || r == header;
                    if (!cells.get(c).isEmpty()) {
                        sheet.value(r, c, Escapes.written(cells.get(c)));
                    }
                    style(sheet, r, c, head);
                }
            }
            columns(sheet, header < rows.size() ? rows.get(header).cells() : List.of());
            book.finish();
        } catch (IOException e) {
            throw new UncheckedIOException("a workbook in memory", e);
        }
        return out.toByteArray();
    }

    /** Number of the line that names the columns. */
    private static int header(List<Csv.Row> rows) {
        int at = 0;
        while (at < rows.size() && !rows.get(at).isBlank()) {
            at++;
        }
        while (at < rows.size() && rows.get(at).isBlank()) {
            at++;
        }
        return at;
    }

    private static void style(Worksheet sheet, int row, int column, boolean head) {
        var style = sheet.style(row, column).format(TEXT).wrapText(true).verticalAlignment("top");
        if (head) {
            style = style.bold().fillColor(SHADE);
        }
        style.set();
    }

    private static void columns(Worksheet sheet, List<String> header) {
        for (int c = 0; c < header.size(); c++) {
            sheet.width(c, header.get(c).strip().equals("reason") ? WIDE : NARROW);
        }
    }

    /**
     * The text of the table in a workbook.
     *
     * @param name what the workbook is called in messages
     * @return the text with line feeds, quotes only where a cell needs them; empty when it is refused, with the reasons in
     *     {@code diagnostics}
     */
    public static Optional<String> read(String name, byte[] workbook, Diagnostics diagnostics) {
        if (!WorkbookGuard.passes(name, workbook, diagnostics) || !WorkbookParts.pass(name, workbook, diagnostics)) {
            return Optional.empty();
        }
        TableWorkbook table = new TableWorkbook(name, diagnostics);
        try (ReadableWorkbook book =
                new ReadableWorkbook(new ByteArrayInputStream(workbook), new ReadingOptions(true, true))) {
            String text = table.text(book.getFirstSheet());
            return diagnostics.hasErrors() ? Optional.empty() : Optional.of(text);
        } catch (IOException | RuntimeException e) {
            // The reader of workbooks has no error of its own for what is not made as the standard wants it.
            diagnostics.add(Message.BROKEN_WORKBOOK, Place.ofFile(name), "", String.valueOf(e.getMessage()));
            return Optional.empty();
        }
    }

    private String text(Sheet sheet) throws IOException {
        TreeMap<Integer, String> lines = new TreeMap<>();
        try (Stream<Row> rows = sheet.openStream()) {
            rows.forEach(row -> lines.put(row.getRowNum(), line(row)));
        }
        StringBuilder out = new StringBuilder();
        int last = lines.isEmpty() ? 0 : lines.lastKey();
        for (int i = 1; i <= last; i++) {
            out.append(lines.getOrDefault(i, "")).append('\n');
        }
        return out.toString();
    }

    private String line(Row row) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < row.getCellCount(); i++) {
            cells.add(cell(row, i));
        }
        // Cells behind the last that says anything are only there because somebody coloured them.
        while (!cells.isEmpty() && cells.get(cells.size() - 1).isEmpty()) {
            cells.remove(cells.size() - 1);
        }
        return cells.stream().map(TableWorkbook::csv).collect(Collectors.joining(","));
    }

    private static String csv(String text) {
        boolean quotes = text.chars().anyMatch(c -> c == ',' || c == '"' || c == '\n' || c == '\r')
                || !text.equals(text.strip());
        return quotes ? '"' + text.replace("\"", "\"\"") + '"' : text;
    }

    private String cell(Row row, int column) {
        Cell cell = row.getCell(column);
        if (cell == null || cell.getValue() == null && cell.getFormula() == null) {
            return "";
        }
        Place place = place(row.getRowNum(), column);
        if (cell.getType() == CellType.FORMULA || cell.getFormula() != null) {
            diagnostics.add(Message.CELL_FORMULA, place, "=" + cell.getFormula());
            return "";
        }
        return switch (cell.getType()) {
            case ERROR -> {
                diagnostics.add(Message.CELL_FAULT, place, String.valueOf(cell.getRawValue()));
                yield "";
            }
            case BOOLEAN -> cell.asBoolean() ? "yes" : "no";
            case NUMBER -> number(cell, place);
            default -> Escapes.read(String.valueOf(cell.getValue()));
        };
    }

    private String number(Cell cell, Place place) {
        String shown = String.valueOf(cell.getDataFormatString()).toLowerCase(Locale.ROOT);
        if (shown.contains("yy") || shown.contains("d/") || shown.contains("d-") || shown.contains("mmm")) {
            diagnostics.add(Message.CELL_DATE, place, cell.getRawValue());
            return "";
        }
        return cell.asNumber().stripTrailingZeros().toPlainString();
    }

    private Place place(int row, int column) {
        return Place.ofFile(name + ", cell " + WorkbookParts.letters(column) + row);
    }

    /**
     * How a workbook writes characters that its text can't hold as they are (ECMA-376, part 1, 22.9.2.19): {@code _xHHHH_}. A text
     * that looks like that has its first line escaped.
     */
    private static final class Escapes {
        private static final java.util.regex.Pattern ESCAPE = java.util.regex.Pattern.compile("_x([0-9A-Fa-f]{4})_");

        private Escapes() {}

        static String written(String text) {
            String plain = ESCAPE.matcher(text).replaceAll("_x005F_x$1_");
            return plain.replace("\r", "_x000D_");
        }

        static String read(String text) {
            return ESCAPE.matcher(text)
                    .replaceAll(m -> java.util.regex.Matcher.quoteReplacement(
                            String.valueOf((char) Integer.parseInt(m.group(1), 16))));
        }
    }
}
