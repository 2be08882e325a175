package org.washwright.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The packaged program's {@code bulk} as a process of its own, in little memory. */
final class PackagedBulk {

    private static final Pattern COUNTS = Pattern.compile("([0-9]+) records?: ([0-9]+) answered, ([0-9]+) refused,"
            + " ([0-9]+) failed; ([0-9]+) kept from an earlier run, ([0-9]+) evaluated");
    private static final int PATIENCE_SECONDS = 100;

    private final Process process;
    private final Path errors;

    /** The numbers of the last line on standard error. */
    record Counts(long records, long answered, long refused, long failed, long kept, long evaluated) {}

    private PackagedBulk(Process process, Path errors) {
        this.process = process;
        this.errors = errors;
    }

    /** Starts a run; returns at once. */
    static PackagedBulk start(String memory, Path edition, Path input, Path output) throws IOException {
        Path errors = output.resolveSibling(output.getFileName() + ".err");
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx" + memory,
                // A full heap must end the run at once instead of slowing it down until the test gives up.
                "-XX:+ExitOnOutOfMemoryError",
                "-jar",
                System.getProperty("washwright.packaged"),
                "bulk"));
        command.addAll(List.of("--rulebook", edition.toString(), "--as-of", "2026-11-25"));
        // Compiling for the judge takes longer than the runs themselves; JudgeTest is about the judge.
        command.addAll(List.of("--judge", "0", "--threads", "2", "--out", output.toString(), input.toString()));
        Process process = new ProcessBuilder(command)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(errors.toFile())
                .start();
        return new PackagedBulk(process, errors);
    }

    boolean isAlive() {
        return process.isAlive();
    }

    /** Ends the run without any chance to tidy up. */
    void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    int exitCode() throws InterruptedException {
        if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
            kill();
            throw new AssertionError("still running after " + PATIENCE_SECONDS + " s:\n" + errors());
        }
        return process.exitValue();
    }

    String errors() {
        try {
            return Files.readString(errors);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Counts counts() {
        Matcher m = COUNTS.matcher(errors());
        if (!m.find()) {
            throw new AssertionError("no counts in:\n" + errors());
        }
        return new Counts(number(m, 1), number(m, 2), number(m, 3), number(m, 4), number(m, 5), number(m, 6));
    }

    private static long number(Matcher matcher, int group) {
        return Long.parseLong(matcher.group(group));
    }
}
