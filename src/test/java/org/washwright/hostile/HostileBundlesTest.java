package org.washwright.hostile;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.exchange.EditionFiles;

/** A bundle can lead nowhere, hide no file behind another, and unpack to no more than an edition may hold. */
class HostileBundlesTest {

    /** Unpacking what is allowed takes a blink, unpacking all of it many seconds. */
    private static final Duration HANGS = Duration.ofSeconds(20);

    private static final String RULE = "rules/a.drl";

    /** Names of a bundle's entries, and what has to be said of them. */
    record Names(Message message, List<String> names) {}

    static Stream<Names> names() {
        return Stream.of(
                new Names(Message.PATH_ESCAPE, List.of("../rules/a.drl")),
                new Names(Message.PATH_ESCAPE, List.of("rules/../../a.drl")),
                new Names(Message.PATH_ESCAPE, List.of("rules/..")),
                new Names(Message.PATH_ESCAPE, List.of("/rules/a.drl")),
                new Names(Message.PATH_ESCAPE, List.of("//server/rules/a.drl")),
                new Names(Message.PATH_ESCAPE, List.of("C:/rules/a.drl")),
                new Names(Message.PATH_ESCAPE, List.of("rules\\a.drl")),
                new Names(Message.PATH_ESCAPE, List.of("..\\a.drl")),
                new Names(Message.PATH_ESCAPE, List.of("rules/a.drl:stream")),
                new Names(Message.FILE_NAME, List.of("rules/a.drl\u0000.csv")),
                new Names(Message.FILE_NAME, List.of("rules/a\nforged.drl")),
                new Names(Message.FILE_NAME, List.of("rules/\u202elrd.a")),
                new Names(Message.FILE_NAME, List.of("rules/\u0430.drl")),
                new Names(Message.FILE_NAME, List.of("rules/a.drl ")),
                new Names(Message.FILE_NAME, List.of("rules//a.drl")),
                new Names(Message.FILE_NAME, List.of("rules/a/b/c/d/e/f/g.drl")),
                new Names(Message.FILE_NAME, List.of("rules/" + "a".repeat(5000) + ".drl")),
                new Names(Message.FILE_NAME, List.of("META-INF/services/java.lang.Runnable")),
                new Names(Message.FILE_NAME, List.of("org/washwright/hostile/Canary.class")),
                new Names(Message.FILE_NAME, List.of("META-INF/kmodule.xml")),
                new Names(Message.DUPLICATE_ID, List.of(RULE, "rules/A.drl")),
                new Names(Message.DUPLICATE_ID, List.of("x/rules/a.drl", "y/rules/a.drl")),
                new Names(Message.DUPLICATE_ID, List.of("edition.yaml", "x/edition.yaml")));
    }

    @ParameterizedTest
    @MethodSource("names")
    void aNameThatLeadsOutHidesOrMeansNothingIsRefused(Names names) {
        Diagnostics diagnostics = new Diagnostics();
        EditionFiles.ofZip(zip(names.names(), "x".getBytes(UTF_8)), diagnostics);
        List<Diagnostic> found = diagnostics.all();
        assertTrue(found.stream().anyMatch(d -> d.message() == names.message()), found::toString);
        for (Diagnostic d : found) {
            assertFalse(
                    d.value().isBlank()
                            || d.advice().isBlank()
                            || d.place().file().isBlank(),
                    d.toString());
            assertTrue(d.toString().chars().noneMatch(Character::isISOControl), "a forged line: " + d);
            assertTrue(d.toString().length() < 500, d.toString());
        }
    }

    @Test
    void theSameNameTwiceIsRefusedAndTheFirstFileStays() {
        byte[] once = zip(List.of(RULE, "rules/b.drl"), "x".getBytes(UTF_8));
        byte[] twice = new String(once, StandardCharsets.ISO_8859_1)
                .replace("rules/b.drl", RULE)
                .getBytes(StandardCharsets.ISO_8859_1);
        Diagnostics diagnostics = new Diagnostics();
        EditionFiles files = EditionFiles.ofZip(twice, diagnostics);
        assertEquals(Message.DUPLICATE_ID, diagnostics.all().get(0).message());
        assertEquals(1, files.files().size());
    }

    @Test
    void whatIsPassedOverIsNotUnpackedWithoutEndEither() {
        for (String name : List.of("rules/a.drl", ".hidden", "README.md", "__MACOSX/x", "folder/")) {
            byte[] bomb = zip(List.of(name), new byte[40_000_000]);
            assertTrue(bomb.length < 100_000, "a small bundle");
            Diagnostics diagnostics = new Diagnostics();
            assertTimeoutPreemptively(HANGS, () -> EditionFiles.ofZip(bomb, diagnostics));
            assertEquals(Message.TOO_LARGE, diagnostics.all().get(0).message(), name);
        }
    }

    @Test
    void aBundleInABundleIsNoFileOfAnEdition() {
        byte[] inner = zip(List.of(RULE), "x".getBytes(UTF_8));
        Diagnostics diagnostics = new Diagnostics();
        EditionFiles files = EditionFiles.ofZip(zip(List.of("rules/inner.zip"), inner), diagnostics);
        assertTrue(files.files().isEmpty());
        assertEquals(Message.FILE_NAME, diagnostics.all().get(0).message());
    }

    private static byte[] zip(List<String> names, byte[] content) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        names.forEach(n -> files.put(n, content));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                ZipEntry entry = new ZipEntry(file.getKey());
                zip.putNextEntry(entry);
                zip.write(file.getValue());
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
