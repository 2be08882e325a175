package org.washwright.taskfile;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.document.Similar;
import org.washwright.task.Group;
import org.washwright.task.Vocabulary;

/**
 * A task in a workbook: a sheet {@code task} with one attribute a row, and a sheet for each list with one entry a row. Rows
 * that begin with {@code #} are remarks. Values are read as they stand; formulas are refused.
 */
final class TaskWorkbook {

    static final String TASK = "task";
    static final String WORDS = "words";
    static final String REMARK = "#";

    private final String name;
    private final Diagnostics diagnostics;
    private final List<TaskCells.Cell> cells = new ArrayList<>();

    private TaskWorkbook(String name, Diagnostics diagnostics) {
        this.name = name;
        this.diagnostics = diagnostics;
    }

    static List<TaskFile.Made> read(String name, byte[] bytes, Vocabulary vocabulary, Diagnostics diagnostics) {
        if (!WorkbookGuard.passes(name, bytes, diagnostics)) {
            return List.of();
        }
        TaskWorkbook workbook = new TaskWorkbook(name, diagnostics);
        try (ReadableWorkbook book =
                new ReadableWorkbook(new ByteArrayInputStream(bytes), new ReadingOptions(true, true))) {
            for (Sheet sheet : book.getSheets().toList()) {
                workbook.sheet(sheet);
            }
        } catch (IOException | RuntimeException e) {
            // The reader of workbooks has no error of its own for what is not made as the standard wants it.
            diagnostics.add(Message.BROKEN_WORKBOOK, Place.ofFile(name), "", String.valueOf(e.getMessage()));
        }
        return diagnostics.hasErrors() ? List.of() : TaskTable.one(workbook.cells, vocabulary, diagnostics);
    }

    private void sheet(Sheet sheet) throws IOException {
        if (sheet.getName().equals(WORDS)) {
            return;
        }
        try (Stream<Row> rows = sheet.openStream()) {
            Optional<Group> list = Group.byKey(sheet.getName()).filter(Group::isList);
            if (list.isPresent()) {
                entries(sheet, list.get(), rows.toList());
            } else if (sheet.getName().equals(TASK)) {
                rows.filter(row -> row.getRowNum() > 1).forEach(row -> attribute(sheet, row));
            } else {
                diagnostics.add(
                        Message.UNKNOWN_FIELD,
                        Place.ofFile(name),
                        sheet.getName(),
                        "the sheets of a task",
                        Similar.advice(sheet.getName(), sheets()));
            }
        }
    }

    private static List<String> sheets() {
        List<String> sheets = new ArrayList<>(List.of(TASK, WORDS));
        Arrays.stream(Group.values()).filter(Group::isList).map(Group::key).forEach(sheets::add);
        return sheets;
    }

    private void attribute(Sheet sheet, Row row) {
        List<String> texts = texts(sheet, row);
        String path = texts.isEmpty() ? "" : texts.get(0).strip();
        if (texts.size() > 1 && !path.startsWith(REMARK) && !texts.get(1).isBlank()) {
            cells.add(new TaskCells.Cell(path, texts.get(1), place(sheet, row, 1)));
        }
    }

    /** A header of attribute names, then an entry a row; blank rows and remarks count for nothing. */
    private void entries(Sheet sheet, Group group, List<Row> rows) {
        List<String> header = new ArrayList<>();
        int entry = 0;
        for (Row row : rows) {
            List<String> texts = texts(sheet, row);
            if (texts.stream().allMatch(String::isBlank) || texts.get(0).startsWith(REMARK)) {
                continue;
            }
            if (header.isEmpty()) {
                texts.forEach(t -> header.add(t.strip()));
                continue;
            }
            for (int i = 0; i < texts.size(); i++) {
                if (!texts.get(i).isBlank()) {
                    String path = group.key() + "/" + entry + "/" + (i < header.size() ? header.get(i) : "");
                    cells.add(new TaskCells.Cell(path, texts.get(i), place(sheet, row, i)));
                }
            }
            entry++;
        }
    }

    private List<String> texts(Sheet sheet, Row row) {
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < row.getCellCount(); i++) {
            texts.add(text(sheet, row, i));
        }
        return texts;
    }

    private String text(Sheet sheet, Row row, int column) {
        Cell cell = row.getCell(column);
        if (cell == null) {
            return "";
        }
        if (cell.getType() == CellType.FORMULA || cell.getFormula() != null) {
            diagnostics.add(Message.CELL_FORMULA, place(sheet, row, column), "=" + cell.getFormula());
            return "";
        }
        return switch (cell.getType()) {
            case ERROR -> {
                diagnostics.add(Message.CELL_FAULT, place(sheet, row, column), String.valueOf(cell.getRawValue()));
                yield "";
            }
            case BOOLEAN -> cell.asBoolean() ? "yes" : "no";
            case NUMBER ->
                isDate(cell)
                        ? cell.asDate().toLocalDate().toString()
                        : cell.asNumber().toPlainString();
            default -> String.valueOf(cell.getValue() == null ? "" : cell.getValue());
        };
    }

    /** A day is kept as a number, and only the way it is shown tells that it is one. */
    private static boolean isDate(Cell cell) {
        String shown = String.valueOf(cell.getDataFormatString()).toLowerCase(Locale.ROOT);
        return shown.contains("yy") || shown.contains("d/") || shown.contains("d-");
    }

    private Place place(Sheet sheet, Row row, int column) {
        String letters = column < 26
                ? String.valueOf((char) ('A' + column))
                : "" + (char) ('A' + column / 26 - 1) + (char) ('A' + column % 26);
        return Place.ofFile(name + ", sheet " + sheet.getName() + ", cell " + letters + row.getRowNum());
    }
}
