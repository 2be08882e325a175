package org.washwright.casework;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.Hashes;
import org.washwright.document.Node;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemErrors;
import org.washwright.task.CleaningTask;
import org.washwright.task.TaskReader;
import org.washwright.task.Vocabulary;
import org.washwright.taskfile.TaskExport;

/**
 * A task that was read without an error.
 *
 * @param text as it was given
 * @param task what it says
 */
record GivenTask(String text, CleaningTask task) {

    /** What came of reading: the task, or what is wrong with it. */
    record Result(Optional<GivenTask> task, List<Diagnostic> diagnostics) {}

    static Result tried(byte[] bytes, Vocabulary vocabulary) {
        Diagnostics diagnostics = new Diagnostics();
        Optional<GivenTask> task = TaskReader.read(ProblemErrors.BODY, bytes, vocabulary, diagnostics)
                .map(t -> new GivenTask(new String(bytes, StandardCharsets.UTF_8), t));
        return new Result(task, diagnostics.all());
    }

    /** Refused with every error at once. */
    static GivenTask read(byte[] bytes, Vocabulary vocabulary) {
        Result result = tried(bytes, vocabulary);
        return result.task().orElseThrow(() -> new Invalid(ProblemErrors.of(result.diagnostics())));
    }

    static GivenTask read(String text, Vocabulary vocabulary) {
        return read(text.getBytes(StandardCharsets.UTF_8), vocabulary);
    }

    /** A document that was read before, as nodes. */
    static Node nodes(String text) {
        return DocumentReader.read(ProblemErrors.BODY, text, new Diagnostics()).orElseThrow();
    }

    /** A node as a JSON document of its own. */
    static byte[] json(Node node) {
        return Hashes.canonical(plain(node));
    }

    /** A node as plain maps, lists and texts. */
    static Object plain(Node node) {
        return TaskExport.data(node);
    }
}
