package org.washwright.rulebook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.washwright.document.Diagnostics;
import org.washwright.exchange.EditionFiles;

/** Bundles for tests: the starter rulebook with changes. */
public final class Bundle {
    private final Map<String, byte[]> files;

    private Bundle(Map<String, byte[]> files) {
        this.files = files;
    }

    /** The starter rulebook as it ships. */
    public static Bundle starter() {
        try {
            return new Bundle(new TreeMap<>(EditionFiles.ofFolder(Path.of("rules/starter"), new Diagnostics())
                    .files()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A bundle of these files. */
    public static Bundle of(EditionFiles files) {
        return new Bundle(new TreeMap<>(files.files()));
    }

    /** The same with a file added or replaced. */
    public Bundle with(String path, String text) {
        Map<String, byte[]> changed = new TreeMap<>(files);
        changed.put(path, text.getBytes(StandardCharsets.UTF_8));
        return new Bundle(changed);
    }

    /** The same without a file. */
    public Bundle without(String path) {
        Map<String, byte[]> changed = new TreeMap<>(files);
        changed.remove(path);
        return new Bundle(changed);
    }

    /** The same without the files of a folder. */
    public Bundle withoutFolder(String folder) {
        Map<String, byte[]> changed = new TreeMap<>(files);
        changed.keySet().removeIf(path -> path.startsWith(folder + "/"));
        return new Bundle(changed);
    }

    /** The text of a file. */
    public String text(String path) {
        return new String(files.get(path), StandardCharsets.UTF_8);
    }

    /** The files. */
    public EditionFiles files() {
        return new EditionFiles(files);
    }

    /** As the program writes it. */
    public byte[] zip() {
        return files().toZip();
    }

    /** A zip with one entry of any name. */
    public static byte[] zipOf(String name, String text) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.putNextEntry(new ZipEntry(name));
            zip.write(text.getBytes(StandardCharsets.UTF_8));
            zip.closeEntry();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
