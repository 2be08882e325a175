package org.washwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.washwright.generate.Starter;

class WhyCommandsTest {

    private static final String TASK = "demo-data/tasks/manifold.yaml";
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder;

    private record Ran(int code, String out, String err) {}

    private static Ran run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = CommandLineEntry.commandLine()
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(args);
        return new Ran(code, out.toString(), err.toString());
    }

    @Test
    void why_lists_what_can_be_asked_and_answers_each_of_it() {
        Ran list = run("why", TASK);
        assertEquals(ExitCode.OK, list.code(), list.err());
        List<String> places = list.out().lines().map(l -> l.split(" ")[0]).toList();
        assertTrue(places.contains("/headline") && places.contains("/ruledOut/0"), list.out());
        Ran one = run("why", TASK, "--of", "/ruledOut/0/reasons/0");
        assertEquals(ExitCode.OK, one.code(), one.err());
        assertTrue(one.out().contains("  by the rule: "), one.out());
        assertTrue(one.out().contains("[given]"), one.out());
    }

    @Test
    void why_as_json_holds_ids_without_scores() throws IOException {
        Ran ran = run("why", TASK, "--of", "acid pickling", "--json");
        assertEquals(ExitCode.OK, ran.code(), ran.err());
        JsonNode json = JSON.readTree(ran.out());
        assertTrue(json.get("things").size() > 3);
        assertTrue(json.get("identity").size() > 3);
        assertEquals("status/acid-pickling", json.at("/things/0/id").asText());
    }

    @Test
    void what_is_not_there_is_refused_with_advice() {
        Ran ran = run("why", TASK, "--of", "/cautions/999");
        assertEquals(ExitCode.USAGE, ran.code());
        assertTrue(ran.err().contains("/cautions/999") && ran.err().contains("without --of"), ran.err());
        assertEquals(
                ExitCode.USAGE, run("why-not", TASK, "--process", "no-such").code());
        assertEquals(ExitCode.USAGE, run("why-not", TASK, "--rule", "no-such").code());
        assertEquals(ExitCode.UNREADABLE_INPUT, run("why", "no-such-file.yaml").code());
    }

    @Test
    void why_not_says_what_failed_with_its_value() {
        Ran process = run("why-not", TASK, "--process", "acid pickling");
        assertEquals(ExitCode.OK, process.code(), process.err());
        assertTrue(process.out().startsWith("acid pickling is ruled out."), process.out());
        assertTrue(process.out().contains("fails: it asks that the soil is limescale; here: cutting emulsion"));
        Ran rule = run("why-not", TASK, "--rule", "AT-10");
        assertTrue(rule.out().contains("fails: it asks that the thinnest wall of the part is below 1 mm"), rule.out());
        Ran all = run("why-not", TASK);
        assertTrue(all.out().contains("acetone wipe is ruled out."), all.out());
    }

    @Test
    void verify_accepts_what_assess_wrote_and_names_what_was_changed() throws IOException {
        Path answer = folder.resolve("answer.json");
        Path changed = folder.resolve("changed.json");
        Ran assessed = run("assess", "--interpret", "--json", "--as-of", Starter.WISHES.asOf(), TASK);
        Files.writeString(answer, assessed.out());
        Ran holds = run("verify", answer.toString());
        assertEquals(ExitCode.OK, holds.code(), holds.out() + holds.err());
        assertTrue(holds.out().startsWith("The proof holds"), holds.out());
        Files.writeString(changed, assessed.out().replace("\"status\":\"recommended\"", "\"status\":\"conditional\""));
        Ran broken = run("verify", changed.toString());
        assertEquals(ExitCode.FINDINGS, broken.code());
        assertTrue(broken.out().contains("/candidates/0/status"), broken.out());
        Files.write(changed, "no json".getBytes(StandardCharsets.UTF_8));
        List<String> refused = new ArrayList<>();
        refused.add(run("verify", changed.toString()).err());
        refused.add(run("verify", folder.resolve("nothing.json").toString()).err());
        refused.forEach(err -> assertTrue(err.startsWith("error "), err));
    }

    @Test
    void a_mark_is_a_file_that_lists_under_its_rule() throws IOException {
        Path mark = folder.resolve("mark.json");
        Ran made = run("mark", TASK, "--of", "acid pickling", "--because", "We pickle these every week.");
        assertEquals(ExitCode.OK, made.code(), made.err());
        Files.writeString(mark, made.out());
        Ran listed = run("marks", mark.toString());
        assertEquals(ExitCode.OK, listed.code(), listed.err());
        assertTrue(listed.out().startsWith("No oxide, no pickling [SO-09]"), listed.out());
        assertTrue(listed.out().contains("wrong: We pickle these every week."), listed.out());
        assertEquals(
                ExitCode.USAGE,
                run("mark", TASK, "--of", "/nowhere", "--because", "x").code());
        assertEquals(
                ExitCode.USAGE,
                run("mark", TASK, "--of", "/headline", "--because", " ").code());
        Files.writeString(mark, "[1]");
        assertEquals(ExitCode.UNREADABLE_INPUT, run("marks", mark.toString()).code());
    }
}
