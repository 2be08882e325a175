package org.washwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.washwright.generate.Starter;

/** The commands for those who learn. What is expected follows from the answer to the task. */
class ReplayCommandTest {

    private static final String RINGS = "demo-data/tasks/bearing-rings.yaml";

    @TempDir
    private Path folder;

    private String out;
    private String err;

    private int run(String command, String... arguments) {
        List<String> all = new ArrayList<>(List.of(command, "--as-of", "2026-11-25"));
        all.addAll(List.of(arguments));
        StringWriter outText = new StringWriter();
        StringWriter errText = new StringWriter();
        int code = CommandLineEntry.commandLine()
                .setOut(new PrintWriter(outText))
                .setErr(new PrintWriter(errText))
                .execute(all.toArray(String[]::new));
        out = outText.toString();
        err = errText.toString();
        return code;
    }

    @Test
    void a_task_and_the_answer_to_it_are_replayed_alike() throws IOException {
        Path kept = folder.resolve("answer.json");
        Files.write(
                kept,
                Starter.swept()
                        .assess(Starter.demoTasks().get("bearing-rings.yaml"), Starter.WISHES)
                        .bytes());
        assertEquals(ExitCode.OK, run("replay", "--json", RINGS));
        String ofTask = out;
        assertEquals(ExitCode.OK, run("replay", "--json", kept.toString()));
        assertEquals(ofTask, out);
        assertTrue(new ObjectMapper().readTree(out).get("steps").size() > 500);
    }

    @Test
    void one_step_all_steps_or_the_chapters_are_told() {
        assertEquals(ExitCode.OK, run("replay", "--process", "acid-pickling", RINGS));
        assertTrue(out.contains("The line of acid pickling"), out);
        assertFalse(out.contains("step 1 of"), out);
        assertEquals(ExitCode.OK, run("replay", "--process", "acid-pickling", "--step", "1", RINGS));
        assertTrue(out.contains("step 1 of ") && !out.contains("step 2 of "), out);
        assertEquals(ExitCode.OK, run("replay", "--process", "acid-pickling", "--all", RINGS));
        assertTrue(out.contains("Acid pickling: ruled out"), out);
        assertTrue(out.contains("hardness of bearing steel: 62 HRC"), out);
        assertEquals(ExitCode.USAGE, run("replay", "--step", "99999", RINGS));
        assertEquals(ExitCode.USAGE, run("replay", "--step", "1", "--all", RINGS));
        assertEquals(ExitCode.UNREADABLE_INPUT, run("replay", "--process", "acid-picling", RINGS));
        assertTrue(err.contains("did you mean \"acid-pickling\"?"), err);
    }

    @Test
    void an_answer_that_is_cut_short_is_told_from_a_task() throws IOException {
        Path cut = folder.resolve("cut.json");
        Files.writeString(cut, "{\"requestHash\":\"00\",\"facts\":[");
        assertEquals(ExitCode.UNREADABLE_INPUT, run("replay", cut.toString()));
        assertTrue(err.contains("not readable JSON"), err);
        assertEquals(
                ExitCode.UNREADABLE_INPUT,
                run("replay", folder.resolve("none.yaml").toString()));
        assertTrue(err.contains("can't be read"), err);
    }

    @Test
    void an_empty_prediction_is_written_and_one_that_was_filled_in_compared() throws IOException {
        String[] two = {"--process", "mild-alkaline-ultrasonic", "--process", "acid-pickling"};
        assertEquals(ExitCode.OK, run("exercise", with(two, "--template", RINGS)));
        String template = out;
        assertTrue(template.contains("- process: acid-pickling"), template);
        assertFalse(template.contains("status: "), template);
        Path filled = folder.resolve("prediction.yaml");
        Files.writeString(filled, template);
        assertEquals(ExitCode.UNREADABLE_INPUT, run("exercise", with(two, "--predict", filled.toString(), RINGS)));
        assertEquals(2, err.lines().filter(l -> l.contains("lacks \"status\"")).count(), err);
        Files.writeString(filled, """
                first: mild-alkaline-ultrasonic
                predictions:
                  - {process: mild-alkaline-ultrasonic, status: recommended}
                  - {process: acid-pickling, status: conditional}
                """);
        assertEquals(ExitCode.OK, run("exercise", with(two, "--predict", filled.toString(), RINGS)));
        assertTrue(out.startsWith("1 of 2 statuses, 0 of "), out);
        assertTrue(out.contains("acid pickling: ruled out, predicted: conditional"), out);
        assertEquals(ExitCode.OK, run("exercise", with(two, "--json", "--predict", filled.toString(), RINGS)));
        JsonNode feedback = new ObjectMapper().readTree(out);
        assertEquals(1, feedback.get("statuses").asInt());
        assertTrue(feedback.get("firstRight").asBoolean());
    }

    @Test
    void the_prediction_in_the_docs_is_one_that_can_be_compared() throws IOException {
        String docs = Files.readString(Path.of("docs/teaching.md"));
        int start = docs.indexOf("```yaml\n") + "```yaml\n".length();
        Path file = folder.resolve("documented.yaml");
        Files.writeString(file, docs.substring(start, docs.indexOf("```", start)));
        String[] two = {"--process", "mild-alkaline-ultrasonic", "--process", "acid-pickling"};
        assertEquals(ExitCode.OK, run("exercise", with(two, "--predict", file.toString(), RINGS)), err);
        assertTrue(out.startsWith("2 of 2 statuses, 1 of "), out);
        assertTrue(out.lines().findFirst().orElse("").endsWith("; the first is right"), out);
    }

    private static String[] with(String[] some, String... more) {
        List<String> all = new ArrayList<>(List.of(some));
        all.addAll(List.of(more));
        return all.toArray(String[]::new);
    }

    @Test
    void what_can_not_be_asked_is_refused_with_every_error() {
        assertEquals(ExitCode.USAGE, run("exercise", RINGS));
        assertEquals(
                ExitCode.UNREADABLE_INPUT,
                run("exercise", "--template", "--process", "acid-picling", "--process", "nothing-like-it", RINGS));
        assertEquals(
                2, err.lines().filter(l -> l.contains("process of this answer")).count(), err);
    }
}
