package org.washwright.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * A database server left behind by a service that was killed.
 *
 * <p>Only called while the data folder's lock is held, so no other living service owns the server. A process is stopped
 * only if its own command line says that it serves exactly this cluster: process ids are reused.
 */
final class StaleServer {
    private static final Path PROC = Path.of("/proc");
    private static final int PATIENCE_SECONDS = 30;

    private final Path cluster;

    StaleServer(Path cluster) {
        this.cluster = cluster;
    }

    /** Stops the left-over server if there is one and clears its process file when that names a stranger. */
    void stop() {
        Path pidFile = cluster.resolve("postmaster.pid");
        Optional<ProcessHandle> named = namedIn(pidFile);
        if (named.isEmpty()) {
            return;
        }
        ProcessHandle process = named.get();
        if (serves(process)) {
            interrupt(process);
            await(process);
        }
        awaitNoWorkers();
        delete(pidFile);
    }

    /** The living process that the file names. */
    private static Optional<ProcessHandle> namedIn(Path pidFile) {
        try {
            if (!Files.exists(pidFile)) {
                return Optional.empty();
            }
            List<String> lines = Files.readAllLines(pidFile, StandardCharsets.UTF_8);
            if (lines.isEmpty()) {
                return Optional.empty();
            }
            return ProcessHandle.of(Long.parseLong(lines.get(0).strip())).filter(ProcessHandle::isAlive);
        } catch (IOException | NumberFormatException e) {
            throw new StartFailure(
                    "The database's process file " + pidFile + " cannot be read (" + e + "). If no database server runs"
                            + " on this folder, delete that file and start again.",
                    e);
        }
    }

    private boolean serves(ProcessHandle process) {
        List<String> words = commandLine(process);
        return !words.isEmpty()
                && Path.of(words.get(0)).getFileName().toString().startsWith("postgres")
                && words.contains(cluster.toString());
    }

    private static List<String> commandLine(ProcessHandle process) {
        Path file = PROC.resolve(Long.toString(process.pid())).resolve("cmdline");
        if (Files.isReadable(file)) {
            try {
                return Arrays.asList(
                        Files.readString(file, StandardCharsets.UTF_8).split("\0"));
            } catch (IOException e) {
                return List.of();
            }
        }
        return process.info()
                .commandLine()
                .map(line -> Arrays.asList(line.split(" ")))
                .orElse(List.of());
    }

    /** A fast shutdown in the server's own terms: open connections are closed, committed work is kept. */
    private void interrupt(ProcessHandle process) {
        try {
            new ProcessBuilder("kill", "-INT", Long.toString(process.pid()))
                    .start()
                    .waitFor();
        } catch (IOException e) {
            process.destroy();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw stillRunning(process);
        }
    }

    /**
     * Waits for the process to be gone by its command line: a process that has ended but was not yet collected by its
     * parent still counts as alive, and in a container nobody may ever collect it.
     */
    private void await(ProcessHandle process) {
        if (!within(() -> !serves(process))) {
            throw stillRunning(process);
        }
    }

    private StartFailure stillRunning(ProcessHandle process) {
        return new StartFailure(
                "The database server left behind by an earlier run (process " + process.pid() + ", folder "
                        + cluster + ") did not stop within " + PATIENCE_SECONDS + " seconds. Stop it with 'kill -INT "
                        + process.pid() + "' and start again.");
    }

    /** Workers of a dead server may outlive it for a moment; each stands in the cluster's folder. */
    private void awaitNoWorkers() {
        if (!within(() -> !anyWorker())) {
            throw new StartFailure("A process of an earlier database server still works in " + cluster
                    + ". Find it with 'fuser " + cluster + "', stop it, and start again.");
        }
    }

    private static boolean within(BooleanSupplier done) {
        for (int i = 0; i < PATIENCE_SECONDS * 10; i++) {
            if (done.getAsBoolean()) {
                return true;
            }
            try {
                Thread.sleep(100);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return false;
            }
        }
        return done.getAsBoolean();
    }

    private boolean anyWorker() {
        if (!Files.isDirectory(PROC)) {
            return false;
        }
        try (DirectoryStream<Path> processes = Files.newDirectoryStream(PROC, "[0-9]*")) {
            for (Path process : processes) {
                if (standsInCluster(process)) {
                    return true;
                }
            }
            return false;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private boolean standsInCluster(Path process) {
        try {
            return Files.readSymbolicLink(process.resolve("cwd")).equals(cluster);
        } catch (IOException e) {
            return false; // gone meanwhile, or not ours to look at
        }
    }

    private static void delete(Path pidFile) {
        try {
            Files.deleteIfExists(pidFile);
        } catch (IOException e) {
            throw new StartFailure(
                    "The stale process file " + pidFile + " cannot be deleted (" + e + "). Delete it.", e);
        }
    }
}
