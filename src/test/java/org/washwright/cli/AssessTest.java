package org.washwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.washwright.generate.Starter;

class AssessTest {

    @TempDir
    private Path folder;

    private String text(String more, String... options) throws IOException {
        Path task = folder.resolve("task.yaml");
        Files.writeString(task, Starter.demoTexts().get("bearing-rings.yaml") + more);
        StringWriter out = new StringWriter();
        List<String> arguments = new ArrayList<>(List.of("assess", "--interpret", "--as-of", "2026-11-25"));
        arguments.addAll(List.of(options));
        arguments.add(task.toString());
        int code =
                CommandLineEntry.commandLine().setOut(new PrintWriter(out)).execute(arguments.toArray(String[]::new));
        assertEquals(ExitCode.OK, code);
        return out.toString();
    }

    @Test
    void the_text_of_an_answer_judges_the_intended_process_before_anything_else() throws IOException {
        String out = text("intended: {process: acid-pickling, rest: not applicable}\n");
        int at = out.indexOf("The intended process");
        assertTrue(at > 0 && at < out.indexOf("Take care"), out);
        assertTrue(out.contains("  Acid pickling does not fit because:"), out);
        assertTrue(out.lines().anyMatch(l -> l.startsWith("  - ") && l.contains("MA-06")), out);
        assertTrue(out.contains("first of those that may clean it: "), out);
        String hot = text("intended: {process: neutral-spray, temperature: 95 °C, rest: not applicable}\n");
        assertTrue(hot.contains("  - temperature 95 °C: keep it "), hot);
        assertTrue(hot.contains("  temperature 95 °C: outside, allowed "), hot);
        String open = text("intended: {process: neutral-spray}\n");
        assertTrue(open.contains("  temperature: not given, allowed "), open);
    }

    @Test
    void the_text_of_a_task_that_names_none_says_nothing_of_it() throws IOException {
        assertFalse(text("").contains("The intended process"));
    }

    @Test
    void the_trace_marks_sources_that_are_cited_from_memory() throws IOException {
        assertTrue(text("", "--trace").contains("ASM5T, Table 1, cited from memory"));
    }
}
