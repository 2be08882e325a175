package org.washwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** What the docs say of {@code bulk} is what it does. */
class DocumentedBulkTest {

    private static final Path DOC = Path.of("docs", "bulk-and-library.md");
    private static final ObjectMapper MAPPER = new ObjectMapper();

    @TempDir
    private Path folder;

    private final StringWriter err = new StringWriter();
    private final CommandLine line = CommandLineEntry.commandLine().setErr(new PrintWriter(err));

    @Test
    void the_lines_shown_are_answered_but_for_the_one_that_names_no_metal() throws IOException {
        List<JsonNode> lines = run("tasks.ndjson", block("ndjson"), ExitCode.FINDINGS);
        assertEquals(List.of("answered", "answered", "refused"), texts(lines, "status"));
        assertTrue(lines.get(2).get("diagnostics").toString().contains("unobtainium"));
        assertEquals(3, lines.get(2).get("line").asInt());
    }

    @Test
    void the_output_line_shown_is_the_one_that_comes_but_for_the_hashes_cut_short() throws IOException {
        JsonNode came = run("tasks.ndjson", block("ndjson"), ExitCode.FINDINGS).get(0);
        JsonNode shown = MAPPER.readTree(block("json"));
        assertEquals(List.copyOf(names(came)), List.copyOf(names(shown)));
        for (String hash : List.of("sha256", "answer", "request")) {
            assertTrue(came.get(hash).asText().matches("[0-9a-f]{64}"), hash);
            assertTrue(shown.get(hash).asText().endsWith("..."), hash);
            ((ObjectNode) came).remove(hash);
            ((ObjectNode) shown).remove(hash);
        }
        assertEquals(shown.toPrettyString(), came.toPrettyString());
    }

    @Test
    void the_table_shown_is_answered_row_by_row() throws IOException {
        List<JsonNode> lines = run("tasks.csv", block("csv"), ExitCode.OK);
        assertEquals(List.of("answered", "answered", "answered"), texts(lines, "status"));
        assertEquals(List.of("Clips", "Blocks, cast", "Bars \"A\""), texts(lines, "title"));
    }

    @Test
    void every_option_and_no_other_stands_in_the_table_of_options() throws IOException {
        TreeSet<String> shown = new TreeSet<>(List.of("--help", "--version"));
        Matcher row = Pattern.compile("(?m)^\\| `(--[a-z-]+)").matcher(Files.readString(DOC));
        while (row.find()) {
            shown.add(row.group(1));
        }
        TreeSet<String> known = new TreeSet<>();
        line.getSubcommands().get("bulk").getCommandSpec().options().forEach(o -> known.add(o.longestName()));
        assertEquals(known, shown);
    }

    @Test
    void every_field_of_a_line_stands_in_the_table_of_fields() throws IOException {
        String text = Files.readString(DOC);
        TreeSet<String> fields = new TreeSet<>(List.of("failure"));
        run("tasks.ndjson", block("ndjson"), ExitCode.FINDINGS, "--full").forEach(l -> fields.addAll(names(l)));
        TreeSet<String> shown = new TreeSet<>();
        Matcher row = Pattern.compile("(?m)^\\| `([a-z0-9]+)` \\|").matcher(text.substring(text.indexOf("## Output")));
        while (row.find()) {
            shown.add(row.group(1));
        }
        assertEquals(fields, shown);
    }

    private List<JsonNode> run(String name, String input, int exitCode, String... more) throws IOException {
        Path in = Files.writeString(folder.resolve(name), input);
        Path out = folder.resolve("answers");
        List<String> arguments = new ArrayList<>(List.of("bulk", "--judge", "0", "--progress", "never"));
        arguments.addAll(List.of("--as-of", "2026-11-25", "--out", out.toString()));
        arguments.addAll(List.of(more));
        arguments.add(in.toString());
        assertEquals(exitCode, line.execute(arguments.toArray(String[]::new)), err::toString);
        List<JsonNode> lines = new ArrayList<>();
        for (String text : Files.readAllLines(out)) {
            lines.add(MAPPER.readTree(text));
        }
        return lines;
    }

    private static List<String> texts(List<JsonNode> lines, String field) {
        return lines.stream().map(l -> l.get(field).asText()).toList();
    }

    private static TreeSet<String> names(JsonNode line) {
        TreeSet<String> names = new TreeSet<>();
        line.fieldNames().forEachRemaining(names::add);
        return names;
    }

    private static String block(String fence) throws IOException {
        Matcher matcher =
                Pattern.compile("```" + fence + "\\n(.*?)```", Pattern.DOTALL).matcher(Files.readString(DOC));
        assertTrue(matcher.find(), fence);
        return matcher.group(1);
    }
}
