package org.washwright.launcher;

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
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The launcher of the packaged program: what it starts, and that it starts in every case. */
@Tag("slow")
class LauncherIT {

    private static final Path PACKAGED =
            Path.of(System.getProperty("washwright.packaged")).toAbsolutePath();
    private static final Path JAVA_HOME = Path.of(System.getProperty("java.home"));
    private static final String TASK =
            Path.of("demo-data/tasks/steel-clips.yaml").toAbsolutePath().toString();
    private static final List<String> ASSESS =
            List.of("assess", "--interpret", "--json", "--as-of", "2026-01-01", TASK);

    @TempDir
    private Path folder;

    private Path launcher;
    private Path elsewhere;
    private final Map<String, String> environment = new TreeMap<>();

    private record Ran(int code, byte[] out, String err) {}

    @BeforeEach
    void a_program_at_a_place_with_spaces_called_by_a_link() throws Exception {
        Path program = folder.resolve("my programs/the app");
        copy(PACKAGED.getParent(), program);
        Path bin = Files.createDirectories(folder.resolve("my bin"));
        launcher = Files.createSymbolicLink(
                bin.resolve("ww"), Files.createSymbolicLink(bin.resolve("other"), program.resolve("washwright")));
        elsewhere = Files.createDirectories(folder.resolve("some where"));
        environment.put("WASHWRIGHT_CACHE", folder.resolve("my cache").toString());
        environment.put("JAVA_HOME", JAVA_HOME.toString());
    }

    @Test
    void a_command_answers_from_any_folder_by_any_link_with_the_bytes_of_the_plain_program() throws Exception {
        List<String> plainly =
                new ArrayList<>(List.of(JAVA_HOME.resolve("bin/java").toString(), "-jar", PACKAGED.toString()));
        plainly.addAll(ASSESS);
        Ran plain = run(Path.of(""), plainly);
        assertEquals(0, plain.code(), plain.err());
        Ran launched = launch(ASSESS);
        assertEquals(0, launched.code(), launched.err());
        assertArrayEquals(plain.out(), launched.out());
        assertEquals("", launched.err());
    }

    @Test
    void an_archive_is_made_for_its_user_alone_and_a_damaged_one_does_no_harm() throws Exception {
        // Java 17 shares no classes of a place with a space in its name; there commands run as without an archive.
        copy(PACKAGED.getParent(), folder.resolve("app"));
        launcher = folder.resolve("app/washwright");
        byte[] before = launch(ASSESS).out();
        Ran prepared = launch(List.of("prepare"));
        assertEquals(0, prepared.code(), prepared.err());
        Path archive = archive();
        assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(archive.getParent())));
        assertTrue(Files.size(archive) > 1_000_000);
        environment.put("WASHWRIGHT_JAVA_OPTS", "-Xlog:class+load:file=" + folder.getFileName() + ".log");
        assertArrayEquals(before, launch(ASSESS).out());
        String loaded = Files.readString(elsewhere.resolve(folder.getFileName() + ".log"));
        assertTrue(
                loaded.contains("org.washwright.cli.Assess source: shared objects file (top)"),
                () -> loaded.lines()
                        .filter(l -> l.contains("washwright"))
                        .findFirst()
                        .orElse("nothing of ours"));
        environment.remove("WASHWRIGHT_JAVA_OPTS");
        byte[] sound = Files.readAllBytes(archive);
        archive.toFile().setWritable(true);
        byte[] torn = sound.clone();
        Arrays.fill(torn, torn.length / 3, torn.length / 2, (byte) 0x5A);
        for (byte[] damaged : List.of(new byte[0], Arrays.copyOf(sound, sound.length / 3), torn)) {
            Files.write(archive, damaged);
            Ran ran = launch(ASSESS);
            assertEquals(0, ran.code(), ran.err());
            assertArrayEquals(before, ran.out());
            assertEquals("", ran.err());
        }
    }

    @Test
    void a_java_that_says_nothing_of_itself_or_is_old_runs_the_program_plainly() throws Exception {
        Path java = recorder("");
        assertEquals(List.of("-jar", program("quarkus-run.jar"), "assess", "a b"), started("assess", "a b"));
        Files.writeString(java.resolve("release"), "JAVA_VERSION=\"11.0.2\"\n");
        assertEquals(List.of("-jar", program("quarkus-run.jar"), "assess", "a b"), started("assess", "a b"));
    }

    @Test
    void the_service_is_started_plainly_with_the_options_of_the_environment() throws Exception {
        recorder("JAVA_VERSION=\"17.0.1\"\n");
        environment.put("WASHWRIGHT_JAVA_OPTS", "-Xmx1g -Da=b");
        assertEquals(List.of("-Xmx1g", "-Da=b", "-jar", program("quarkus-run.jar")), started());
        assertEquals(List.of("-Xmx1g", "-Da=b", "-jar", program("quarkus-run.jar"), "serve"), started("serve"));
        assertTrue(started("check").containsAll(List.of("-Xmx1g", "-Da=b", "org.washwright.cli.HeadlessMain")));
    }

    @Test
    void many_tasks_get_the_full_compiler_and_the_usual_collector() throws Exception {
        recorder("JAVA_VERSION=\"17.0.1\"\n");
        assertTrue(started("assess", "x").containsAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC")));
        assertFalse(started("bulk", "x").toString().contains("Tiered"));
        assertFalse(started("bulk", "x").toString().contains("SerialGC"));
    }

    @Test
    void an_archive_in_a_folder_that_others_may_enter_or_of_other_jars_is_not_used() throws Exception {
        recorder("JAVA_VERSION=\"17.0.1\"\n");
        // The recorder makes no archive; what stands there is enough to see whether it would be used.
        Path start = Files.createDirectories(folder.resolve("my cache/start"));
        Files.setPosixFilePermissions(start, PosixFilePermissions.fromString("rwx------"));
        started("prepare");
        Files.write(start.resolve(archiveName()), new byte[] {1});
        Files.writeString(start.resolve(archiveName() + ".sum"), "0 0");
        assertFalse(usesArchive(), "a wrong sum");
        Ran sum = run(start, List.of("sh", "-c", "cksum <'" + archiveName() + "' >'" + archiveName() + ".sum'"));
        assertEquals(0, sum.code(), sum.err());
        assertTrue(usesArchive());
        Files.setPosixFilePermissions(start, PosixFilePermissions.fromString("rwxr-xr-x"));
        assertFalse(usesArchive(), "a folder open to others");
        Files.setPosixFilePermissions(start, PosixFilePermissions.fromString("rwx------"));
        Files.write(folder.resolve("my programs/the app/app/extra.jar"), new byte[] {1, 2, 3});
        assertFalse(usesArchive(), "other jars");
    }

    @Test
    void without_any_java_the_reason_is_told() throws Exception {
        environment.put("JAVA_HOME", folder.resolve("no java").toString());
        Ran ran = launch(List.of("assess", "x"));
        assertEquals(69, ran.code());
        assertTrue(ran.err().contains("no java/bin/java. Install Java 17 or later"), ran.err());
    }

    private boolean usesArchive() throws Exception {
        return started("assess", "x").stream().anyMatch(a -> a.startsWith("-XX:SharedArchiveFile="));
    }

    /** The name that the launcher gives: the recorder was asked to make it. */
    private String archiveName() throws IOException {
        return Files.readAllLines(folder.resolve("archive")).get(0);
    }

    private String program(String file) throws IOException {
        return folder.resolve("my programs/the app").toRealPath().resolve(file).toString();
    }

    /** A Java that only writes down what it was started with. */
    private Path recorder(String release) throws IOException {
        Path java = folder.resolve("a java");
        Path bin = Files.createDirectories(java.resolve("bin"));
        Path script = bin.resolve("java");
        Files.writeString(
                script,
                "#!/bin/sh\nfor a in \"$@\"; do\n  printf '%s\\n' \"$a\"\n  case $a in -XX:ArchiveClassesAtExit=*)\n"
                        + "    a=${a##*/}; printf '%s\\n' \"${a%.*}\" >'" + folder.resolve("archive") + "' ;;\n  esac\n"
                        + "done >'" + folder.resolve("started") + "'\n");
        Files.setPosixFilePermissions(script, PosixFilePermissions.fromString("rwxr-xr-x"));
        if (!release.isEmpty()) {
            Files.writeString(java.resolve("release"), release);
        }
        environment.put("JAVA_HOME", java.toString());
        return java;
    }

    private List<String> started(String... arguments) throws Exception {
        Ran ran = launch(List.of(arguments));
        assertEquals(0, ran.code(), ran.err());
        return Files.readAllLines(folder.resolve("started"));
    }

    private Path archive() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("my cache/start"))) {
            return files.filter(f -> f.toString().endsWith(".jsa")).findFirst().orElseThrow();
        }
    }

    private Ran launch(List<String> arguments) throws Exception {
        List<String> command = new ArrayList<>(List.of(launcher.toString()));
        command.addAll(arguments);
        return run(elsewhere, command);
    }

    private Ran run(Path where, List<String> command) throws Exception {
        Path out = folder.resolve("out");
        Path err = folder.resolve("err");
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(where.toAbsolutePath().toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().keySet().removeIf(k -> k.startsWith("WASHWRIGHT_"));
        builder.environment().putAll(environment);
        Process process = builder.start();
        assertTrue(process.waitFor(3, TimeUnit.MINUTES));
        return new Ran(process.exitValue(), Files.readAllBytes(out), Files.readString(err));
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : all.toList()) {
                Path target = to.resolve(from.relativize(path).toString());
                if (Files.isDirectory(path)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(path, target, java.nio.file.StandardCopyOption.COPY_ATTRIBUTES);
                }
            }
        }
    }
}
