package org.washwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.washwright.generate.SmallEdition;

/** Many tasks through the packaged program: killed and taken up, and in little memory. */
@Tag("slow")
@Timeout(240)
class BulkIT {

    private static final String MEMORY = "160m";
    private static final int SOME = 2_000;
    private static final int MANY = 8_000;

    /** More than the memory: whoever kept such a line, and be it for a moment, would not come through. */
    private static final int HUGE_LINE = 200_000_000;

    @TempDir
    private Path folder;

    private Path edition;

    /** Few rules: how many tasks a second a large edition does is not what is tested here. */
    @BeforeEach
    void edition() throws IOException {
        edition = Files.write(
                folder.resolve("edition.zip"),
                SmallEdition.files(SmallEdition.withFewRules()).toZip());
    }

    @Test
    void a_run_that_was_killed_and_taken_up_gives_the_bytes_of_an_undisturbed_one_and_answers_no_line_twice()
            throws Exception {
        Path input = folder.resolve("tasks.ndjson");
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(input))) {
            tasks(out, 1, SOME);
        }
        Path whole = folder.resolve("whole.ndjson");
        PackagedBulk undisturbed = PackagedBulk.start(MEMORY, edition, input, whole);
        assertEquals(ExitCode.OK, undisturbed.exitCode(), undisturbed::errors);
        assertEquals(SOME, undisturbed.counts().evaluated());
        byte[] expected = Files.readAllBytes(whole);

        Path output = folder.resolve("answers.ndjson");
        PackagedBulk killed = PackagedBulk.start(MEMORY, edition, input, output);
        while (size(output) < expected.length / 3) {
            assertTrue(killed.isAlive(), "ended before it could be killed: " + killed.errors());
            Thread.sleep(2);
        }
        killed.kill();
        byte[] left = Files.readAllBytes(output);
        assertTrue(left.length < expected.length, "killed too late to show anything");
        assertFalse(killed.errors().contains("kept from"), killed.errors());
        assertArrayEquals(Arrays.copyOf(expected, left.length), left);

        PackagedBulk onward = PackagedBulk.start(MEMORY, edition, input, output);
        assertEquals(ExitCode.OK, onward.exitCode(), onward::errors);
        assertArrayEquals(expected, Files.readAllBytes(output));
        // Whole lines count as done and are not answered again; what was in flight, and a torn line, is.
        long done = lines(left);
        assertTrue(done > 0);
        assertEquals(new PackagedBulk.Counts(SOME, SOME, 0, 0, done, SOME - done), onward.counts());
    }

    @Test
    void thousands_of_tasks_and_a_line_larger_than_the_memory_among_them_go_through() throws Exception {
        Path input = folder.resolve("many.ndjson");
        int before = MANY / 2;
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(input))) {
            tasks(out, 1, before);
            // A blank line is no record, so that lines and records are told apart.
            out.write('\n');
            out.write("{\"title\":\"".getBytes(StandardCharsets.UTF_8));
            byte[] filling = new byte[HUGE_LINE / 1000];
            Arrays.fill(filling, (byte) 'x');
            for (int i = 0; i < 1000; i++) {
                out.write(filling);
            }
            out.write("\"}\n".getBytes(StandardCharsets.UTF_8));
            tasks(out, before + 1, MANY);
        }
        Path output = folder.resolve("many.out");
        PackagedBulk run = PackagedBulk.start(MEMORY, edition, input, output);
        assertEquals(ExitCode.FINDINGS, run.exitCode(), run::errors);
        assertEquals(new PackagedBulk.Counts(MANY + 1, MANY, 1, 0, 0, MANY + 1), run.counts());
        String place = "record " + (before + 1) + ", line " + (before + 2);
        assertTrue(run.errors().contains(place + ":"), run.errors());

        List<String> lines = Files.readAllLines(output);
        assertEquals(MANY + 1, lines.size());
        JsonNode huge = new ObjectMapper().readTree(lines.get(before));
        assertEquals(before + 2, huge.get("line").asInt());
        assertEquals("refused", huge.get("status").asText());
        assertTrue(huge.get("diagnostics").toString().contains("200000012 bytes"), huge::toString);
        JsonNode next = new ObjectMapper().readTree(lines.get(before + 1));
        assertEquals(before + 3, next.get("line").asInt());
        assertEquals("answered", next.get("status").asText());
        assertEquals("task " + (before + 1), next.get("title").asText());
    }

    private static void tasks(OutputStream out, int first, int last) throws IOException {
        for (int i = first; i <= last; i++) {
            String task = "{\"title\":\"task " + i + "\",\"part\":{\"mass\":\"" + i + " g\"},"
                    + "\"materials\":[{\"substrate\":\"substrate-a\"}]}\n";
            out.write(task.getBytes(StandardCharsets.UTF_8));
        }
    }

    private static long size(Path file) throws IOException {
        return Files.exists(file) ? Files.size(file) : 0;
    }

    private static long lines(byte[] bytes) {
        long lines = 0;
        for (byte b : bytes) {
            lines += b == '\n' ? 1 : 0;
        }
        return lines;
    }
}
