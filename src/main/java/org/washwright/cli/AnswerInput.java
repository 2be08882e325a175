package org.washwright.cli;

import java.util.Optional;
import org.washwright.assessment.Answer;
import org.washwright.document.Diagnostics;
import org.washwright.exchange.EditionReader;
import org.washwright.library.Engine;
import org.washwright.library.Evaluation;
import org.washwright.library.TaskEvaluator;
import org.washwright.taskfile.TaskFile;

/** The answer that a command is about: out of a file that "assess --json" wrote, or to a task that is answered now. */
final class AnswerInput {

    /** An answer with what its task is called; an answer in a file is called by the file's name. */
    record Titled(String title, Answer answer) {}

    private AnswerInput() {}

    /** The answer; empty after an error. */
    static Optional<Titled> read(String file, RequestOptions request, Diagnostics diagnostics) {
        if (AnswerFile.isAnswer(file)) {
            return AnswerFile.read(file, diagnostics).map(a -> new Titled(file, a.answer()));
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
}
