package org.washwright.cli;

import java.io.PrintWriter;
import java.util.Optional;
import org.washwright.assessment.Wishes;
import org.washwright.document.Diagnostics;
import org.washwright.exchange.EditionReader;
import org.washwright.library.Engine;
import org.washwright.library.Evaluation;
import org.washwright.library.TaskEvaluator;
import org.washwright.task.CleaningTask;
import org.washwright.taskfile.TaskFile;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What all commands that explain an answer are told: the task, what is asked besides, and how to write. */
final class AskedTask {

    @Parameters(
            index = "0",
            paramLabel = "TASK",
            description =
                    "task as YAML, JSON, table (.csv) or workbook (.xlsx); - reads YAML or JSON from standard input")
    private String file;

    @Option(names = "--json", description = "write JSON instead of text")
    private boolean json;

    @CommandLine.Mixin
    private RequestOptions request = new RequestOptions();

    /**
     * A task that was read, and what answers it.
     *
     * @param file name of the file
     */
    record Ready(String file, TaskEvaluator evaluator, CleaningTask task, Wishes wishes) {

        /** The answer; empty after what is wrong with the task has been written. */
        Optional<Evaluation.Answered> answered(PrintWriter err) {
            Evaluation evaluation = evaluator.evaluate(task, wishes);
            if (evaluation instanceof Evaluation.Refused refused) {
                DiagnosticText.write(refused.diagnostics(), err);
                return Optional.empty();
            }
            return Optional.of((Evaluation.Answered) evaluation);
        }
    }

    /** Reads edition and task; empty after all that is wrong with them has been written. */
    Optional<Ready> read(PrintWriter err) {
        EditionReader.Result read = request.edition();
        if (read.edition().isEmpty()) {
            DiagnosticText.write(read.diagnostics().all(), err);
            err.println("The edition " + request.editionName()
                    + " can't be used. Mend it; \"check\" lists the same errors.");
            return Optional.empty();
        }
        Diagnostics diagnostics = new Diagnostics();
        Optional<CleaningTask> task =
                TaskInput.read(file, read.edition().get(), diagnostics).map(TaskFile.Read::task);
        if (task.isEmpty()) {
            DiagnosticText.write(diagnostics.all(), err);
            return Optional.empty();
        }
        // The index is ready at once, and all engines give the same answer.
        TaskEvaluator evaluator = TaskEvaluator.of(read.edition().get(), request.engine(Engine.QUICK));
        return Optional.of(new Ready(file, evaluator, task.get(), request.wishes()));
    }

    boolean json() {
        return json;
    }
}
