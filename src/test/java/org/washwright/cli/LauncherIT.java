package org.washwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** The launcher gives the same bytes as {@code java -jar}, from anywhere, prepared or not. */
@Tag("slow")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LauncherIT {

    private static final Path JAR = Path.of(System.getProperty("washwright.packaged"));
    private static final Path LAUNCHER = JAR.resolveSibling("washwright");
    private static final Path TASK = Path.of("demo-data/tasks/steel-clips.yaml").toAbsolutePath();
    private static final String[] ASSESS = {"assess", "--json", "--as-of", "2026-11-25", TASK.toString()};

    @TempDir
    static Path temp;

    private byte[] expected;

    private record Ended(int code, byte[] output) {}

    @BeforeAll
    void prepare() throws IOException, InterruptedException {
        List<String> plain = new ArrayList<>(List.of("java", "-jar", JAR.toString()));
        plain.addAll(List.of(ASSESS));
        expected = run(plain, temp).output();
        assertTrue(expected.length > 1000);
        assertEquals(0, launch(LAUNCHER, temp, "prepare").code());
    }

    @Test
    void fromAnotherFolderAndThroughLinksTheBytesAreTheSame() throws IOException, InterruptedException {
        Path folder = Files.createDirectory(temp.resolve("a folder with spaces"));
        Path link = Files.createSymbolicLink(folder.resolve("one"), LAUNCHER);
        Path second = Files.createSymbolicLink(folder.resolve("two"), Path.of("one"));
        assertTrue(link.toFile().exists());
        assertArrayEquals(expected, launch(second, folder, ASSESS).output());
    }

    @Test
    void theArchiveIsTheUsersAlone() throws IOException {
        Path folder = cache().resolve("classes");
        assertTrue(Files.size(archive()) > 1_000_000);
        assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(folder)));
    }

    @Test
    void preparedCommandsTakeTheirClassesFromTheArchive() throws IOException, InterruptedException {
        Path log = temp.resolve("loaded.log");
        List<String> command = List.of(
                "sh", "-c", "WASHWRIGHT_JAVA_OPTS=-Xlog:class+load:file=loaded.log \"$0\" --version", "" + LAUNCHER);
        assertEquals(0, run(command, temp).code());
        assertTrue(Files.exists(log));
        String ours = "org.washwright.cli.CommandLineEntry source: ";
        List<String> loaded =
                Files.readAllLines(log).stream().filter(l -> l.contains(ours)).toList();
        assertTrue(loaded.size() == 1 && loaded.get(0).contains("shared objects file (top)"), loaded.toString());
    }

    @Test
    void aDamagedArchiveIsLeftAside() throws IOException, InterruptedException {
        Path archive = archive();
        byte[] whole = Files.readAllBytes(archive);
        byte[] damaged = whole.clone();
        for (int i = damaged.length / 2; i < damaged.length / 2 + 4096; i++) {
            damaged[i] ^= 0x55;
        }
        try {
            replace(archive, damaged);
            assertArrayEquals(expected, launch(LAUNCHER, temp, ASSESS).output());
            replace(archive, new byte[100]);
            assertArrayEquals(expected, launch(LAUNCHER, temp, ASSESS).output());
            // Java itself dies of this one.
            replace(archive, Arrays.copyOf(whole, whole.length / 3));
            assertArrayEquals(expected, launch(LAUNCHER, temp, ASSESS).output());
        } finally {
            replace(archive, whole);
        }
    }

    @Test
    void withoutTheLibrariesBesideItItSaysWhatIsMissing() throws IOException, InterruptedException {
        Path lonely = Files.copy(
                LAUNCHER, Files.createDirectory(temp.resolve("lonely")).resolve("washwright"));
        Ended ended = launch(lonely, temp, "--help");
        assertEquals(69, ended.code());
        assertTrue(new String(ended.output(), java.nio.charset.StandardCharsets.UTF_8).contains("mvn package"));
    }

    @Test
    void anUnpreparedLauncherAnswersAlike() throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(LAUNCHER.toString()));
        command.addAll(List.of(ASSESS));
        ProcessBuilder builder = new ProcessBuilder(command).directory(temp.toFile());
        builder.environment().put("WASHWRIGHT_CACHE", temp.resolve("empty").toString());
        Process process = builder.start();
        byte[] output = process.getInputStream().readAllBytes();
        assertEquals(0, process.waitFor());
        assertArrayEquals(expected, output);
        assertFalse(Files.exists(temp.resolve("empty").resolve("classes")));
    }

    private static void replace(Path archive, byte[] bytes) throws IOException {
        Files.deleteIfExists(archive);
        Files.write(archive, bytes);
    }

    private static Path archive() throws IOException {
        try (Stream<Path> files = Files.list(cache().resolve("classes"))) {
            return files.filter(f -> f.toString().endsWith(".jsa")).findFirst().orElseThrow();
        }
    }

    private static Path cache() {
        return temp.resolve("cache");
    }

    private static Ended launch(Path launcher, Path from, String... arguments)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(launcher.toString()));
        command.addAll(List.of(arguments));
        return run(command, from);
    }

    private static Ended run(List<String> command, Path from) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(command).directory(from.toFile());
        builder.environment().put("WASHWRIGHT_CACHE", cache().toString());
        // Only the message of a failure is looked for on standard error; an answer must leave it empty.
        builder.redirectErrorStream(true);
        Process process = builder.start();
        byte[] output = process.getInputStream().readAllBytes();
        return new Ended(process.waitFor(), output);
    }
}
