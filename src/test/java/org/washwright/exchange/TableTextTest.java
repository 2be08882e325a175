package org.washwright.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Texts written out by hand say what must come of them; the reader of rows that rules are read with is the measure for the rest. */
class TableTextTest {

    private static final String TABLE = """
            title,What suits what
            basis,common practice
            then,support

            id,Soil.kind,target,reason
            A-1,oil,solvent,"Solvent takes oil up."

            A-2 , "oil" ,alkaline,Plain
            A-3,wax,,"He said ""warm"", then hot."
            """;

    private static TableDraft with(TableDraft draft, int row, int cell, String text) {
        List<TableDraft.Row> rows = new ArrayList<>(draft.rows());
        List<String> cells = new ArrayList<>(rows.get(row).cells());
        cells.set(cell, text);
        rows.set(row, new TableDraft.Row(rows.get(row).from(), cells));
        return new TableDraft(draft.head(), draft.columns(), rows);
    }

    static Stream<Path> starterTables() throws IOException {
        try (Stream<Path> list = Files.list(Path.of("rules/starter/tables"))) {
            return list.sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("starterTables")
    void a_real_table_that_nobody_changed_keeps_every_byte(Path path) throws IOException {
        String text = Files.readString(path);
        TableText table = TableText.of(text);
        assertEquals(text, table.text());
        assertEquals(text, TableDraft.of(table).in(table).text());
        assertEquals(text, TableDraft.of(table).onto(table).in(table).text());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "\n",
                "a",
                "a,b",
                "\n\n",
                "then,ask\n\nid,reason",
                "then,ask\r\n\r\nid,reason\r\nQ-1,\"a\r\nb\"\r\n",
                "then,ask\n\nid,reason\n\"never closed",
                "then,ask\n\nid,reason\n\"closed\" late,x\n,,\n  \n",
                "x\r",
                "then,ask\n,,,\nid,reason,\n1,2,3,4,5\n"
            })
    void any_text_at_all_comes_back_as_it_was(String text) {
        TableText table = TableText.of(text);
        assertEquals(text, table.text());
        assertEquals(
                Csv.rows(text).stream()
                        .filter(r -> !r.isBlank())
                        .map(r -> r.cells().stream().map(String::strip).toList())
                        .toList(),
                Stream.of(
                                table.head().stream(),
                                Stream.of(table.header()).filter(h -> !h.cells().isEmpty()),
                                table.rows().stream())
                        .flatMap(s -> s)
                        .map(l -> l.cells().stream().map(TableText.Cell::text).toList())
                        .toList());
    }

    @Test
    void a_changed_cell_changes_alone_and_stays_in_quotes() {
        TableText table = TableText.of(TABLE);
        assertEquals(
                TABLE.replace("\"oil\" ", "\"soot\""),
                with(TableDraft.of(table), 1, 1, "soot").in(table).text().replace("A-2 ,\"soot\"", "A-2 , \"soot\""));
        assertEquals(
                TABLE.replace("\"Solvent takes oil up.\"", "\"Takes, lifts\""),
                with(TableDraft.of(table), 0, 3, "Takes, lifts").in(table).text());
        assertEquals(
                TABLE.replace("alkaline,Plain", "alkaline,\"A \"\"quote\"\"\""),
                with(TableDraft.of(table), 1, 3, "A \"quote\"").in(table).text());
    }

    @Test
    void rows_and_columns_come_go_and_move_with_their_bytes() {
        TableText table = TableText.of(TABLE);
        TableDraft draft = TableDraft.of(table);
        List<TableDraft.Row> rows = new ArrayList<>(draft.rows());
        rows.add(1, new TableDraft.Row(-1, List.of("A-4", "soot", "blasting", "Grain takes it off.")));
        rows.add(new TableDraft.Row(-1, List.of("", "", "", "")));
        assertEquals(
                TABLE.replace("\nA-2 ,", "A-4,soot,blasting,\"Grain takes it off.\"\n\nA-2 ,")
                        .replace("up.\"\n\nA-4", "up.\"\nA-4"),
                new TableDraft(draft.head(), draft.columns(), rows).in(table).text());
        List<TableDraft.Row> two = List.of(draft.rows().get(2), draft.rows().get(0));
        assertEquals(
                TABLE.substring(0, TABLE.indexOf("A-1"))
                        + "A-3,wax,,\"He said \"\"warm\"\", then hot.\"\nA-1,oil,solvent,\"Solvent takes oil up.\"\n",
                new TableDraft(draft.head(), draft.columns(), two).in(table).text());
        List<TableDraft.Column> columns = List.of(
                new TableDraft.Column(0, "id"),
                new TableDraft.Column(-1, "Soil.state"),
                new TableDraft.Column(3, "reason"));
        TableDraft narrow = new TableDraft(
                draft.head(),
                columns,
                List.of(new TableDraft.Row(0, List.of("A-1", "fluid", "Solvent takes oil up."))));
        assertEquals(
                TABLE.substring(0, TABLE.indexOf("id,Soil"))
                        + "id,Soil.state,reason\nA-1,fluid,\"Solvent takes oil up.\"\n",
                narrow.in(table).text());
    }

    @Test
    void words_of_the_head_change_come_and_go() {
        TableText table = TableText.of(TABLE);
        TableDraft draft = TableDraft.of(table);
        Map<String, String> head = new LinkedHashMap<>(draft.head());
        head.put("title", "What, then, suits");
        head.put("basis", "");
        head.put("note", "seen");
        assertEquals(
                TABLE.replace("title,What suits what\nbasis,common practice\n", "title,\"What, then, suits\"\n")
                        .replace("then,support\n", "then,support\nnote,seen\n"),
                new TableDraft(head, draft.columns(), draft.rows()).in(table).text());
    }

    @Test
    void an_empty_file_becomes_a_table() {
        TableText none = TableText.of("");
        TableDraft draft = new TableDraft(
                Map.of("then", "ask"),
                List.of(new TableDraft.Column(-1, "id"), new TableDraft.Column(-1, "reason")),
                List.of(new TableDraft.Row(-1, List.of("Q-1", "Why"))));
        assertEquals("then,ask\n\nid,reason\nQ-1,Why\n", draft.in(none).text());
    }

    @Test
    void random_changes_say_what_was_meant_and_touch_no_other_row() {
        Random random = new Random(7);
        String[] texts = {"", "x", "a,b", "q\"q", "=1+1", " ", "0123", "> 3", "a|b", "ünïcode", "-5", "\"", "'"};
        for (int i = 0; i < 500; i++) {
            TableText table = TableText.of(TABLE);
            TableDraft draft = TableDraft.of(table);
            int row = random.nextInt(3);
            int cell = random.nextInt(4);
            String text = texts[random.nextInt(texts.length)];
            TableText changed =
                    TableText.of(with(draft, row, cell, text).in(table).text());
            assertEquals(text.strip(), changed.rows().get(row).text(cell));
            for (int other = 0; other < 3; other++) {
                if (other != row) {
                    assertEquals(
                            table.rows().get(other).cells(),
                            changed.rows().get(other).cells());
                }
            }
            assertEquals(
                    TABLE,
                    with(
                                    TableDraft.of(changed),
                                    row,
                                    cell,
                                    table.rows().get(row).text(cell))
                            .in(table)
                            .text());
        }
    }
}
