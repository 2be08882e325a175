package org.washwright.cli;

import java.io.PrintWriter;
import java.util.Optional;
import org.washwright.document.Diagnostics;
import org.washwright.exchange.EditionReader;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;
import org.washwright.taskfile.TaskFile;

/** A task and the edition that is asked about it, for commands that try the task otherwise. */
record TaskOfEdition(Edition edition, CleaningTask task) {

    /** Reads both; empty after their errors have been written. */
    static Optional<TaskOfEdition> read(String task, RequestOptions request, PrintWriter err) {
        EditionReader.Result read = request.edition();
        if (read.edition().isEmpty()) {
            DiagnosticText.write(read.diagnostics().all(), err);
            err.println("The edition " + request.editionName()
                    + " can't be used. Mend it; \"check\" lists the same errors.");
            return Optional.empty();
        }
        Diagnostics diagnostics = new Diagnostics();
        Optional<CleaningTask> given =
                TaskInput.read(task, read.edition().get(), diagnostics).map(TaskFile.Read::task);
        if (given.isEmpty()) {
            DiagnosticText.write(diagnostics.all(), err);
        }
        return given.map(t -> new TaskOfEdition(read.edition().get(), t));
    }
}
