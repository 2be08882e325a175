package org.washwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.rule.Edition;
import org.washwright.task.TaskReader;
import org.washwright.taskfile.TaskFile;
import org.washwright.taskfile.TaskFormat;

/** The one task that a command was given, out of a file of any kind or from standard input. */
final class TaskInput {

    private static final String STANDARD = "-";

    private TaskInput() {}

    /** The task; empty after an error. */
    static Optional<TaskFile.Read> read(String task, Edition edition, Diagnostics diagnostics) {
        // A file whose name tells nothing is taken for what tasks usually are; JSON is YAML too.
        TaskFormat format = TaskFormat.byName(task).orElse(TaskFormat.YAML);
        try {
            return TaskFile.readOne(task, bytes(task), format, edition, diagnostics);
        } catch (IOException e) {
            diagnostics.add(Message.UNREADABLE, Place.ofFile(task), task);
            return Optional.empty();
        }
    }

    private static byte[] bytes(String task) throws IOException {
        // One byte more than allowed is enough to tell that it is too much.
        int most = TaskReader.MAX_BYTES + 1;
        if (task.equals(STANDARD)) {
            try (InputStream in = System.in) {
                return in.readNBytes(most);
            }
        }
        try (InputStream in = Files.newInputStream(Path.of(task))) {
            return in.readNBytes(most);
        }
    }
}
