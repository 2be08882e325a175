package org.washwright.app;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.HexFormat;

/**
 * The folder that holds everything the service keeps, locked for as long as this process lives.
 *
 * <p>The lock is one of the operating system: it goes with the process, also when that is killed, and is not inherited
 * by the database server the process starts.
 */
final class DataFolder implements AutoCloseable {
    private final Path root;
    private final FileChannel channel;

    private DataFolder(Path root, FileChannel channel) {
        this.root = root;
        this.channel = channel;
    }

    /** Creates the folder if needed and locks it, or says who holds it and what to do. */
    static DataFolder lock(Path folder) {
        try {
            createPrivate(folder);
            Path root = folder.toRealPath();
            FileChannel channel = FileChannel.open(
                    root.resolve("washwright.lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (!tryLock(channel)) {
                channel.close();
                throw new StartFailure("The data folder " + root + " is in use by another running Washwright. Stop that"
                        + " one first, or give this one its own folder with -Dwashwright.data-dir=FOLDER.");
            }
            return new DataFolder(root, channel);
        } catch (IOException e) {
            throw new StartFailure(
                    "The data folder " + folder + " cannot be used (" + e + "). Check that it is a folder this user may"
                            + " write to, or choose another with -Dwashwright.data-dir=FOLDER.",
                    e);
        }
    }

    /** Where the database cluster lies. */
    Path cluster() {
        return root.resolve("database");
    }

    /** Whether no cluster has been made here yet. */
    boolean isNew() {
        return !Files.exists(cluster().resolve("postgresql.conf"));
    }

    Path passwordFile() {
        return root.resolve("database.password");
    }

    Path root() {
        return root;
    }

    /** The database password of this folder: made at random at the first start, readable by its owner only. */
    String databasePassword() {
        Path file = passwordFile();
        try {
            if (!Files.exists(file)) {
                byte[] secret = new byte[24];
                new SecureRandom().nextBytes(secret);
                createPrivateFile(file);
                Files.writeString(file, HexFormat.of().formatHex(secret), StandardCharsets.US_ASCII);
            }
            return Files.readString(file, StandardCharsets.US_ASCII).strip();
        } catch (IOException e) {
            throw new StartFailure(
                    "The database password in " + file + " cannot be read (" + e + "). Check who owns that file.", e);
        }
    }

    /** Gives the folder free again. */
    @Override
    public void close() throws IOException {
        channel.close();
    }

    private static boolean tryLock(FileChannel channel) throws IOException {
        try {
            FileLock lock = channel.tryLock();
            return lock != null;
        } catch (OverlappingFileLockException e) {
            return false;
        }
    }

    static void createPrivate(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            return;
        }
        if (posix()) {
            Files.createDirectories(
                    folder, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
        } else {
            Files.createDirectories(folder);
        }
    }

    private static void createPrivateFile(Path file) throws IOException {
        if (posix()) {
            Files.createFile(file, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
        } else {
            Files.createFile(file);
        }
    }

    private static boolean posix() {
        return FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
    }
}
