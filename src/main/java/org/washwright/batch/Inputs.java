package org.washwright.batch;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.washwright.document.Message;
import org.washwright.task.Vocabulary;

/** Tells what kind of input was named, and opens it. */
final class Inputs {

    private static final String TABLE = ".csv";

    private Inputs() {}

    static RecordSource open(String input, InputStream standard, Vocabulary vocabulary) throws BatchRefusal {
        try {
            if (input.equals(Batch.STANDARD)) {
                return new LineSource(standard, input, -1);
            }
            Path path = Path.of(input);
            if (Files.isDirectory(path) || FolderSource.isTaskFile(path)) {
                return folder(path);
            }
            long size = Files.isRegularFile(path) ? Files.size(path) : -1;
            InputStream in = Files.newInputStream(path);
            // The name alone: an input that is moved still gives the same lines.
            String name = path.getFileName().toString();
            try {
                return input.toLowerCase(Locale.ROOT).endsWith(TABLE)
                        ? new CsvSource(in, name, size, vocabulary)
                        : new LineSource(in, name, size);
            } catch (IOException | BatchRefusal e) {
                in.close();
                throw e;
            }
        } catch (IOException e) {
            throw BatchRefusal.of(Message.UNREADABLE, input);
        }
    }

    private static RecordSource folder(Path path) throws IOException, BatchRefusal {
        if (!Files.isReadable(path)) {
            throw BatchRefusal.of(Message.UNREADABLE, path.toString());
        }
        FolderSource source = FolderSource.of(path);
        if (source.isEmpty()) {
            throw BatchRefusal.of(Message.NO_TASKS, path.toString());
        }
        return source;
    }

    /** Nobody wants to lose the tasks to the answers, nor to read answers as tasks the next time. */
    static void refuseOutputThatIsInput(String input, String output) throws BatchRefusal {
        if (input.equals(Batch.STANDARD) || output.equals(Batch.STANDARD)) {
            return;
        }
        Path in = real(Path.of(input));
        Path out = real(Path.of(output));
        boolean same = in.equals(out) || in.equals(ResultFile.side(out));
        boolean amongTasks = Files.isDirectory(in) && out.startsWith(in) && FolderSource.isTaskFile(out);
        if (same || amongTasks) {
            throw BatchRefusal.of(Message.OUTPUT_IS_INPUT, output);
        }
    }

    /** The path with links followed as far as it exists. */
    private static Path real(Path path) {
        Path whole = path.toAbsolutePath().normalize();
        try {
            return whole.toRealPath();
        } catch (IOException e) {
            // What does not exist yet is where it will be.
            Path parent = whole.getParent();
            return parent == null ? whole : real(parent).resolve(whole.getFileName());
        }
    }

    /** Closes what was opened for a run that does not begin. */
    static void close(RecordSource source, BatchRefusal reason) {
        try {
            source.close();
        } catch (IOException e) {
            reason.addSuppressed(e);
        }
    }
}
