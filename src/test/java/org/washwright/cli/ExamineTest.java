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
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.washwright.generate.SmallEdition;

class ExamineTest {

    private static final String RULES = """
            rule "a"
            @id("A") @basis("common practice")
            when
            Material(hardness >= "31 HRC")
            then
            caution("hazard-a", "So.");
            end
            rule "b"
            @id("B") @basis("common practice")
            when
            Material(hardness >= "40 HRC")
            then
            caution("hazard-a", "So.");
            end
            """;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;

    private int run(String... arguments) {
        return CommandLineEntry.commandLine()
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(arguments);
    }

    private String edition(String... more) throws IOException {
        Map<String, String> texts = new TreeMap<>(SmallEdition.texts());
        texts.put("rules/r.drl", RULES);
        for (int i = 0; i < more.length; i += 2) {
            texts.put(more[i], more[i + 1]);
        }
        Path zip = folder.resolve("e.zip");
        Files.write(zip, SmallEdition.files(texts).toZip());
        return zip.toString();
    }

    @Test
    void a_finding_is_told_with_its_rules_its_place_and_a_task_and_sets_the_exit_code() throws IOException {
        assertEquals(ExitCode.FINDINGS, run("examine", edition()));
        assertTrue(out.toString().contains("adds nothing  B, A  at rules/r.drl:8"), out::toString);
        assertTrue(out.toString().contains("hardness: 40 HRC"), out::toString);
    }

    @Test
    void an_accepted_finding_sets_no_exit_code() throws IOException {
        String known = "known:\n  - {finding: adds nothing, rules: [A, B], why: To teach.}\n";
        assertEquals(ExitCode.OK, run("examine", edition("known-findings.yaml", known), "--json"));
        JsonNode json = new ObjectMapper().readTree(out.toString());
        assertEquals("To teach.", json.get("findings").get(0).get("accepted").asText());
        assertTrue(json.get("examples").get("A").size() > 2);
    }

    @Test
    void proposed_cases_are_an_edition_s_cases_and_hold() throws IOException {
        Path file = folder.resolve("proposed.yaml");
        assertEquals(ExitCode.OK, run("propose-cases", edition(), "--out", file.toString()));
        assertEquals(
                ExitCode.OK,
                run("cases", edition("cases/proposed.yaml", Files.readString(file))),
                () -> out.toString() + err);
        assertTrue(out.toString().contains(" 0 fail"), out::toString);
    }

    @Test
    void what_the_cases_lack_is_proposed_by_one_change_to_one_of_them_and_then_nothing_is_lacking() throws IOException {
        String cases = "cases:\n  - id: hard\n    title: Hard steel\n    basis: common practice\n"
                + "    task: {title: t, materials: [{hardness: 45 HRC}]}\n    expect: {fires: [A]}\n";
        Path file = folder.resolve("lacking.yaml");
        assertEquals(
                ExitCode.OK,
                run("propose-cases", edition("cases/hard.yaml", cases), "--missing", "--out", file.toString()));
        String proposed = Files.readString(file);
        assertTrue(proposed.contains("change: {of: hard, set: {/materials/0/hardness: "), proposed);
        String both = edition("cases/hard.yaml", cases, "cases/lacking.yaml", proposed);
        assertEquals(ExitCode.OK, run("cases", both), () -> out.toString() + err);
        assertEquals(ExitCode.OK, run("coverage", both, "--json"));
        JsonNode json = new ObjectMapper()
                .readTree(out.toString().substring(out.toString().indexOf("\n{") + 1));
        assertEquals(2, json.get("rulesHeldBack").asInt());
        assertEquals(json.get("conditions"), json.get("conditionsBothWays"));
        assertEquals(ExitCode.OK, run("propose-cases", both, "--missing"));
        assertTrue(out.toString().endsWith("cases: []\n"), out::toString);
    }

    @Test
    void coverage_is_counted_over_the_tasks_named_and_a_wrong_one_is_told() throws IOException {
        Files.writeString(folder.resolve("t.yaml"), "title: t\nmaterials: [{hardness: 35 HRC}]\n");
        assertEquals(
                ExitCode.OK, run("coverage", edition(), folder.resolve("t.yaml").toString()));
        assertTrue(out.toString().contains("1 tasks: 1 of 2 rules fired"), out::toString);
        Files.writeString(folder.resolve("u.yaml"), "title: t\nmaterials: [{hardnes: 35 HRC}]\n");
        assertEquals(ExitCode.UNREADABLE_INPUT, run("coverage", edition(), folder.toString(), "--json"));
        assertTrue(err.toString().contains("did you mean \"hardness\"?"), err::toString);
    }

    @Test
    void a_grid_is_a_table_with_a_row_for_each_combination() throws IOException {
        String plan =
                "axes:\n  - {attribute: Soil.kind, orNone: yes}\n  - {attribute: Material.substrate, groupBy: family}\n";
        assertEquals(ExitCode.OK, run("grid", edition("grid.yaml", plan)));
        String[] lines = out.toString().strip().split("\\R");
        assertEquals("soil,substrate,recommended,conditional,ruled out,recommended processes", lines[0]);
        assertEquals(1 + 4 * 3, lines.length);
        assertEquals(ExitCode.UNREADABLE_INPUT, run("grid", edition()));
    }
}
