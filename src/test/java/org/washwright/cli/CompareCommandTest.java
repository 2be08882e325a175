package org.washwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The two commands, and what the docs show of them. */
class CompareCommandTest {

    private static final String CLIPS = "demo-data/tasks/steel-clips.yaml";
    private static final String RINGS = "demo-data/tasks/bearing-rings.yaml";
    private static final String PAINTED = "/following/operation=painting";

    @TempDir
    private Path folder;

    private StringWriter out = new StringWriter();
    private StringWriter err = new StringWriter();

    private int run(String... arguments) {
        out = new StringWriter();
        err = new StringWriter();
        return CommandLineEntry.commandLine()
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(arguments);
    }

    @Test
    void tasks_and_answers_may_be_mixed_and_give_the_same_comparison() throws IOException {
        assertEquals(ExitCode.OK, run("compare", "--as-of", "2026-11-25", "--json", CLIPS, RINGS));
        String tasks = out.toString();
        run("assess", "--interpret", "--as-of", "2026-11-25", "--json", CLIPS);
        Path clips = Files.writeString(folder.resolve("clips-answer"), out.toString());
        run("assess", "--interpret", "--as-of", "2026-11-25", "--json", RINGS);
        Path rings = Files.writeString(folder.resolve("rings.json"), out.toString());
        assertEquals(ExitCode.OK, run("compare", "--json", clips.toString(), rings.toString()));
        assertEquals(tasks, out.toString());
        // The date comes from the answer, so that it makes no difference of its own.
        assertEquals(ExitCode.OK, run("compare", "--json", clips.toString(), RINGS));
        assertEquals(tasks, out.toString());
        assertEquals(ExitCode.OK, run("compare", clips.toString(), clips.toString()));
        assertEquals("Nothing differs: both ask the same and answer the same.\n", out.toString());
    }

    @Test
    void a_what_if_is_the_comparison_with_the_task_written_out() throws IOException {
        assertEquals(ExitCode.OK, run("what-if", "--as-of", "2026-11-25", "--json", CLIPS, "--set", PAINTED));
        String whatIf = out.toString();
        Path painted = Files.writeString(
                folder.resolve("painted.yaml"),
                Files.readString(Path.of(CLIPS)).replace("operation: electroplating", "operation: painting"));
        run("compare", "--as-of", "2026-11-25", "--json", CLIPS, painted.toString());
        assertEquals(out.toString(), whatIf);
        JsonNode json = new ObjectMapper().readTree(whatIf);
        assertEquals("/following/operation", json.at("/asked/0/place").asText());
        assertTrue(json.at("/rules").size() > 0);
    }

    @Test
    void what_can_not_be_read_is_listed_with_its_place_and_the_exit_code_says_so() throws IOException {
        assertEquals(
                ExitCode.UNREADABLE_INPUT,
                run("what-if", CLIPS, "--set", "/part/mass=heavy", "--set", "nonsense", "--set", "/no/such=1"));
        for (String word : List.of("heavy", "/part/mass", "nonsense", "POINTER=VALUE", "/no/such")) {
            assertTrue(err.toString().contains(word), word + " in " + err);
        }
        assertEquals(ExitCode.USAGE, run("what-if", CLIPS));
        assertEquals(ExitCode.UNREADABLE_INPUT, run("compare", CLIPS, "no-such-file.yaml"));
        assertTrue(err.toString().contains("no-such-file.yaml"));
        Path broken = Files.writeString(folder.resolve("broken.json"), "{\"requestHash\":3,\"firings\":\"none\"}");
        assertEquals(ExitCode.UNREADABLE_INPUT, run("compare", broken.toString(), CLIPS));
        assertTrue(err.toString().contains("no answer that this program wrote"), err.toString());
        assertEquals(ExitCode.UNREADABLE_INPUT, run("compare", CLIPS, CLIPS, "--other-rulebook", folder.toString()));
    }

    @Test
    void the_docs_show_what_the_command_writes() throws IOException {
        String docs = Files.readString(Path.of("docs/comparing.md"));
        Matcher example = Pattern.compile("\\$ washwright (what-if [^\\n]+)\\n(.*?)```", Pattern.DOTALL)
                .matcher(docs);
        assertTrue(example.find(), "docs/comparing.md shows an example");
        run(example.group(1).replace("'", "").split(" "));
        String written = out.toString();
        int at = 0;
        for (String line : example.group(2).split("\n")) {
            // Three dots stand for lines left out.
            if (!line.strip().equals("...")) {
                int found = written.indexOf(line + "\n", at);
                assertTrue(found >= 0, line + " comes next in " + written);
                at = found;
            }
        }
    }
}
