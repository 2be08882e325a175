package org.washwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TemplateTest {

    @TempDir
    private Path folder;

    private record Ran(int code, String out, String err) {}

    @ParameterizedTest
    @ValueSource(strings = {"yaml", "json", "csv", "xlsx"})
    void a_task_in_a_file_of_any_kind_gets_the_same_answer(String ending) {
        String task = "demo-data/tasks/steel-clips.yaml";
        Path file = folder.resolve("clips." + ending);
        assertEquals(0, run("template", "--of", task, file.toString()).code());
        Ran expected = run("assess", "--interpret", "--json", "--as-of", "2026-11-25", task);
        Ran found = run("assess", "--interpret", "--json", "--as-of", "2026-11-25", file.toString());
        assertEquals(0, found.code(), found.err());
        assertEquals(expected.out(), found.out());
    }

    @Test
    void an_empty_template_is_a_task_without_a_title_and_its_file_is_never_written_over() throws Exception {
        Path file = folder.resolve("new.csv");
        assertEquals(0, run("template", file.toString()).code());
        assertTrue(Files.readString(file).startsWith("attribute,value,question,may be"));
        Ran refused = run("assess", "--interpret", file.toString());
        assertEquals(3, refused.code());
        assertTrue(refused.err().contains("no title"), refused.err());
        Ran again = run("template", file.toString());
        assertEquals(74, again.code());
        assertTrue(again.err().contains("exists already"), again.err());
        assertEquals(2, run("template", folder.resolve("new.doc").toString()).code());
    }

    @Test
    void a_table_of_several_tasks_is_left_to_bulk() throws Exception {
        Path file = folder.resolve("two.csv");
        Files.writeString(file, "title\nA\nB\n", StandardCharsets.UTF_8);
        Ran refused = run("assess", "--interpret", file.toString());
        assertEquals(3, refused.code());
        assertTrue(refused.err().contains("bulk"), refused.err());
    }

    private static Ran run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = CommandLineEntry.commandLine()
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(args);
        return new Ran(code, out.toString(), err.toString());
    }
}
