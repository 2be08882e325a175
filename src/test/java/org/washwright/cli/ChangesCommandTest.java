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
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Both commands, and what the docs show of them. */
class ChangesCommandTest {

    private static final String ZINC = "demo-data/tasks/zinc-housings.yaml";
    private static final String CLIPS = "demo-data/tasks/steel-clips.yaml";
    private static final Path DOC = Path.of("docs/what-would-change.md");
    private static final Pattern SHOWN = Pattern.compile("```\\n\\$ washwright ([^\\n]+)\\n(.*?)```", Pattern.DOTALL);

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        List<String> all = new ArrayList<>(List.of(arguments));
        all.addAll(List.of("--as-of", "2026-11-25"));
        return CommandLineEntry.commandLine()
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(all.toArray(String[]::new));
    }

    @Test
    void the_docs_show_what_the_commands_print() throws IOException {
        Matcher shown = SHOWN.matcher(Files.readString(DOC));
        int examples = 0;
        while (shown.find()) {
            out.getBuffer().setLength(0);
            assertEquals(ExitCode.OK, run(shown.group(1).split(" ", -1)), err.toString());
            assertEquals(shown.group(2), out.toString());
            examples++;
        }
        assertEquals(2, examples);
    }

    @Test
    void json_holds_the_same_as_over_rest() throws IOException {
        assertEquals(
                ExitCode.OK, run("changes", ZINC, "--goal", "bring-in=chlorinated-vapour", "--most", "1", "--json"));
        JsonNode json = new ObjectMapper().readTree(out.toString());
        assertEquals("chlorinated", json.at("/proposals/0/changes/0/value").asText());
        out.getBuffer().setLength(0);
        assertEquals(ExitCode.OK, run("find-out", CLIPS, "--json"));
        assertEquals(
                "/materials/0/hardness",
                new ObjectMapper()
                        .readTree(out.toString())
                        .at("/matters/0/pointer")
                        .asText());
    }

    @Test
    void no_change_is_a_finding_and_a_wrong_question_is_told_all_at_once() {
        String guides = "demo-data/tasks/light-guides.yaml";
        assertEquals(ExitCode.FINDINGS, run("changes", guides, "--goal", "bring-in=acetone-wipe"));
        assertTrue(out.toString().startsWith("Nothing that may change brings in acetone wipe."), out.toString());
        assertEquals(
                ExitCode.USAGE,
                run("changes", guides, "--goal", "bring-in=acetone-wip", "--free", "soils", "--most", "4"));
        for (String place : List.of("--goal", "--free", "--most", "acetone-wipe")) {
            assertTrue(err.toString().contains(place), err.toString());
        }
        assertEquals(ExitCode.USAGE, run("find-out", CLIPS, "--evaluations", "0"));
        assertEquals(ExitCode.UNREADABLE_INPUT, run("find-out", "none-such.yaml"));
    }
}
