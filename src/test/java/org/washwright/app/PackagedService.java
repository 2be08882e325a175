package org.washwright.app;

import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The packaged program as a process of its own, on a free port, as a user would start it. */
public final class PackagedService implements AutoCloseable {
    private static final Pattern READY = Pattern.compile("Washwright is ready at (http://\\S+)");
    private static final int PATIENCE_SECONDS = 120;

    private final Process process;
    private final Path output;

    private PackagedService(Process process, Path output) {
        this.process = process;
        this.output = output;
    }

    /** Starts the program on a data folder; returns at once. */
    public static PackagedService start(Path dataFolder, String... settings) {
        try {
            Path output = Files.createTempFile("washwright", ".log");
            List<String> command = new ArrayList<>(List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-Dquarkus.http.port=0",
                    "-Dwashwright.data-dir=" + dataFolder));
            command.addAll(List.of(settings));
            command.addAll(List.of("-jar", System.getProperty("washwright.packaged")));
            Process process = new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(output.toFile())
                    .start();
            return new PackagedService(process, output);
        } catch (IOException e) {
            throw new IllegalStateException("the packaged program could not be started", e);
        }
    }

    /** Waits until the program says it is ready, and gives its address. */
    public URI address() {
        for (int i = 0; i < PATIENCE_SECONDS * 10; i++) {
            Matcher ready = READY.matcher(output());
            if (ready.find()) {
                return URI.create(ready.group(1));
            }
            if (!process.isAlive()) {
                throw new AssertionError("the program ended with " + process.exitValue() + ":\n" + output());
            }
            pause();
        }
        throw new AssertionError("the program was not ready in " + PATIENCE_SECONDS + " s:\n" + output());
    }

    /** Everything printed so far. */
    public String output() {
        try {
            return Files.readString(output, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Waits for the program to end by itself. */
    public int exitCode() throws InterruptedException {
        if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
            throw new AssertionError("the program still runs:\n" + output());
        }
        return process.exitValue();
    }

    /** Ends the program without any chance to tidy up. */
    public void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    /** Asks the program to stop, and waits until it has. */
    @Override
    public void close() {
        process.destroy();
        try {
            if (!process.waitFor(60, TimeUnit.SECONDS)) {
                process.destroyForcibly();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void pause() {
        try {
            Thread.sleep(100);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
