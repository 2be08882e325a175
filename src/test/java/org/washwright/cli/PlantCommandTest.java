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
import org.junit.jupiter.api.io.TempDir;

/** The command, and what the docs show of it. */
class PlantCommandTest {

    private static final String LINE = "demo-data/plants/two-chamber-line.yaml";
    private static final String TITANIUM = "demo-data/tasks/titanium-brackets.yaml";
    private static final String FRAME = "demo-data/tasks/welded-frame.yaml";

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        List<String> all = new ArrayList<>(List.of("plant", "--as-of", "2026-11-25"));
        all.addAll(List.of(arguments));
        return CommandLineEntry.commandLine()
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(all.toArray(String[]::new));
    }

    @Test
    void the_text_has_the_sentence_the_table_and_the_reasons() {
        assertEquals(ExitCode.FINDINGS, run("--parts-per-week", "titanium-brackets.yaml=660", LINE, TITANIUM, FRAME));
        String text = out.toString();
        // Worked by hand in PlantsTest: 0.980392 h.
        assertTrue(text.contains("Together they take 0.98 h of the 80 h"), text);
        assertTrue(
                text.lines().anyMatch(l -> l.startsWith("1  serves") && l.contains("660") && l.contains(" 66 ")), text);
        assertTrue(text.contains("  x A part of this size fits neither tank nor chamber. [GE-03]"), text);
    }

    @Test
    void the_exit_code_is_zero_when_all_can_be_served_and_json_is_the_same_as_over_rest() throws IOException {
        assertEquals(ExitCode.OK, run("--json", "--parts-per-week", TITANIUM + "=660", LINE, TITANIUM));
        JsonNode json = new ObjectMapper().readTree(out.toString());
        assertEquals("serves", json.at("/tasks/0/verdict").asText());
        assertEquals(10, json.at("/tasks/0/load/loads/low").asDouble());
        assertEquals(80, json.at("/week/has/high").asDouble());
    }

    @Test
    void everything_wrong_with_plant_and_tasks_is_listed_at_once() throws IOException {
        Path plant = folder.resolve("plant.yaml");
        Files.writeString(plant, "name: X\nprocess: soap\nhours: 5\n");
        Path task = folder.resolve("task.yaml");
        Files.writeString(task, "title: X\npart: {mass: 3 mm}\n");
        assertEquals(
                ExitCode.UNREADABLE_INPUT,
                run(
                        "--parts-per-week",
                        "other.yaml=5",
                        "--parts-per-week",
                        "task.yaml=many",
                        plant.toString(),
                        task.toString()));
        String text = err.toString();
        for (String word : List.of("soap", "has no unit", "is no mass", "other.yaml", "many")) {
            assertTrue(text.contains(word), word + " in " + text);
        }
        assertEquals(ExitCode.UNREADABLE_INPUT, run(folder.resolve("none.yaml").toString()));
        assertEquals(ExitCode.USAGE, run());
    }

    @Test
    void a_task_that_contradicts_itself_is_refused_by_name() throws IOException {
        Path task = folder.resolve("task.yaml");
        Files.writeString(
                task,
                "title: X\nfeatures:\n  - {kind: blind-hole, diameter: 6 mm, depth: 48 mm}\nmaterials:\n  - {substrate: carbon-steel,"
                        + " hardness: 60 HRC, strength: 500 MPa, vickers: 100 HV}\n");
        int code = run(LINE, task.toString());
        assertEquals(ExitCode.UNREADABLE_INPUT, code, () -> out.toString());
        assertTrue(err.toString().contains(task.toString()), err.toString());
    }

    @Test
    void what_the_docs_show_is_what_comes() throws IOException {
        String doc = Files.readString(Path.of("docs/plants.md"));
        Matcher shown = Pattern.compile("```text\\n(.*?)```", Pattern.DOTALL).matcher(doc);
        assertTrue(shown.find());
        Matcher command = Pattern.compile("quarkus-run.jar plant (.*)").matcher(doc);
        assertTrue(command.find());
        assertEquals(ExitCode.FINDINGS, run(command.group(1).strip().split("\\s+")));
        String came = out.toString().replaceAll("(?m)^edition .*\\n", "");
        assertEquals(shown.group(1).strip(), came.strip());
    }

    @Test
    void the_plant_the_docs_show_is_read() throws IOException {
        String doc = Files.readString(Path.of("docs/plants.md"));
        Matcher shown = Pattern.compile("```yaml\\n(.*?)```", Pattern.DOTALL).matcher(doc);
        assertTrue(shown.find());
        Path plant = folder.resolve("plant.yaml");
        Files.writeString(plant, shown.group(1));
        assertEquals(ExitCode.OK, run(plant.toString()), () -> err.toString());
        assertTrue(out.toString().contains("No task was named."));
    }
}
