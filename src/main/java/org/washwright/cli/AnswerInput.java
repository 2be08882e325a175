package org.washwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.washwright.assessment.Answer;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.exchange.EditionReader;
import org.washwright.library.Engine;
import org.washwright.library.Evaluation;
import org.washwright.library.TaskEvaluator;
import org.washwright.taskfile.TaskFile;

/** The answer that a command is about: out of a file that "assess --json" wrote, or to a task that is answered now. */
final class AnswerInput {

    /** An answer with what its task is called; an answer in a file is called by the file's name. */
    record Titled(String title, Answer answer) {}

    private static final long MOST_BYTES = 50_000_000;

    private AnswerInput() {}

    /** The answer; empty after an error. */
    static Optional<Titled> read(String file, RequestOptions request, Diagnostics diagnostics) {
        Optional<byte[]> kept = kept(file);
        if (kept.isPresent()) {
            return answer(file, kept.get(), diagnostics);
        }
        EditionReader.Result read = request.edition();
        if (read.edition().isEmpty()) {
            diagnostics.addAll(read.diagnostics());
            return Optional.empty();
        }
        Optional<TaskFile.Read> task = TaskInput.read(file, read.edition().get(), diagnostics);
        if (task.isEmpty()) {
            return Optional.empty();
        }
        Evaluation evaluation = TaskEvaluator.of(read.edition().get(), request.engine(Engine.QUICK))
                .evaluate(task.get().task(), request.wishes());
        if (evaluation instanceof Evaluation.Answered answered) {
            return Optional.of(new Titled(answered.title(), answered.answer()));
        }
        ((Evaluation.Refused) evaluation).diagnostics().forEach(diagnostics::add);
        return Optional.empty();
    }

    /** The bytes of what "assess --json" wrote, told by a name that no task holds; a file that can't be read is none. */
    private static Optional<byte[]> kept(String file) {
        Path path = Path.of(file);
        try {
            boolean readable = Files.isRegularFile(path) && Files.size(path) <= MOST_BYTES;
            byte[] bytes = readable ? Files.readAllBytes(path) : new byte[0];
            return new String(bytes, StandardCharsets.UTF_8).contains("\"requestHash\":")
                    ? Optional.of(bytes)
                    : Optional.empty();
        } catch (IOException unreadable) {
            // Said by the reader of tasks, which tries it again.
            return Optional.empty();
        }
    }

    private static Optional<Titled> answer(String file, byte[] bytes, Diagnostics diagnostics) {
        try {
            return Optional.of(new Titled(file, FrozenAnswer.read(bytes).answer()));
        } catch (IOException e) {
            diagnostics.add(Message.BROKEN_JSON, Place.ofFile(file), file, firstLine(e));
            return Optional.empty();
        }
    }

    private static String firstLine(IOException e) {
        return String.valueOf(e.getMessage()).lines().findFirst().orElse("");
    }
}
