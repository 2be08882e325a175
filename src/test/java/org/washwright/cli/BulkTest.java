package org.washwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.generate.SmallEdition;
import org.washwright.generate.Starter;
import picocli.CommandLine;

class BulkTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;

    @Test
    void each_line_says_what_the_answer_to_its_record_says() throws Exception {
        Path input = write("tasks.ndjson", "{\"title\":\"a\",\"part\":{\"mass\":\"2 kg\"}}\n");
        assertEquals(ExitCode.OK, bulk(input));
        FrozenAnswer answer = Starter.answer("{\"title\":\"a\",\"part\":{\"mass\":\"2 kg\"}}");
        JsonNode line = lines().get(0);
        assertEquals(
                List.of(
                        "record",
                        "line",
                        "key",
                        "sha256",
                        "status",
                        "title",
                        "answer",
                        "request",
                        "headline",
                        "first",
                        "counts"),
                names(line));
        assertEquals("1 1 tasks.ndjson answered a", text(line, "record", "line", "key", "status", "title"));
        assertEquals(answer.hash(), line.get("answer").asText());
        assertEquals(answer.answer().requestHash(), line.get("request").asText());
        assertEquals(answer.answer().headline().sentence(), line.get("headline").asText());
        assertEquals(
                answer.answer().candidates().get(0).process(),
                line.get("first").get("process").asText());
        assertEquals(
                answer.answer().ruledOut().size(),
                line.get("counts").get("ruledOut").asInt());
    }

    @Test
    void the_whole_answer_on_a_line_has_the_hashed_bytes() throws Exception {
        Path input = write("tasks.ndjson", "{\"title\":\"a\"}\n");
        assertEquals(ExitCode.OK, bulk(input, "--full"));
        String line = out.toString(StandardCharsets.UTF_8);
        String answer = new String(Starter.answer("title: a").bytes(), StandardCharsets.UTF_8);
        assertTrue(line.endsWith(",\"full\":" + answer + "}\n"), line.substring(0, 900));
        assertEquals(1, lines().size());
    }

    @Test
    void the_same_tasks_as_files_lines_and_rows_have_the_same_answers() throws Exception {
        write("tasks/b/2.yaml", "title: two\nsoils: [{kind: soil-a}]\n");
        write("tasks/a.json", "{\"title\":\"one\",\"part\":{\"mass\":\"3 kg\"}}");
        write("tasks/notes.txt", "no task");
        write("tasks/.hidden.yaml", "no task");
        Path lines = write(
                "tasks.ndjson",
                "{\"title\":\"one\",\"part\":{\"mass\":\"3 kg\"}}\n{\"title\":\"two\",\"soils\":[{\"kind\":\"soil-a\"}]}");
        Path table = write("tasks.csv", "title,part/mass,soils/0/kind\none,3 kg,\ntwo,,soil-a\n");
        List<String> answers = new ArrayList<>();
        for (Path input : List.of(folder.resolve("tasks"), lines, table)) {
            assertEquals(ExitCode.OK, few(input), err.toString());
            answers.add(lines().stream()
                    .map(l -> text(l, "title", "answer"))
                    .toList()
                    .toString());
            out.reset();
        }
        assertEquals(1, answers.stream().distinct().count(), answers.toString());
        assertEquals(ExitCode.OK, few(folder.resolve("tasks")));
        assertEquals(
                List.of("a.json", "b/2.yaml"),
                lines().stream().map(l -> l.get("key").asText()).toList());
    }

    @Test
    void a_bad_record_is_told_on_its_line_and_in_a_note_and_stops_nothing() throws Exception {
        Path input = write(
                "tasks.ndjson",
                "{\"title\":\"a\"}\n\n{\"title\":\"b\",\"prt\":1}\n\u0000\u0001junk\n{\"title\":\"c\"}\n");
        assertEquals(ExitCode.FINDINGS, few(input));
        assertEquals(
                List.of("answered", "refused", "refused", "answered"),
                lines().stream().map(l -> l.get("status").asText()).toList());
        JsonNode found = lines().get(1).get("diagnostics").get(0);
        assertEquals("unknown-field tasks.ndjson 3 /prt prt", text(found, "code", "file", "line", "pointer", "value"));
        assertEquals("did you mean \"part\"?", found.get("advice").asText());
        assertTrue(err.toString().contains("record 2, line 3: "), err.toString());
        assertTrue(err.toString().contains("4 records: 2 answered, 2 refused, 0 failed"), err.toString());
    }

    @Test
    void a_flood_of_bad_records_does_not_flood_the_terminal() throws Exception {
        assertEquals(ExitCode.FINDINGS, few(write("tasks.ndjson", "{}\n".repeat(500))));
        assertEquals(500, lines().size());
        assertEquals(22, err.toString().lines().count());
    }

    @Test
    void a_header_of_unknown_columns_an_empty_folder_and_a_missing_input_are_unreadable() throws Exception {
        assertEquals(ExitCode.UNREADABLE_INPUT, few(write("t.csv", "titl,part/mas\nx,y\n")));
        assertTrue(err.toString().contains("did you mean \"title\"?"), err.toString());
        assertTrue(err.toString().contains("did you mean \"part/mass\"?"), err.toString());
        Files.createDirectory(folder.resolve("empty"));
        assertEquals(ExitCode.UNREADABLE_INPUT, few(folder.resolve("empty")));
        assertEquals(ExitCode.UNREADABLE_INPUT, few(folder.resolve("nowhere.ndjson")));
        assertEquals(0, out.size());
    }

    @Test
    void wishes_that_no_task_can_have_are_refused_once_and_not_on_each_record() throws Exception {
        Path input = write("tasks.ndjson", "{\"title\":\"a\"}\n".repeat(3));
        assertEquals(ExitCode.UNREADABLE_INPUT, few(input, "--weight", "enviroment=2", "--assume", "x=1"));
        assertTrue(err.toString().contains("did you mean \"environment\"?"), err.toString());
        assertEquals(3, err.toString().lines().count(), err.toString());
        assertEquals(0, out.size());
    }

    @Test
    void options_without_sense_are_a_usage_error() throws Exception {
        Path input = write("tasks.ndjson", "{\"title\":\"a\"}\n");
        assertEquals(ExitCode.USAGE, bulk(input, "--threads", "0"));
        assertEquals(ExitCode.USAGE, bulk(input, "--judge", "-1"));
    }

    @Test
    void a_reader_that_has_gone_ends_the_run_quietly_and_a_full_disk_does_not() throws Exception {
        Path input = write("tasks.ndjson", "{\"title\":\"a\"}\n".repeat(3));
        assertEquals(ExitCode.OUTPUT_CLOSED, few(failing("Broken pipe"), input));
        assertEquals("", err.toString());
        assertEquals(ExitCode.CANNOT_WRITE, few(failing("No space left on device"), input));
        assertTrue(
                err.toString().contains("can't be written after record 0 (No space left on device)"), err.toString());
    }

    @Test
    void progress_tells_rate_and_time_left_from_the_share_of_the_input() {
        assertEquals(
                "300 records (100 kept), 7 refused, 20 a second, 25 %, about 45 s left",
                ProgressLine.text(300, 100, 7, 10, 0.25));
        assertEquals("5 records, 0 refused, 0.5 a second", ProgressLine.text(5, 0, 0, 10, -1));
    }

    private static OutputStream failing(String reason) {
        return new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException(reason);
            }
        };
    }

    private int bulk(Path input, String... options) {
        return bulk(out, input, options);
    }

    /** With few rules: which records a run takes and what it says of them hangs on no rule. */
    private int few(Path input, String... options) throws IOException {
        return few(out, input, options);
    }

    private int few(OutputStream to, Path input, String... options) throws IOException {
        Path edition = Files.write(
                folder.resolve("few.zip"),
                SmallEdition.files(SmallEdition.withFewRules()).toZip());
        List<String> all = new ArrayList<>(List.of("--rulebook", edition.toString()));
        all.addAll(Arrays.asList(options));
        return bulk(to, input, all.toArray(String[]::new));
    }

    private int bulk(OutputStream to, Path input, String... options) {
        List<String> arguments = new ArrayList<>(
                List.of("--as-of", Starter.WISHES.asOf(), "--judge", "0", "--progress", "never", "--threads", "2"));
        arguments.addAll(Arrays.asList(options));
        arguments.add(input.toString());
        return new CommandLine(new Bulk(() -> to))
                .setOverwrittenOptionsAllowed(true)
                .setErr(new PrintWriter(err))
                .execute(arguments.toArray(String[]::new));
    }

    private Path write(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, text);
    }

    private List<JsonNode> lines() throws IOException {
        List<JsonNode> lines = new ArrayList<>();
        for (String line : out.toString(StandardCharsets.UTF_8).lines().toList()) {
            lines.add(MAPPER.readTree(line));
        }
        return lines;
    }

    private static List<String> names(JsonNode node) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    private static String text(JsonNode node, String... names) {
        return String.join(" ", Stream.of(names).map(n -> node.get(n).asText()).toList());
    }
}
