package org.washwright.drools;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** A folder of which it is certain that nobody but its user reads or writes it. */
final class PrivateFolder {

    private static final Set<PosixFilePermission> FOLDER = PosixFilePermissions.fromString("rwx------");
    private static final Set<PosixFilePermission> FILE = PosixFilePermissions.fromString("rw-------");
    private static final SecureRandom RANDOM = new SecureRandom();

    private final Path path;

    private PrivateFolder(Path path) {
        this.path = path;
    }

    /**
     * The folder, made when it is missing; empty when it is a link, belongs to somebody else or is open to others.
     *
     * @throws IOException when it can't be made or written
     */
    static Optional<PrivateFolder> at(Path path) throws IOException {
        Path folder = path.toAbsolutePath();
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            Files.createDirectories(folder.getParent());
            try {
                Files.createDirectory(folder, PosixFilePermissions.asFileAttribute(FOLDER));
            } catch (FileAlreadyExistsException e) {
                // Another process was first; what it made is looked at like any other.
            }
        }
        PrivateFolder made = new PrivateFolder(folder);
        return made.isPrivate() ? Optional.of(made) : Optional.empty();
    }

    private boolean isPrivate() throws IOException {
        if (!Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)
                || !FOLDER.containsAll(Files.getPosixFilePermissions(path, LinkOption.NOFOLLOW_LINKS))) {
            return false;
        }
        // Whose we are shows best on a file that we make; a name in the environment could say anything.
        Path probe = create("probe", new byte[0]);
        try {
            return Files.getOwner(path, LinkOption.NOFOLLOW_LINKS).equals(Files.getOwner(probe));
        } finally {
            Files.delete(probe);
        }
    }

    /** True when there is anything of this name. */
    boolean has(String name) {
        return Files.exists(path.resolve(name), LinkOption.NOFOLLOW_LINKS);
    }

    /** The bytes of a file with no access for others; empty when there is none of at most this size. */
    Optional<byte[]> read(String name, long most) throws IOException {
        Path file = path.resolve(name);
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                || !FILE.containsAll(Files.getPosixFilePermissions(file, LinkOption.NOFOLLOW_LINKS))
                || Files.size(file) > most) {
            return Optional.empty();
        }
        Files.setLastModifiedTime(file, FileTime.from(Instant.now()));
        return Optional.of(Files.readAllBytes(file));
    }

    /** Writes a file whole or not at all. */
    void write(String name, byte[] bytes) throws IOException {
        Files.move(create(name, bytes), path.resolve(name), StandardCopyOption.ATOMIC_MOVE);
    }

    /** Writes a file unless it is there already. */
    void writeOnce(String name, byte[] bytes) throws IOException {
        Path made = create(name, bytes);
        try {
            Files.createLink(path.resolve(name), made);
        } catch (FileAlreadyExistsException e) {
            // What is there stays; that was asked.
        } finally {
            Files.delete(made);
        }
    }

    private Path create(String name, byte[] bytes) throws IOException {
        Path file = path.resolve(name + "." + Long.toHexString(RANDOM.nextLong()));
        try (FileChannel out = FileChannel.open(
                file,
                Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE),
                PosixFilePermissions.asFileAttribute(FILE))) {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) {
                out.write(buffer);
            }
        }
        return file;
    }

    /** Deletes the longest unused files but these until at most so many are left. */
    void trim(int most, String kept) throws IOException {
        List<Path> files = new ArrayList<>();
        try (Stream<Path> all = Files.list(path)) {
            all.filter(f -> !f.getFileName().toString().equals(kept)).forEach(files::add);
        }
        if (files.size() > most) {
            files.sort(Comparator.comparingLong(PrivateFolder::lastUsed));
            for (Path old : files.subList(0, files.size() - most)) {
                Files.deleteIfExists(old);
            }
        }
    }

    private static long lastUsed(Path file) {
        try {
            return Files.getLastModifiedTime(file).toMillis();
        } catch (IOException e) {
            // Gone meanwhile: another process trims as well.
            return 0;
        }
    }
}
