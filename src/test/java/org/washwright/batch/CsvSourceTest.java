package org.washwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.generate.Starter;
import org.washwright.task.CleaningTask;
import org.washwright.task.TaskReader;

class CsvSourceTest {

    private static final String NAME = "tasks.csv";

    @Test
    void a_row_is_the_task_that_a_file_would_hold() throws Exception {
        String table = """
                title,part/mass,/part/rate,materials/0/substrate,materials/0/hardness,soils/open,soils/0/kind,\
                soils/1/kind,permittedSolvents,features/open
                "Clips, small",12 g,1200 1/h,carbon-steel,>= 30 HRC,yes,"[drawing-fat, cutting-oil]",,[hydrocarbon],no
                """;
        String yaml = """
                title: Clips, small
                part: {mass: 12 g, rate: 1200 1/h}
                materials: [{substrate: carbon-steel, hardness: '>= 30 HRC'}]
                soils: {open: yes, list: [{kind: [drawing-fat, cutting-oil]}]}
                permittedSolvents: [hydrocarbon]
                features: []
                """;
        assertEquals(Starter.task(yaml), task(table, 0));
    }

    @Test
    void entries_that_a_row_leaves_out_are_not_there_and_an_unsaid_list_is_open() throws Exception {
        String table = "title,soils/0/kind,soils/1/kind,materials/0/substrate\na,,cutting-oil,\n";
        assertEquals(Starter.task("title: a\nsoils: [{kind: cutting-oil}]"), task(table, 0));
    }

    @Test
    void quoted_line_breaks_belong_to_the_cell_and_rows_keep_their_physical_line() throws Exception {
        String table = "\uFEFFtitle,notes\r\n\"a \"\"b\"\"\",\"one\r\ntwo\nthree\"\r\n\r\nlast,\r\n";
        List<InputRecord> rows = rows(table);
        assertEquals(List.of(2L, 6L), rows.stream().map(InputRecord::line).toList());
        assertEquals("a \"b\"", task(table, 0).title());
        assertEquals("one\r\ntwo\nthree", task(table, 0).notes());
        assertEquals("last", task(table, 1).title());
    }

    @Test
    void every_error_of_a_header_is_told_at_once_with_the_nearest_name() throws IOException {
        BatchRefusal refusal = assertThrows(
                BatchRefusal.class,
                () -> rows("title,part/masss,title,materials/0,materials/0/substrate,soils/99/kind,\n"));
        assertEquals(
                List.of(
                        Message.UNKNOWN_FIELD,
                        Message.DUPLICATE_KEY,
                        Message.COLUMN_WITHIN,
                        Message.OUT_OF_RANGE,
                        Message.UNKNOWN_FIELD),
                refusal.diagnostics().stream().map(Diagnostic::message).toList());
        assertEquals("did you mean \"part/mass\"?", refusal.diagnostics().get(0).advice());
        assertEquals(2, refusal.diagnostics().get(0).place().column());
    }

    @Test
    void a_table_without_titles_or_without_a_header_is_refused_at_once() {
        assertEquals(
                Message.MISSING_FIELD,
                assertThrows(BatchRefusal.class, () -> rows("part/mass\n12 g\n"))
                        .diagnostics()
                        .get(0)
                        .message());
        assertThrows(BatchRefusal.class, () -> rows(""));
    }

    @Test
    void too_many_and_too_few_cells_are_counted() throws Exception {
        assertEquals(Message.CELL_COUNT, refused("title,part/mass\na\n").message());
        assertTrue(refused("title,part/mass\na,b,c\n").text().contains("3 cells, the header 2"));
    }

    @Test
    void a_quote_left_open_and_text_behind_a_quote_are_told() throws Exception {
        assertEquals(Message.CELL_UNENDED, refused("title\n\"a\nb\n").message());
        assertEquals(Message.CELL_QUOTE, refused("title\n\"a\"b\n").message());
    }

    @Test
    void bytes_that_are_no_text_refuse_their_row_alone() throws Exception {
        byte[] table = "title\nx\u00e4\ngood\n".getBytes(StandardCharsets.ISO_8859_1);
        try (CsvSource source = open(table)) {
            Diagnostics diagnostics = new Diagnostics();
            assertTrue(source.document(source.next().orElseThrow(), diagnostics).isEmpty());
            assertEquals(Message.NOT_UTF8, diagnostics.all().get(0).message());
            assertTrue(source.document(source.next().orElseThrow(), new Diagnostics())
                    .isPresent());
        }
    }

    @Test
    void a_list_that_does_not_end_is_told_at_its_cell() throws Exception {
        Diagnostic found = refused("title,soils/0/kind\na,\"[cutting-oil, \"\n");
        assertEquals(Message.BROKEN_YAML, found.message());
        assertEquals("tasks.csv:2:2 (/soils/0/kind)", found.place().toString());
    }

    @Test
    void a_value_that_is_wrong_is_told_at_line_and_column_of_its_cell() throws Exception {
        byte[] table = "title,soils/0/kind,soils/1/kind\n\"a\nb\",,nonsense\n".getBytes(StandardCharsets.UTF_8);
        try (CsvSource source = open(table)) {
            InputRecord row = source.next().orElseThrow();
            Diagnostics diagnostics = new Diagnostics();
            byte[] document = source.document(row, diagnostics).orElseThrow();
            TaskReader.read(NAME, document, Starter.edition(), diagnostics);
            Diagnostic placed = source.placed(diagnostics.all().get(0), row);
            assertEquals(2, placed.place().line());
            assertEquals(3, placed.place().column());
        }
    }

    private static Diagnostic refused(String table) throws Exception {
        try (CsvSource source = open(table.getBytes(StandardCharsets.UTF_8))) {
            Diagnostics diagnostics = new Diagnostics();
            assertTrue(source.document(source.next().orElseThrow(), diagnostics).isEmpty());
            return diagnostics.all().get(0);
        }
    }

    private static CleaningTask task(String table, int row) throws Exception {
        try (CsvSource source = open(table.getBytes(StandardCharsets.UTF_8))) {
            for (int i = 0; i < row; i++) {
                source.next();
            }
            Diagnostics diagnostics = new Diagnostics();
            byte[] document =
                    source.document(source.next().orElseThrow(), diagnostics).orElseThrow();
            return TaskReader.read(NAME, document, Starter.edition(), diagnostics)
                    .orElseThrow(() -> new AssertionError(diagnostics.all().toString()));
        }
    }

    private static List<InputRecord> rows(String table) throws Exception {
        List<InputRecord> rows = new ArrayList<>();
        try (CsvSource source = open(table.getBytes(StandardCharsets.UTF_8))) {
            for (Optional<InputRecord> r = source.next(); r.isPresent(); r = source.next()) {
                rows.add(r.get());
            }
        }
        return rows;
    }

    private static CsvSource open(byte[] table) throws IOException, BatchRefusal {
        return new CsvSource(new ByteArrayInputStream(table), NAME, table.length, Starter.edition());
    }
}
