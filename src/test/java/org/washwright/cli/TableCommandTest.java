package org.washwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TableCommandTest {
    private static final String TABLE = "rules/starter/tables/further-soils.csv";

    @TempDir
    private Path folder;

    private final StringWriter err = new StringWriter();

    private int run(Object... args) {
        String[] texts = new String[args.length];
        for (int i = 0; i < args.length; i++) {
            texts[i] = args[i].toString();
        }
        return CommandLineEntry.commandLine()
                .setOut(new PrintWriter(new StringWriter()))
                .setErr(new PrintWriter(err, true))
                .execute(texts);
    }

    @Test
    void a_table_goes_to_a_workbook_and_back_onto_its_file_byte_for_byte() throws Exception {
        Path book = folder.resolve("t.xlsx");
        Path back = folder.resolve("t.csv");
        assertEquals(ExitCode.OK, run("table", TABLE, "--to", book), err.toString());
        assertEquals(ExitCode.OK, run("table", book, "--onto", TABLE, "--to", back), err.toString());
        assertArrayEquals(Files.readAllBytes(Path.of(TABLE)), Files.readAllBytes(back));
    }

    @Test
    void nothing_is_written_over_and_what_is_no_table_is_refused() throws Exception {
        Path there = Files.writeString(folder.resolve("there.xlsx"), "x");
        assertEquals(ExitCode.CANNOT_WRITE, run("table", TABLE, "--to", there));
        assertEquals("x", Files.readString(there));
        assertEquals(ExitCode.UNREADABLE_INPUT, run("table", there, "--to", folder.resolve("new.csv")));
        assertTrue(err.toString().contains("there.xlsx"), err.toString());
        assertTrue(Files.notExists(folder.resolve("new.csv")));
        assertEquals(ExitCode.USAGE, run("table", TABLE, "--to", folder.resolve("new.csv")));
    }
}
