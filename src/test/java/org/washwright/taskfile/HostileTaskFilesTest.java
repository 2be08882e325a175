package org.washwright.taskfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.generate.Starter;

/** Files made to harm or to mislead are refused with their place, and nothing of them is taken. */
class HostileTaskFilesTest {

    private interface Sheets {
        void fill(Workbook book, Worksheet task);
    }

    @Test
    void a_formula_is_refused_at_its_cell() {
        List<Diagnostic> found = refused(book((book, task) -> {
            task.value(1, 0, "title");
            task.formula(1, 1, "HYPERLINK(\"http://example.invalid\",\"x\")");
            Worksheet soils = book.newWorksheet("soils");
            soils.value(0, 0, "kind");
            soils.formula(1, 0, "1+1");
        }));
        assertEquals(
                List.of("t.xlsx, sheet soils, cell A2", "t.xlsx, sheet task, cell B2"),
                found.stream().map(d -> d.place().file()).toList());
        assertEquals(
                List.of(Message.CELL_FORMULA, Message.CELL_FORMULA),
                found.stream().map(Diagnostic::message).toList());
    }

    @Test
    void text_that_a_program_for_tables_would_run_is_refused_in_plain_tables_too() {
        String lying = "attribute,value\ntitle,=1+1\n";
        List<Diagnostic> found = refused(lying.getBytes(StandardCharsets.UTF_8), TaskFormat.CSV);
        assertEquals(Message.CELL_FORMULA, found.get(0).message());
        assertEquals("t.csv:2:2", found.get(0).place().toString());
        String upright = "title,part/mass\nA,=cmd|' /C calc'!A0\n";
        assertEquals(
                Message.CELL_FORMULA,
                refused(upright.getBytes(StandardCharsets.UTF_8), TaskFormat.CSV)
                        .get(0)
                        .message());
    }

    @Test
    void every_wrong_value_is_told_at_once_with_sheet_and_cell() {
        List<Diagnostic> found = refused(book((book, task) -> {
            task.value(1, 0, "title");
            task.value(1, 1, "Rings");
            task.value(2, 0, "part/mass");
            task.value(2, 1, 12);
            task.value(3, 0, "part/waite");
            task.value(3, 1, "3 kg");
            Worksheet materials = book.newWorksheet("materials");
            materials.value(0, 0, "substrate");
            materials.value(0, 1, "hardness");
            materials.value(2, 0, "unobtainium");
            materials.value(2, 1, "62");
        }));
        assertEquals(
                List.of("t.xlsx, sheet task, cell B4"),
                found.stream().map(d -> d.place().file()).toList());
        found = refused(book((book, task) -> {
            task.value(1, 0, "title");
            task.value(1, 1, "Rings");
            task.value(2, 0, "part/mass");
            task.value(2, 1, 12);
            Worksheet materials = book.newWorksheet("materials");
            materials.value(0, 0, "substrate");
            materials.value(0, 1, "hardness");
            materials.value(2, 0, "unobtainium");
            materials.value(2, 1, "62");
        }));
        assertEquals(
                Map.of(
                        "t.xlsx, sheet materials, cell A3", Message.UNKNOWN_TERM,
                        "t.xlsx, sheet materials, cell B3", Message.MISSING_UNIT,
                        "t.xlsx, sheet task, cell B3", Message.MISSING_UNIT),
                found.stream()
                        .collect(
                                java.util.stream.Collectors.toMap(d -> d.place().file(), Diagnostic::message)));
    }

    @Test
    void a_workbook_that_unfolds_without_end_is_not_unfolded() throws IOException {
        byte[] zeros = new byte[WorkbookGuard.MOST_BYTES + 1];
        byte[] bomb = with(sound(), "xl/media/image1.bin", zeros);
        assertTrue(bomb.length < 100_000, "a bomb is small: " + bomb.length);
        assertEquals(Message.TOO_LARGE, refused(bomb).get(0).message());
    }

    @Test
    void rows_cells_and_columns_have_bounds() {
        assertEquals(
                Message.TOO_LARGE,
                refused(book((book, task) -> IntStream.rangeClosed(0, WorkbookGuard.MOST_ROWS)
                                .forEach(i -> task.value(i, 0, "title"))))
                        .get(0)
                        .message());
        assertEquals(
                Message.TOO_LARGE,
                refused(book((book, task) -> IntStream.rangeClosed(0, WorkbookGuard.MOST_CELLS)
                                .forEach(i -> task.value(i / 50, i % 50, "x"))))
                        .get(0)
                        .message());
        List<Diagnostic> far = refused(book((book, task) -> task.value(0, 16_000, "x")));
        assertEquals(Message.TOO_LARGE, far.get(0).message());
        byte[] beyond = edited(sound(), "xl/worksheets/sheet1.xml", x -> x.replace("r=\"A1\"", "r=\"ZZZZZZ1\""));
        assertEquals(Message.TOO_LARGE, refused(beyond).get(0).message());
    }

    @Test
    void declared_entities_are_refused() {
        byte[] book = edited(
                sound(),
                "xl/worksheets/sheet1.xml",
                x -> x.replaceFirst(
                        "(<\\?xml[^>]*>)?", "$1<!DOCTYPE x [<!ENTITY a SYSTEM \"file:///etc/hostname\">]>"));
        assertEquals(Message.BROKEN_WORKBOOK, refused(book).get(0).message());
    }

    @Test
    void what_is_no_workbook_is_told_so() {
        assertEquals(
                Message.BROKEN_WORKBOOK,
                refused("title: x".getBytes(StandardCharsets.UTF_8), TaskFormat.XLSX)
                        .get(0)
                        .message());
        byte[] sound = sound();
        for (int cut = 0; cut < sound.length; cut += 97) {
            refused(Arrays.copyOf(sound, cut));
        }
        assertEquals(
                Message.UNKNOWN_FIELD,
                refused(book((book, task) -> book.newWorksheet("soil").value(0, 0, "kind")))
                        .get(0)
                        .message());
        assertEquals(Message.TOO_LARGE, refused(new byte[2_000_000]).get(0).message());
        assertEquals(
                Message.UNKNOWN_FIELD,
                refused(edited(sound, "xl/worksheets/sheet1.xml", x -> x.replace("<v>1<", "<v>99999<")))
                        .get(0)
                        .message());
    }

    private static byte[] sound() {
        return book((book, task) -> {
            task.value(0, 0, "attribute");
            task.value(1, 0, "title");
            task.value(1, 1, "Rings");
        });
    }

    private static byte[] book(Sheets sheets) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(out, "test", "1.0")) {
            sheets.fill(book, book.newWorksheet("task"));
            book.finish();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return out.toByteArray();
    }

    private static byte[] edited(byte[] book, String part, UnaryOperator<String> edit) {
        try (ZipFile zip = open(book)) {
            byte[] old = zip.getInputStream(zip.getEntry(part)).readAllBytes();
            String text = new String(old, StandardCharsets.UTF_8);
            String changed = edit.apply(text);
            assertTrue(!changed.equals(text), "the part was not changed: " + text);
            return with(book, part, changed.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    /** The same archive with one part put in or replaced. */
    private static byte[] with(byte[] book, String name, byte[] bytes) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipFile zip = open(book);
                java.util.zip.ZipOutputStream made = new java.util.zip.ZipOutputStream(out)) {
            for (ZipArchiveEntry entry : java.util.Collections.list(zip.getEntries())) {
                if (!entry.getName().equals(name)) {
                    made.putNextEntry(new java.util.zip.ZipEntry(entry.getName()));
                    made.write(zip.getInputStream(entry).readAllBytes());
                }
            }
            made.putNextEntry(new java.util.zip.ZipEntry(name));
            made.write(bytes);
        }
        return new ByteArrayInputStream(out.toByteArray()).readAllBytes();
    }

    private static ZipFile open(byte[] book) throws IOException {
        return ZipFile.builder()
                .setSeekableByteChannel(new SeekableInMemoryByteChannel(book))
                .get();
    }

    private static List<Diagnostic> refused(byte[] file) {
        return refused(file, TaskFormat.XLSX);
    }

    private static List<Diagnostic> refused(byte[] file, TaskFormat format) {
        Diagnostics diagnostics = new Diagnostics();
        List<TaskFile.Read> tasks = TaskFile.read("t." + format.ending(), file, format, Starter.edition(), diagnostics);
        assertEquals(List.of(), tasks);
        assertTrue(diagnostics.hasErrors());
        return diagnostics.all();
    }
}
