package org.washwright.drools;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Stored code is used only when it is certain that this program put it there, for this content. */
class UnitStoreTest {

    private static final CompiledUnit UNIT =
            new CompiledUnit(List.of("a.Model"), Map.of("a.Model", new byte[] {1, 2, 3}, "a.Other", new byte[] {4}));

    @TempDir
    Path temp;

    @Test
    void whatIsKeptComesBack() {
        store().save("one", UNIT);
        CompiledUnit back = store().load("one").orElseThrow();
        assertEquals(UNIT.models(), back.models());
        assertArrayEquals(UNIT.bytes(), back.bytes());
        assertTrue(store().load("two").isEmpty());
    }

    @Test
    void folderAndFilesAreTheUsersAlone() throws IOException {
        store().save("one", UNIT);
        assertEquals("rwx------", rights(folder()));
        try (Stream<Path> files = Files.list(folder())) {
            files.forEach(f -> assertEquals("rw-------", rights(f), f.toString()));
        }
    }

    @Test
    void everyChangedByteAndEveryCutIsNoticed() throws IOException {
        store().save("one", UNIT);
        Path file = folder().resolve("one.unit");
        byte[] whole = Files.readAllBytes(file);
        for (int i = 0; i < whole.length; i++) {
            byte[] changed = whole.clone();
            changed[i] ^= 1;
            Files.write(file, changed);
            assertTrue(store().load("one").isEmpty(), "byte " + i);
            Files.write(file, java.util.Arrays.copyOf(whole, i));
            assertTrue(store().load("one").isEmpty(), "cut at " + i);
        }
        Files.write(file, whole);
        assertTrue(store().load("one").isPresent());
    }

    @Test
    void aSealedUnitUnderAnotherNameIsNoUnit() throws IOException {
        store().save("one", UNIT);
        Files.copy(folder().resolve("one.unit"), folder().resolve("two.unit"));
        assertTrue(store().load("two").isEmpty());
    }

    @Test
    void unitsSealedWithAnotherKeyAreNoUnits() throws IOException {
        store().save("one", UNIT);
        Files.delete(folder().resolve("key"));
        assertTrue(store().load("one").isEmpty());
        store().save("one", UNIT);
        assertTrue(store().load("one").isPresent());
    }

    @Test
    void aFolderOpenToOthersIsNoStore() throws IOException {
        store();
        for (String rights : List.of("rwxr-x---", "rwx---r-x", "rwx-w----", "rwxrwxrwx")) {
            Files.setPosixFilePermissions(folder(), PosixFilePermissions.fromString(rights));
            assertTrue(UnitStore.in(folder()).isEmpty(), rights);
        }
    }

    @Test
    void aKeyThatOthersCanReadIsNoKey() throws IOException {
        store();
        Files.setPosixFilePermissions(folder().resolve("key"), PosixFilePermissions.fromString("rw-r--r--"));
        assertTrue(UnitStore.in(folder()).isEmpty());
    }

    @Test
    void aShortKeyIsNoKey() throws IOException {
        store();
        Files.write(folder().resolve("key"), new byte[5]);
        assertTrue(UnitStore.in(folder()).isEmpty());
    }

    @Test
    void linksAreNotFollowed() throws IOException {
        store().save("one", UNIT);
        Path link = Files.createSymbolicLink(temp.resolve("link"), folder());
        assertTrue(UnitStore.in(link).isEmpty());
        Path file = folder().resolve("one.unit");
        Path moved = Files.move(file, temp.resolve("moved"));
        Files.createSymbolicLink(file, moved);
        assertTrue(store().load("one").isEmpty());
    }

    @Test
    void whatIsNoFolderOrCannotBeMadeIsNoStore() throws IOException {
        Path file = Files.createFile(temp.resolve("file"));
        assertTrue(UnitStore.in(file).isEmpty());
        assertTrue(UnitStore.in(file.resolve("below")).isEmpty());
    }

    @Test
    void theLongestUnusedUnitsGoFirst() throws IOException {
        UnitStore small = UnitStore.in(folder(), 3).orElseThrow();
        for (int i = 0; i < 3; i++) {
            small.save("u" + i, UNIT);
            Files.setLastModifiedTime(folder().resolve("u" + i + ".unit"), FileTime.fromMillis(1000L * (i + 1)));
        }
        assertTrue(small.load("u0").isPresent());
        small.save("u3", UNIT);
        assertFalse(Files.exists(folder().resolve("u1.unit")));
        assertTrue(Files.exists(folder().resolve("u0.unit")));
        assertTrue(Files.exists(folder().resolve("u3.unit")));
    }

    @Test
    void theUsersFolderIsFoundBySettingThenEnvironmentThenHome() {
        Properties settings = new Properties();
        assertTrue(UserCache.folder(settings, Map.of()).isEmpty());
        settings.setProperty("user.home", "/home/x");
        assertEquals(Optional.of(Path.of("/home/x/.cache/washwright/rules")), UserCache.folder(settings, Map.of()));
        Map<String, String> environment = Map.of("XDG_CACHE_HOME", "/var/x");
        assertEquals(Optional.of(Path.of("/var/x/washwright/rules")), UserCache.folder(settings, environment));
        environment = Map.of("XDG_CACHE_HOME", "/var/x", "WASHWRIGHT_CACHE", "/fast");
        assertEquals(Optional.of(Path.of("/fast/rules")), UserCache.folder(settings, environment));
        settings.setProperty("washwright.cache-dir", "/set");
        assertEquals(Optional.of(Path.of("/set/rules")), UserCache.folder(settings, environment));
    }

    private Path folder() {
        return temp.resolve("cache");
    }

    private UnitStore store() {
        return UnitStore.in(folder()).orElseThrow();
    }

    private static String rights(Path path) {
        try {
            return PosixFilePermissions.toString(Files.getPosixFilePermissions(path, LinkOption.NOFOLLOW_LINKS));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
