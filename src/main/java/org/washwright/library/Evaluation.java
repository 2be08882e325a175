package org.washwright.library;

import java.util.List;
import org.washwright.assessment.Answer;
import org.washwright.document.Diagnostic;

/** What came of one task: an answer, or everything that is wrong with the task. */
public sealed interface Evaluation {

    /**
     * The task is answered.
     *
     * @param title title of the task
     * @param answer the answer as plain data
     * @param bytes its canonical JSON (RFC 8785), the same as {@code assess --json} writes
     * @param hash SHA-256 of the bytes, hexadecimal
     */
    record Answered(String title, Answer answer, byte[] bytes, String hash) implements Evaluation {}

    /**
     * The task can't be answered as it is.
     *
     * @param title title of the task; empty when it could not be read
     * @param diagnostics everything wrong with it, each with value, place and advice
     */
    record Refused(String title, List<Diagnostic> diagnostics) implements Evaluation {
        /** Keeps a copy. */
        public Refused {
            diagnostics = List.copyOf(diagnostics);
        }
    }
}
