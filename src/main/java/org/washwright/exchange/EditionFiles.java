package org.washwright.exchange;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;

/**
 * The raw files of an edition by relative name, from a folder, a zip bundle or a database.
 *
 * @param files bytes by name, in order of the names
 */
public record EditionFiles(Map<String, byte[]> files) {

    /** Most bytes of all files together. */
    public static final long MAX_TOTAL = 16_000_000;

    /** Most files. */
    public static final int MAX_FILES = 500;

    /** Time written into bundles; a local one, because zip holds no zone and the same files give the same bytes anywhere. */
    private static final LocalDateTime BUNDLED = LocalDateTime.of(1980, 1, 2, 0, 0);

    private static final Pattern NAME = Pattern.compile(
            "(edition|grading|assumptions|known-findings|grid)\\.yaml|(catalogue|trees|cases)/[A-Za-z0-9._-]{1,80}\\.yaml"
                    + "|tables/[A-Za-z0-9._-]{1,80}\\.csv|rules/(?:[A-Za-z0-9._-]{1,80}/){0,4}[A-Za-z0-9._-]{1,80}\\.drl");

    private static final int END_SIGNATURE = 0x06054b50;
    private static final int END_LENGTH = 22;
    private static final int END_ENTRIES = 10;

    /** Keeps an ordered copy. */
    public EditionFiles {
        files = Collections.unmodifiableMap(new TreeMap<>(files));
    }

    /** Reads a folder. Hidden files and readme texts are passed over, other strangers reported. */
    public static EditionFiles ofFolder(Path folder, Diagnostics diagnostics) throws IOException {
        Map<String, byte[]> files = new TreeMap<>();
        long total = 0;
        List<Path> paths;
        try (Stream<Path> walk = Files.walk(folder, 8)) {
            paths = walk.filter(Files::isRegularFile)
                    .sorted()
                    .limit(MAX_FILES + 1L)
                    .toList();
        }
        for (Path path : paths) {
            String name = folder.relativize(path).toString().replace('\\', '/');
            if (isPassedOver(name)) {
                continue;
            }
            total += Files.size(path);
            if (!admit(name, files.size(), total, diagnostics)) {
                continue;
            }
            files.put(name, Files.readAllBytes(path));
        }
        return new EditionFiles(files);
    }

    /** Reads a zip bundle; one folder around everything is passed over. */
    public static EditionFiles ofZip(byte[] zip, Diagnostics diagnostics) {
        Map<String, byte[]> files = new TreeMap<>();
        Set<String> names = new HashSet<>();
        long total = 0;
        int seen = 0;
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip), StandardCharsets.UTF_8)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                if (++seen > MAX_FILES * 2) {
                    diagnostics.add(Message.TOO_LARGE, Place.ofFile("bundle"), seen + " entries", MAX_FILES + " files");
                    break;
                }
                String name = entry.getName();
                byte[] bytes = bounded(in, MAX_TOTAL - total);
                total += bytes.length;
                if (total <= MAX_TOTAL && (entry.isDirectory() || isPassedOver(name))) {
                    // Its bytes count all the same: they had to be unpacked to come to the next file.
                    continue;
                }
                if (!admit(stripFolder(name), files.size(), total, diagnostics)) {
                    if (total > MAX_TOTAL) {
                        break;
                    }
                    continue;
                }
                if (!names.add(stripFolder(name).toLowerCase(Locale.ROOT))) {
                    // Also where only capitals differ: such files are one file on many machines.
                    diagnostics.add(Message.DUPLICATE_ID, Place.ofFile(name), name, "file name", "the same bundle");
                    continue;
                }
                files.put(stripFolder(name), bytes);
            }
            if (seen == 0) {
                diagnostics.add(Message.BROKEN_ZIP, Place.ofFile("bundle"), "", "it holds no files");
            } else if (listed(zip) != seen && !diagnostics.hasErrors()) {
                // A stream ends without a word where a bundle was cut between two files; only its list tells.
                diagnostics.add(Message.BROKEN_ZIP, Place.ofFile("bundle"), "", "it does not hold the files it lists");
            }
        } catch (ZipException | IllegalArgumentException e) {
            diagnostics.add(Message.BROKEN_ZIP, Place.ofFile("bundle"), "", String.valueOf(e.getMessage()));
        } catch (IOException e) {
            diagnostics.add(Message.BROKEN_ZIP, Place.ofFile("bundle"), "", "it ends too early");
        }
        return new EditionFiles(files);
    }

    /** Number of entries by the list at the end of a zip (APPNOTE 6.3.10, section 4.3.16); -1 when there is none. */
    private static int listed(byte[] zip) {
        ByteBuffer buffer = ByteBuffer.wrap(zip).order(ByteOrder.LITTLE_ENDIAN);
        for (int at = zip.length - END_LENGTH; at >= 0; at--) {
            if (buffer.getInt(at) == END_SIGNATURE) {
                return Short.toUnsignedInt(buffer.getShort(at + END_ENTRIES));
            }
        }
        return -1;
    }

    private static byte[] bounded(InputStream in, long most) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        byte[] buffer = new byte[8192];
        for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
            out.write(buffer, 0, n);
            if (out.size() > most) {
                break;
            }
        }
        return out.toByteArray();
    }

    private static boolean isPassedOver(String name) {
        String last = name.substring(name.lastIndexOf('/') + 1);
        return last.startsWith(".") && !last.startsWith("..")
                || last.equalsIgnoreCase("README.md")
                || name.startsWith("__MACOSX/");
    }

    private static boolean leadsOut(String name) {
        return name.contains("..") || name.startsWith("/") || name.contains("\\") || name.contains(":");
    }

    private static String stripFolder(String name) {
        if (leadsOut(name)) {
            return name;
        }
        int slash = name.indexOf('/');
        String rest = slash < 0 ? "" : name.substring(slash + 1);
        return !NAME.matcher(name).matches() && NAME.matcher(rest).matches() ? rest : name;
    }

    /** A name as it may stand in a message: it can forge no lines there and fill no page. */
    private static String shown(String name) {
        String clean = name.codePoints()
                .filter(c -> !Character.isISOControl(c))
                .limit(120)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
        return clean.isEmpty() ? "bundle" : clean;
    }

    private static boolean admit(String name, int count, long total, Diagnostics diagnostics) {
        Place place = Place.ofFile(shown(name));
        if (total > MAX_TOTAL) {
            diagnostics.add(Message.TOO_LARGE, place, total + " bytes", MAX_TOTAL + " bytes");
            return false;
        }
        if (leadsOut(name)) {
            diagnostics.add(Message.PATH_ESCAPE, place, name);
            return false;
        }
        if (!NAME.matcher(name).matches()) {
            diagnostics.add(Message.FILE_NAME, place, name);
            return false;
        }
        if (count >= MAX_FILES) {
            diagnostics.add(Message.TOO_LARGE, place, (count + 1) + " files", MAX_FILES + " files");
            return false;
        }
        return true;
    }

    /** Checks the name and size of one file, as one that is to join an edition. */
    public static void checkFile(String name, long bytes, Diagnostics diagnostics) {
        // What is refused stands in the diagnostics.
        boolean ignored = admit(name, 0, bytes, diagnostics);
    }

    /** Checks that the files together are not too many or too large, and that no two names differ in capitals alone. */
    public void checkWhole(Diagnostics diagnostics) {
        long total = files.values().stream().mapToLong(b -> b.length).sum();
        if (total > MAX_TOTAL) {
            diagnostics.add(Message.TOO_LARGE, Place.ofFile("edition"), total + " bytes", MAX_TOTAL + " bytes");
        }
        if (files.size() > MAX_FILES) {
            diagnostics.add(Message.TOO_LARGE, Place.ofFile("edition"), files.size() + " files", MAX_FILES + " files");
        }
        Set<String> names = new HashSet<>();
        files.keySet().stream()
                .filter(name -> !names.add(name.toLowerCase(Locale.ROOT)))
                .forEach(name -> diagnostics.add(
                        Message.DUPLICATE_ID, Place.ofFile(name), name, "file name", "the same edition"));
    }

    /** The files as a zip; the same files give the same bytes. */
    public byte[] toZip() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                ZipEntry entry = new ZipEntry(file.getKey());
                entry.setTimeLocal(BUNDLED);
                zip.putNextEntry(entry);
                zip.write(file.getValue());
                zip.closeEntry();
            }
        } catch (IOException e) {
            throw new java.io.UncheckedIOException("writing to memory", e);
        }
        return out.toByteArray();
    }

    /** SHA-256 over names and bytes, each with its length before it, hexadecimal. */
    public String textHash() {
        MessageDigest digest = org.washwright.document.Hashes.digest();
        files.forEach((name, bytes) -> {
            byte[] nameBytes = name.getBytes(StandardCharsets.UTF_8);
            digest.update(
                    ByteBuffer.allocate(Integer.BYTES).putInt(nameBytes.length).array());
            digest.update(nameBytes);
            digest.update(
                    ByteBuffer.allocate(Integer.BYTES).putInt(bytes.length).array());
            digest.update(bytes);
        });
        return HexFormat.of().formatHex(digest.digest());
    }
}
