package org.washwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What the launcher starts, seen by a Java that only writes down its arguments. The real one is in {@link LauncherIT}. */
@Timeout(60)
class LauncherTest {

    private static final String HEADLESS = "org.washwright.cli.Headless";

    @TempDir
    private Path folder;

    private Path home;
    private Path launcher;
    private Path cache;
    private final Map<String, String> environment = new TreeMap<>();

    private record Ran(int code, String err) {}

    @BeforeEach
    void a_program_at_a_place_with_spaces_called_by_links() throws IOException {
        home = Files.createDirectories(folder.resolve("my programs/the app")).toRealPath();
        for (String jar :
                List.of("quarkus-run.jar", "app/a.jar", "lib/main/m 1.jar", "lib/main/m2.jar", "lib/boot/b.jar")) {
            Files.createDirectories(home.resolve(jar).getParent());
            Files.write(home.resolve(jar), new byte[] {1});
        }
        executable(home.resolve("washwright"), Files.readString(Path.of("src/main/launcher/washwright")));
        Path bin = Files.createDirectories(folder.resolve("my bin"));
        Files.createSymbolicLink(bin.resolve("one"), home.resolve("washwright"));
        launcher = Files.createSymbolicLink(bin.resolve("two"), Path.of("one"));
        cache = folder.resolve("my cache");
        environment.put("WASHWRIGHT_CACHE", cache.toString());
        environment.put("JAVA_HOME", folder.resolve("a java").toString());
        // Asked for an archive it makes some file, so that one can see what becomes of it.
        executable(
                folder.resolve("a java/bin/java"),
                "#!/bin/sh\nfor a in \"$@\"; do\n  printf '%s\\n' \"$a\"\n"
                        + "  case $a in -XX:ArchiveClassesAtExit=*) echo classes >\"${a#*=}\" ;; esac\n"
                        + "done >'" + folder.resolve("started") + "'\n");
    }

    @Test
    void a_command_gets_all_jars_in_a_fixed_order_and_its_arguments_as_they_are() throws Exception {
        List<String> started = started("assess", "a b", "*", "");
        String classPath = String.join(
                ":",
                Stream.of("app/a.jar", "lib/main/m 1.jar", "lib/main/m2.jar", "lib/boot/b.jar")
                        .map(j -> home.resolve(j).toString())
                        .toList());
        assertEquals(
                List.of("-cp", classPath, HEADLESS, "assess", "a b", "*", ""),
                started.subList(started.indexOf("-cp"), started.size()));
    }

    @Test
    void the_service_is_started_plainly_with_the_options_of_the_environment() throws Exception {
        environment.put("WASHWRIGHT_JAVA_OPTS", "-Xmx1g -Da=b");
        List<String> plain = List.of(
                "-Xmx1g", "-Da=b", "-jar", home.resolve("quarkus-run.jar").toString());
        assertEquals(plain, started());
        assertEquals(plain, started("serve").subList(0, 4));
        assertTrue(started("check").containsAll(List.of("-Xmx1g", "-Da=b", HEADLESS)));
    }

    @Test
    void a_program_that_is_not_whole_is_started_plainly() throws Exception {
        Files.delete(home.resolve("lib/boot/b.jar"));
        assertEquals(
                List.of("-jar", home.resolve("quarkus-run.jar").toString(), "assess", "x"), started("assess", "x"));
    }

    @Test
    void many_tasks_get_the_thorough_compiler_and_the_usual_collector() throws Exception {
        assertTrue(started("assess", "x").containsAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC")));
        String bulk = started("bulk", "x").toString();
        assertFalse(bulk.contains("Tiered") || bulk.contains("SerialGC"), bulk);
    }

    @Test
    void what_was_prepared_is_used_as_long_as_it_is_whole_private_and_of_these_jars() throws Exception {
        assertFalse(usesArchive(), "nothing is prepared");
        started("prepare");
        Path archive = archives().get(0);
        assertEquals("rwx------", PosixFilePermissions.toString(Files.getPosixFilePermissions(archive.getParent())));
        assertTrue(usesArchive());
        Files.writeString(archive, "clas");
        assertFalse(usesArchive(), "it was cut short");
        started("prepare");
        assertTrue(usesArchive());
        Files.setPosixFilePermissions(archive.getParent(), PosixFilePermissions.fromString("rwxr-x---"));
        assertFalse(usesArchive(), "others may look in");
        Files.setPosixFilePermissions(archive.getParent(), PosixFilePermissions.fromString("rwx------"));
        Files.write(home.resolve("app/a.jar"), new byte[] {1, 2});
        assertFalse(usesArchive(), "a jar is another");
    }

    @Test
    void preparing_again_after_a_build_leaves_no_archive_of_the_build_before() throws Exception {
        started("prepare");
        Files.write(home.resolve("app/a.jar"), new byte[] {1, 2});
        started("prepare");
        assertEquals(1, archives().size());
        assertTrue(usesArchive());
    }

    @Test
    void a_cache_that_others_may_enter_is_refused_with_that_reason() throws Exception {
        Path classes = Files.createDirectories(cache.resolve("classes"));
        Files.setPosixFilePermissions(classes, PosixFilePermissions.fromString("rwxrwxrwx"));
        Ran ran = launch("prepare");
        assertEquals(69, ran.code());
        assertTrue(ran.err().contains("is open to others"), ran.err());
    }

    @Test
    void without_java_or_without_the_program_the_reason_is_told() throws Exception {
        environment.put("JAVA_HOME", folder.resolve("nowhere").toString());
        assertEquals(69, launch("assess", "x").code());
        assertTrue(launch("assess", "x").err().contains("install Java 17 or later"));
        Files.delete(home.resolve("quarkus-run.jar"));
        assertEquals(69, launch("assess", "x").code());
        assertTrue(launch("assess", "x").err().contains("mvn package"));
    }

    private boolean usesArchive() throws Exception {
        return started("assess", "x").stream().anyMatch(a -> a.startsWith("-XX:SharedArchiveFile="));
    }

    private List<Path> archives() throws IOException {
        try (Stream<Path> files = Files.list(cache.resolve("classes"))) {
            return files.filter(f -> f.toString().endsWith(".jsa")).toList();
        }
    }

    private static void executable(Path file, String text) throws IOException {
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    private List<String> started(String... arguments) throws Exception {
        Ran ran = launch(arguments);
        assertEquals(0, ran.code(), ran.err());
        assertEquals("", ran.err());
        return Files.readAllLines(folder.resolve("started"));
    }

    private Ran launch(String... arguments) throws Exception {
        List<String> command = new ArrayList<>(List.of(launcher.toString()));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(Files.createDirectories(folder.resolve("some where")).toFile())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(folder.resolve("err").toFile());
        builder.environment().keySet().removeIf(k -> k.startsWith("WASHWRIGHT_"));
        builder.environment().putAll(environment);
        Process process = builder.start();
        assertTrue(process.waitFor(30, TimeUnit.SECONDS));
        return new Ran(process.exitValue(), Files.readString(folder.resolve("err")));
    }
}
