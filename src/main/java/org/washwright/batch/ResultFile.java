package org.washwright.batch;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import org.washwright.document.Message;

/**
 * Lines to a file that a later run takes up where this one ends. A file beside it, {@code NAME.run}, says what was asked.
 *
 * <p>Each line is handed to the operating system whole as soon as it is its turn, so a killed run loses no line that was
 * written. The disk is told to keep them when the run ends; a machine that loses power may lose the last ones, which the
 * next run finds missing and answers again.
 */
final class ResultFile implements ResultSink {

    private static final String SIDE = ".run";

    private final Path file;
    private final FileChannel channel;
    private final KeptLines kept;
    private boolean reading = true;

    private ResultFile(Path file, FileChannel channel, KeptLines kept) {
        this.file = file;
        this.channel = channel;
        this.kept = kept;
    }

    /** The file beside an output that says what was asked. */
    static Path side(Path file) {
        return file.resolveSibling(file.getFileName() + SIDE);
    }

    /** What was asked of the run that wrote a file; empty when that can't be told. */
    static Optional<RunIdentity> identity(Path file) throws IOException {
        try {
            return RunIdentity.read(Files.readAllBytes(side(file)));
        } catch (NoSuchFileException e) {
            return Optional.empty();
        }
    }

    /**
     * Opens a file to write, or to write on.
     *
     * @param again leave nothing of an earlier run
     */
    static ResultFile open(Path file, RunIdentity identity, boolean again) throws BatchRefusal {
        try {
            FileChannel channel = FileChannel.open(
                    file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
            try {
                lock(channel, file);
                begin(channel, file, identity, again);
                return new ResultFile(file, channel, KeptLines.of(file));
            } catch (IOException | BatchRefusal e) {
                channel.close();
                throw e;
            }
        } catch (IOException e) {
            throw unwritable(file.toString(), e);
        }
    }

    static BatchRefusal unwritable(String file, IOException e) {
        return BatchRefusal.of(Message.OUTPUT_UNWRITABLE, file, reason(e));
    }

    private static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "access is denied";
        }
        return e instanceof NoSuchFileException ? "there is no such folder" : String.valueOf(e.getMessage());
    }

    private static void lock(FileChannel channel, Path file) throws IOException, BatchRefusal {
        FileLock lock;
        try {
            lock = channel.tryLock();
        } catch (OverlappingFileLockException e) {
            lock = null;
        }
        if (lock == null) {
            throw BatchRefusal.of(Message.OUTPUT_BUSY, file.toString());
        }
    }

    private static void begin(FileChannel channel, Path file, RunIdentity identity, boolean again)
            throws IOException, BatchRefusal {
        Optional<RunIdentity> before = again ? Optional.empty() : identity(file);
        if (again) {
            channel.truncate(0);
        } else if (channel.size() > 0) {
            RunIdentity asked = before.orElseThrow(() -> BatchRefusal.of(
                    Message.OUTPUT_STRANGE, file.toString(), side(file).toString()));
            if (!asked.differences(identity).isEmpty()) {
                throw BatchRefusal.of(
                        Message.OUTPUT_OTHER_REQUEST, file.toString(), String.join(", ", asked.differences(identity)));
            }
            return;
        }
        // Whole or not at all: a kill between the two must not leave half of what was asked.
        Path draft = side(file).resolveSibling(side(file).getFileName() + ".new");
        Files.write(draft, identity.bytes());
        Files.move(draft, side(file), StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    }

    @Override
    public String name() {
        return file.toString();
    }

    @Override
    public Optional<Kept> kept() throws IOException {
        return kept.next();
    }

    @Override
    public void write(byte[] line) throws IOException {
        if (reading) {
            // What is torn or none of ours goes only now: a run that is refused changes nothing.
            channel.truncate(kept.end());
            channel.position(kept.end());
            reading = false;
        }
        ByteBuffer buffer = ByteBuffer.wrap(line);
        while (buffer.hasRemaining()) {
            channel.write(buffer);
        }
    }

    @Override
    public void finish() throws IOException {
        if (reading) {
            channel.truncate(kept.end());
        }
        channel.force(true);
    }

    @Override
    public void close() throws IOException {
        kept.close();
        channel.close();
    }
}
