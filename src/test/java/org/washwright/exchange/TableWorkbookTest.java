package org.washwright.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.apache.commons.compress.utils.SeekableInMemoryByteChannel;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;

/** The cells of the text before are the measure for the cells of the text after; workbooks that are refused are made by hand. */
class TableWorkbookTest {

    private static Optional<String> read(byte[] workbook, Diagnostics diagnostics) {
        return TableWorkbook.read("t.xlsx", workbook, diagnostics);
    }

    private static String back(String text) {
        Diagnostics diagnostics = new Diagnostics();
        Optional<String> back = read(TableWorkbook.write(text), diagnostics);
        assertTrue(back.isPresent(), () -> diagnostics.all().toString());
        return back.get();
    }

    private static List<List<String>> cells(String text) {
        List<List<String>> out = new ArrayList<>();
        Csv.rows(text).forEach(row -> {
            List<String> cells = new ArrayList<>(row.cells());
            while (!cells.isEmpty() && cells.get(cells.size() - 1).isEmpty()) {
                cells.remove(cells.size() - 1);
            }
            out.add(cells);
        });
        while (!out.isEmpty() && out.get(out.size() - 1).isEmpty()) {
            out.remove(out.size() - 1);
        }
        return out;
    }

    @ParameterizedTest
    @MethodSource("org.washwright.exchange.TableTextTest#starterTables")
    void a_real_table_comes_back_from_a_workbook_byte_for_byte_when_put_onto_its_file(Path path) throws IOException {
        String text = Files.readString(path);
        String back = back(text);
        assertEquals(cells(text), cells(back));
        TableText table = TableText.of(text);
        assertEquals(
                text, TableDraft.of(TableText.of(back)).onto(table).in(table).text());
    }

    @Test
    void generated_tables_lose_nothing_whatever_their_cells_look_like() {
        String[] texts = {
            "",
            "0123",
            "1e5",
            "1-2",
            "2026-01-01",
            "=1+1",
            "+1",
            "-1",
            "@SUM(A1)",
            "a,b",
            "say \"x\"",
            "two\nlines",
            " lead",
            "trail ",
            "true",
            "yes",
            "#REF!",
            "µm²",
            "😀",
            "_x0041_",
            "_x",
            "a\r\nb",
            "'quoted",
            "<b>&amp;</b>",
            "x".repeat(3000),
            "> 3",
            "a|b",
            "\t"
        };
        Random random = new Random(11);
        for (int i = 0; i < 150; i++) {
            StringBuilder text = new StringBuilder();
            int rows = 1 + random.nextInt(6);
            for (int r = 0; r < rows; r++) {
                List<String> row = new ArrayList<>();
                for (int c = 0; c <= random.nextInt(5); c++) {
                    row.add('"' + texts[random.nextInt(texts.length)].replace("\"", "\"\"") + '"');
                }
                text.append(String.join(",", row)).append('\n');
            }
            assertEquals(cells(text.toString()), cells(back(text.toString())));
        }
    }

    private static byte[] workbook(Consumer<Worksheet> fill) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(out, "test", "1.0")) {
            fill.accept(book.newWorksheet("any"));
            book.finish();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static Diagnostic refused(byte[] workbook) {
        Diagnostics diagnostics = new Diagnostics();
        assertEquals(Optional.empty(), read(workbook, diagnostics));
        return diagnostics.all().get(0);
    }

    private static void assertRefused(String code, String place, byte[] workbook) {
        Diagnostic found = refused(workbook);
        assertEquals(code, found.message().code());
        assertTrue(found.place().file().endsWith(place), found.place().file());
    }

    @Test
    void formulas_dates_merged_cells_and_links_are_refused_with_the_cell() {
        assertRefused("cell-formula", "cell B2", workbook(s -> s.formula(1, 1, "1+1")));
        assertRefused("cell-date", "cell A3", workbook(s -> {
            s.value(2, 0, LocalDate.of(2026, 1, 2));
            s.style(2, 0).format("yyyy-mm-dd").set();
        }));
        assertRefused("workbook-more", "cell B2", workbook(s -> {
            s.value(1, 1, "x");
            s.range(1, 1, 2, 2).merge();
        }));
        assertRefused(
                "workbook-more",
                "cell C1",
                workbook(s -> s.hyperlink(0, 2, new org.dhatim.fastexcel.HyperLink("https://example.org"))));
    }

    @Test
    void numbers_and_flags_of_a_spreadsheet_are_read_as_one_would_write_them() {
        byte[] workbook = workbook(s -> {
            s.value(0, 0, 3);
            s.value(0, 1, 0.25);
            s.value(0, 2, true);
        });
        assertEquals(Optional.of("3,0.25,yes\n"), read(workbook, new Diagnostics()));
    }

    private static byte[] changed(byte[] workbook, Consumer<Map<String, byte[]>> change) throws IOException {
        Map<String, byte[]> parts = new TreeMap<>();
        try (ZipFile in = ZipFile.builder()
                .setSeekableByteChannel(new SeekableInMemoryByteChannel(workbook))
                .get()) {
            for (ZipArchiveEntry e : Collections.list(in.getEntries())) {
                parts.put(e.getName(), in.getInputStream(e).readAllBytes());
            }
        }
        change.accept(parts);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
                zip.closeEntry();
            }
        }
        return out.toByteArray();
    }

    @Test
    void macros_outside_links_and_hidden_sheets_are_refused() throws IOException {
        byte[] plain = TableWorkbook.write("then,ask\n\nid,reason\n");
        assertRefused("workbook-more", "t.xlsx", changed(plain, p -> p.put("xl/vbaProject.bin", new byte[] {1})));
        assertRefused(
                "workbook-more",
                "t.xlsx",
                changed(
                        plain,
                        p -> p.put("xl/externalLinks/externalLink1.xml", "<x/>".getBytes(StandardCharsets.UTF_8))));
        assertRefused(
                "workbook-more",
                "t.xlsx",
                changed(
                        plain,
                        p -> p.computeIfPresent(
                                "xl/workbook.xml",
                                (k, v) -> new String(v, StandardCharsets.UTF_8)
                                        .replace("<sheet ", "<sheet state=\"hidden\" ")
                                        .getBytes(StandardCharsets.UTF_8))));
    }

    @Test
    void a_zip_bomb_a_torn_file_and_text_that_declares_entities_are_refused() throws IOException {
        byte[] plain = TableWorkbook.write("then,ask\n");
        assertRefused("too-large", "t.xlsx", changed(plain, p -> p.put("xl/media/a.bin", new byte[30_000_000])));
        assertEquals(
                "broken-workbook",
                refused(new byte[] {'P', 'K', 3, 4, 0}).message().code());
        assertEquals(
                "broken-workbook",
                refused("id,reason\n".getBytes(StandardCharsets.UTF_8))
                        .message()
                        .code());
        assertRefused(
                "broken-workbook",
                "t.xlsx",
                changed(
                        plain,
                        p -> p.put(
                                "xl/worksheets/sheet1.xml",
                                "<!DOCTYPE x [<!ENTITY a \"b\">]><worksheet>&a;</worksheet>"
                                        .getBytes(StandardCharsets.UTF_8))));
        assertRefused("too-large", "t.xlsx", workbook(s -> {
            for (int r = 0; r < 2_500; r++) {
                s.value(r, 0, "x");
            }
        }));
    }
}
