package org.washwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.washwright.generate.SmallEdition;

/** How runs of the packaged program end that are interrupted, or that nobody reads; and what else a run can meet. */
@Tag("slow")
class BulkEndsIT {

    private static final Pattern COUNTS = Pattern.compile(
            "([0-9]+) records: .* ([0-9]+) kept from an earlier run, ([0-9]+) evaluated, ([0-9]+) judged");

    @TempDir
    private Path folder;

    @Test
    void an_interrupted_run_writes_what_it_took_and_says_how_to_go_on() throws Exception {
        Path input = tasks(20_000);
        Path output = folder.resolve("out.ndjson");
        Process run = start("-Xmx300m", "--rulebook", few().toString(), "--out", output.toString(), input.toString());
        waitFor(output, 20_000, run);
        interrupt(run);
        assertEquals(ExitCode.INTERRUPTED, finish(run), err());
        String lines = Files.readString(output);
        assertTrue(lines.endsWith("}\n"), "the last line is whole");
        long written = lines.lines().count();
        assertTrue(err().contains("Stopped after record " + written + ". The same command goes on from there."), err());
    }

    @Test
    void lines_that_just_fit_fit_into_little_memory_however_many_there_are() throws Exception {
        Path input = folder.resolve("tasks.ndjson");
        try (BufferedWriter out = Files.newBufferedWriter(input)) {
            for (int i = 0; i < 80; i++) {
                out.write("{\"title\":\"t\",\"notes\":\"" + "y".repeat(900_000) + "\"}\n");
            }
        }
        assertEquals(ExitCode.FINDINGS, finish(start("-Xmx160m", "--threads", "8", input.toString())), err());
        assertEquals("80", counts().group(1));
    }

    @Test
    void a_reader_that_goes_ends_the_run_quietly() throws Exception {
        Process run = start(
                "-Xmx300m",
                "--rulebook",
                few().toString(),
                "--progress",
                "never",
                tasks(20_000).toString());
        try (InputStream lines = run.getInputStream()) {
            assertEquals(1000, lines.readNBytes(1000).length);
        }
        assertEquals(ExitCode.OUTPUT_CLOSED, finish(run), err());
        assertEquals("", err());
    }

    @Test
    void compiled_rules_judge_the_first_answer_and_each_hundredth_and_agree() throws Exception {
        assertJudged("--rulebook", few().toString());
    }

    /** Compiling the whole rulebook in little memory takes a minute and more. */
    @Test
    @Tag("load")
    void compiled_rules_of_the_whole_rulebook_judge_in_little_memory_and_agree() throws Exception {
        assertJudged();
    }

    private void assertJudged(String... rulebook) throws Exception {
        List<String> arguments = new ArrayList<>(List.of(rulebook));
        arguments.addAll(
                List.of("--judge", "100", "--out", folder.resolve("out.ndjson").toString()));
        arguments.add(tasks(220).toString());
        assertEquals(0, finish(start("-Xmx500m", arguments.toArray(String[]::new))), err());
        assertEquals("3", counts().group(4));
    }

    /** Few rules: how a run ends hangs on none of them. */
    private Path few() throws IOException {
        return Files.write(
                folder.resolve("few.zip"),
                SmallEdition.files(SmallEdition.withFewRules()).toZip());
    }

    private static void interrupt(Process run) throws Exception {
        assertEquals(
                0, new ProcessBuilder("kill", "-INT", "" + run.pid()).start().waitFor());
    }

    private Process start(String memory, String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                memory,
                "-jar",
                System.getProperty("washwright.packaged"),
                "bulk",
                "--as-of",
                "2026-01-01"));
        List<String> given = List.of(arguments);
        if (!given.contains("--judge")) {
            command.addAll(List.of("--judge", "0"));
        }
        command.addAll(given);
        ProcessBuilder builder =
                new ProcessBuilder(command).redirectError(folder.resolve("err").toFile());
        // Nothing that an earlier run compiled.
        builder.environment().put("WASHWRIGHT_CACHE", folder.resolve("cache").toString());
        return builder.start();
    }

    private static int finish(Process run) throws InterruptedException {
        assertTrue(run.waitFor(5, TimeUnit.MINUTES), "still running");
        return run.exitValue();
    }

    private String err() {
        try {
            return Files.readString(folder.resolve("err"));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private Matcher counts() {
        Matcher counts = COUNTS.matcher(err());
        assertTrue(counts.find(), err());
        return counts;
    }

    private void waitFor(Path file, long size, Process run) throws Exception {
        while (!Files.exists(file) || Files.size(file) < size) {
            assertTrue(run.isAlive(), () -> "ended early: " + err());
            Thread.sleep(5);
        }
    }

    /** Small tasks, all different. */
    private Path tasks(int records) throws IOException {
        Path file = folder.resolve("tasks.ndjson");
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            for (int i = 1; i <= records; i++) {
                out.write("{\"title\":\"task " + i + "\",\"part\":{\"mass\":\"" + i + " g\"}}\n");
            }
        }
        return file;
    }
}
