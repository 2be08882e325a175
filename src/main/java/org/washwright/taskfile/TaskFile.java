package org.washwright.taskfile;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.task.CleaningTask;
import org.washwright.task.TaskReader;
import org.washwright.task.Vocabulary;

/** Reads the tasks of a file of any kind. A file is taken as a whole or not at all, and all its errors come at once. */
public final class TaskFile {

    /** Most tasks taken out of one table. */
    public static final int MOST_TASKS = 200;

    private static final List<TaskFormat> TABLES = List.of(TaskFormat.CSV, TaskFormat.XLSX);

    private TaskFile() {}

    /**
     * A task that was read.
     *
     * @param document the task as a document: the file itself, or what its cells come to as JSON
     * @param task what it says
     */
    public record Read(String document, CleaningTask task) {}

    /** A task document made of cells, and where its values stand. */
    record Made(byte[] document, java.util.function.UnaryOperator<Place> places) {}

    /**
     * Reads a file.
     *
     * @param name what messages call it; its ending says nothing here
     * @param bytes the file
     * @param format its kind
     * @param vocabulary the edition's terms, attributes and trees
     * @param diagnostics takes every error, with file and line, or sheet and cell
     * @return its tasks; none after an error
     */
    public static List<Read> read(
            String name, byte[] bytes, TaskFormat format, Vocabulary vocabulary, Diagnostics diagnostics) {
        if (bytes.length > TaskReader.MAX_BYTES) {
            diagnostics.add(
                    Message.TOO_LARGE,
                    Place.ofFile(name),
                    bytes.length + " bytes",
                    TaskReader.MAX_BYTES + " bytes of a task file");
            return List.of();
        }
        if (!TABLES.contains(format)) {
            return TaskReader.read(name, bytes, vocabulary, diagnostics)
                    .map(task -> List.of(new Read(new String(bytes, StandardCharsets.UTF_8), task)))
                    .orElse(List.of());
        }
        List<Made> made = format == TaskFormat.CSV
                ? TaskTable.read(name, bytes, vocabulary, diagnostics)
                : TaskWorkbook.read(name, bytes, vocabulary, diagnostics);
        List<Read> tasks = new java.util.ArrayList<>();
        for (Made one : made) {
            Diagnostics own = new Diagnostics();
            Optional<CleaningTask> task = TaskReader.read(name, one.document(), vocabulary, own);
            own.all().forEach(d -> diagnostics.add(placed(d, one)));
            task.ifPresent(t -> tasks.add(new Read(new String(one.document(), StandardCharsets.UTF_8), t)));
        }
        return diagnostics.hasErrors() ? List.of() : List.copyOf(tasks);
    }

    /**
     * Reads a file that holds one task.
     *
     * @return the task, or empty after an error
     */
    public static Optional<Read> readOne(
            String name, byte[] bytes, TaskFormat format, Vocabulary vocabulary, Diagnostics diagnostics) {
        List<Read> tasks = read(name, bytes, format, vocabulary, diagnostics);
        if (tasks.size() > 1) {
            diagnostics.add(Message.SEVERAL_TASKS, Place.ofFile(name), String.valueOf(tasks.size()));
            return Optional.empty();
        }
        return tasks.stream().findFirst();
    }

    /** A document made of cells has no lines of its own: what is wrong stands at a cell. */
    private static Diagnostic placed(Diagnostic found, Made made) {
        return found.at(made.places().apply(found.place()));
    }
}
