package org.washwright.taskfile;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.dhatim.fastexcel.DataValidationErrorStyle;
import org.dhatim.fastexcel.Range;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.washwright.task.FieldType;
import org.washwright.task.Group;

/** Writes a task, or the template of one, as a workbook; cells for terms offer the words of the edition. */
final class WorkbookWriter {

    private static final String PROGRAM = "Washwright";
    private static final String SHADE = "E3F0F2";
    private static final String SOFT = "4D6168";
    private static final int HEAD = 0;

    private final TaskForms forms;
    private final Map<String, Range> words = new LinkedHashMap<>();

    WorkbookWriter(TaskForms forms) {
        this.forms = forms;
    }

    /** The bytes of a workbook with these cells, by path. */
    byte[] write(Map<String, String> cells) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(out, PROGRAM, "1.0")) {
            Worksheet task = book.newWorksheet(TaskWorkbook.TASK);
            Map<Group, Worksheet> lists = new LinkedHashMap<>();
            for (Group group : Group.values()) {
                if (group.isList()) {
                    lists.put(group, book.newWorksheet(group.key()));
                }
            }
            words(book.newWorksheet(TaskWorkbook.WORDS));
            task(task, cells);
            lists.forEach((group, sheet) -> list(sheet, group, cells));
            book.finish();
        } catch (IOException e) {
            throw new UncheckedIOException("a workbook in memory", e);
        }
        return out.toByteArray();
    }

    private void words(Worksheet sheet) {
        int column = 0;
        for (Map.Entry<String, List<String>> kind : forms.words().entrySet()) {
            head(sheet, HEAD, column, kind.getKey());
            for (int i = 0; i < kind.getValue().size(); i++) {
                sheet.value(i + 1, column, kind.getValue().get(i));
            }
            sheet.width(column, 22);
            if (!kind.getValue().isEmpty()) {
                words.put(kind.getKey(), sheet.range(1, column, kind.getValue().size(), column));
            }
            column++;
        }
    }

    private void task(Worksheet sheet, Map<String, String> cells) {
        Map<String, String> left = new LinkedHashMap<>(cells);
        List<String> header = List.of("attribute", "value", "question", "may be");
        for (int i = 0; i < header.size(); i++) {
            head(sheet, HEAD, i, header.get(i));
        }
        int row = 1;
        for (TaskForms.Line line : forms.single()) {
            sheet.value(row, 0, line.path());
            value(sheet, row, 1, line.path(), left.remove(line.path()));
            remark(sheet, row, 2, line.question());
            remark(sheet, row, 3, line.mayBe());
            if (line.type().orElse(null) instanceof FieldType.TermType type) {
                offer(sheet.range(row, 1, row, 1), type);
            }
            row++;
        }
        // What no line of the template asks: lists as a whole, and texts that only files hold.
        for (Map.Entry<String, String> cell : left.entrySet()) {
            if (TaskPaths.index(cell.getKey()) < 0) {
                sheet.value(row, 0, cell.getKey());
                value(sheet, row++, 1, cell.getKey(), cell.getValue());
            }
        }
        sheet.width(0, 30);
        sheet.width(1, 36);
        sheet.width(2, 48);
        sheet.width(3, 60);
        sheet.freezePane(2, 1);
    }

    private void list(Worksheet sheet, Group group, Map<String, String> cells) {
        List<TaskForms.Line> lines = forms.entry(group, "");
        for (int i = 0; i < lines.size(); i++) {
            head(sheet, HEAD, i, lines.get(i).path());
            remark(
                    sheet,
                    1,
                    i,
                    (i == 0 ? TaskWorkbook.REMARK + " " : "") + lines.get(i).question());
            remark(
                    sheet,
                    2,
                    i,
                    (i == 0 ? TaskWorkbook.REMARK + " " : "") + lines.get(i).mayBe());
            sheet.style(1, i)
                    .wrapText(true)
                    .fontColor(SOFT)
                    .italic()
                    .verticalAlignment("top")
                    .set();
            sheet.width(i, 26);
            if (lines.get(i).type().orElse(null) instanceof FieldType.TermType type) {
                offer(sheet.range(3, i, 2 + group.cap(), i), type);
            }
        }
        List<String> names =
                new ArrayList<>(lines.stream().map(TaskForms.Line::path).toList());
        cells.forEach((path, text) -> {
            int entry = TaskPaths.index(path);
            if (entry >= 0 && path.startsWith(group.key() + "/")) {
                String[] steps = path.split("/");
                // The short form of an entry is its first attribute.
                int column = steps.length == 2 ? 0 : names.indexOf(steps[2]);
                value(sheet, 3 + entry, column, path, text);
            }
        });
        sheet.freezePane(0, 3);
    }

    private static void value(Worksheet sheet, int row, int column, String path, String text) {
        if (text != null) {
            sheet.value(row, column, TaskPaths.TEXTS.contains(path) ? TaskCells.guarded(text) : text);
        }
        sheet.style(row, column).wrapText(true).verticalAlignment("top").set();
    }

    private static void head(Worksheet sheet, int row, int column, String text) {
        sheet.value(row, column, text);
        sheet.style(row, column).bold().fillColor(SHADE).set();
    }

    private static void remark(Worksheet sheet, int row, int column, String text) {
        sheet.value(row, column, text);
        sheet.style(row, column)
                .fontColor(SOFT)
                .wrapText(true)
                .verticalAlignment("top")
                .set();
    }

    /** Offers the words; others may be written too, such as several words in brackets. */
    private void offer(Range range, FieldType.TermType type) {
        Range list = words.get(type.kind());
        if (list != null) {
            range.validateWithList(list)
                    .allowBlank(true)
                    .errorStyle(DataValidationErrorStyle.INFORMATION)
                    .showErrorMessage(false);
        }
    }
}
