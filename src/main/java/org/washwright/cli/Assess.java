package org.washwright.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.document.Diagnostics;
import org.washwright.exchange.EditionReader;
import org.washwright.library.Engine;
import org.washwright.library.Evaluation;
import org.washwright.library.TaskEvaluator;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;
import org.washwright.taskfile.TaskFile;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Answers one cleaning task with no server, no database and no port. */
@Command(
        name = "assess",
        mixinStandardHelpOptions = true,
        description = "Answers a cleaning task by an edition, with no server and no database.")
final class Assess implements Callable<Integer> {

    @Parameters(
            paramLabel = "TASK",
            description =
                    "task as YAML, JSON, table (.csv) or workbook (.xlsx); - reads YAML or JSON from standard input")
    private String task;

    @Option(names = "--json", description = "write the hashed bytes of the answer (canonical JSON) instead of text")
    private boolean json;

    @Option(names = "--trace", description = "add every firing with what it read and where that comes from")
    private boolean trace;

    @Option(
            names = "--figures",
            description =
                    "add every figure of the first line with what it was computed from, its balances and its plans")
    private boolean figures;

    @CommandLine.Mixin
    private RequestOptions request = new RequestOptions();

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        EditionReader.Result read = request.edition();
        if (read.edition().isEmpty()) {
            DiagnosticText.write(read.diagnostics().all(), err);
            err.println("The edition " + request.editionName()
                    + " can't be used. Mend it; \"check\" lists the same errors.");
            return ExitCode.UNREADABLE_INPUT;
        }
        Diagnostics diagnostics = new Diagnostics();
        // The task comes before the rules are made ready: what is wrong with it should not take seconds to be said.
        Optional<CleaningTask> cleaningTask = task(read.edition().get(), diagnostics);
        if (cleaningTask.isEmpty()) {
            DiagnosticText.write(diagnostics.all(), err);
            return ExitCode.UNREADABLE_INPUT;
        }
        Evaluation evaluation = TaskEvaluator.of(read.edition().get(), request.engine(Engine.COMPILED))
                .evaluate(cleaningTask.get(), request.wishes());
        if (evaluation instanceof Evaluation.Refused refused) {
            DiagnosticText.write(refused.diagnostics(), err);
            return ExitCode.UNREADABLE_INPUT;
        }
        return write((Evaluation.Answered) evaluation, out);
    }

    private int write(Evaluation.Answered answered, PrintWriter out) {
        if (json) {
            out.print(new String(answered.bytes(), StandardCharsets.UTF_8));
        } else {
            new AnswerText(
                            new FrozenAnswer(answered.answer(), answered.bytes(), answered.hash()),
                            answered.title(),
                            out)
                    .write(trace, figures);
        }
        out.flush();
        boolean recommended =
                answered.answer().candidates().stream().anyMatch(c -> c.status().equals("recommended"));
        return recommended ? ExitCode.OK : ExitCode.FINDINGS;
    }

    private Optional<CleaningTask> task(Edition edition, Diagnostics diagnostics) {
        return TaskInput.read(task, edition, diagnostics).map(TaskFile.Read::task);
    }
}
