package org.washwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.washwright.assessment.Answer;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.exchange.EditionReader;
import org.washwright.library.Engine;
import org.washwright.library.Evaluation;
import org.washwright.library.TaskEvaluator;
import org.washwright.report.Report;
import org.washwright.report.ReportFormat;
import org.washwright.task.CleaningTask;
import org.washwright.taskfile.TaskFile;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the report of an assessment: what plant makers quote on and an auditor follows. */
@Command(
        name = "report",
        mixinStandardHelpOptions = true,
        description = "Answers a cleaning task and writes the report on one line: as PDF, workbook or page.")
final class ReportCommand implements Callable<Integer> {

    @Parameters(
            paramLabel = "TASK",
            description =
                    "task as YAML, JSON, table (.csv) or workbook (.xlsx); - reads YAML or JSON from standard input")
    private String task;

    @Option(
            names = "--process",
            paramLabel = "ID",
            description = "process whose line is written out (default: the one that stands first)")
    private String process;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            required = true,
            description = "file that ends in .pdf, .xlsx or .html")
    private Path out;

    @Option(names = "--force", description = "write over a file that exists")
    private boolean force;

    @CommandLine.Mixin
    private RequestOptions request = new RequestOptions();

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    private final Diagnostics diagnostics = new Diagnostics();

    @Override
    public Integer call() {
        Optional<ReportFormat> format = ReportFormat.byName(out.toString());
        if (format.isEmpty()) {
            return refused(Message.REPORT_FORMAT, ExitCode.USAGE, out.toString());
        }
        // Said before the rules are made ready, and looked at again when the file is made.
        if (!force && Files.exists(out)) {
            return refused(Message.FILE_THERE, ExitCode.CANNOT_WRITE, out.toString());
        }
        EditionReader.Result read = request.edition();
        if (read.edition().isEmpty()) {
            DiagnosticText.write(read.diagnostics().all(), err());
            err().println("The edition " + request.editionName()
                    + " can't be used. Mend it; \"check\" lists the same errors.");
            return ExitCode.UNREADABLE_INPUT;
        }
        Optional<CleaningTask> cleaningTask =
                TaskInput.read(task, read.edition().get(), diagnostics).map(TaskFile.Read::task);
        if (cleaningTask.isEmpty()) {
            return told(ExitCode.UNREADABLE_INPUT);
        }
        Evaluation evaluation = TaskEvaluator.of(read.edition().get(), request.engine(Engine.COMPILED))
                .evaluate(cleaningTask.get(), request.wishes());
        if (evaluation instanceof Evaluation.Refused refusal) {
            DiagnosticText.write(refusal.diagnostics(), err());
            return ExitCode.UNREADABLE_INPUT;
        }
        return write((Evaluation.Answered) evaluation, cleaningTask.get().notes(), format.get());
    }

    private int write(Evaluation.Answered answered, String notes, ReportFormat format) {
        Answer answer = answered.answer();
        Optional<Report> report = process == null
                ? Optional.of(Report.ofFirst(answered.title(), notes, answered.hash(), answer))
                : Report.of(answered.title(), notes, answered.hash(), answer, process);
        if (report.isEmpty()) {
            return noSuchLine(answer);
        }
        try {
            Files.write(out, format.write(report.get()), options());
        } catch (FileAlreadyExistsException e) {
            return refused(Message.FILE_THERE, ExitCode.CANNOT_WRITE, out.toString());
        } catch (IOException e) {
            return refused(Message.OUTPUT_UNWRITABLE, ExitCode.CANNOT_WRITE, out.toString(), e.toString());
        }
        boolean recommended =
                answer.candidates().stream().anyMatch(c -> c.status().equals("recommended"));
        return recommended ? ExitCode.OK : ExitCode.FINDINGS;
    }

    private OpenOption[] options() {
        return force
                ? new OpenOption[] {
                    StandardOpenOption.CREATE, StandardOpenOption.TRUNCATE_EXISTING, StandardOpenOption.WRITE
                }
                : new OpenOption[] {StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE};
    }

    private int noSuchLine(Answer answer) {
        Optional<Answer.RuledOut> out = answer.ruledOut().stream()
                .filter(r -> r.process().equals(process))
                .findFirst();
        int code = refused(
                Message.NO_SUCH_LINE,
                ExitCode.USAGE,
                process,
                out.isPresent() ? "it is ruled out" : "the edition has no such process");
        // Whole, where a message would cut them short.
        out.ifPresent(r -> r.reasons().forEach(s -> err().println("  " + s.text())));
        err().println(
                        answer.candidates().isEmpty()
                                ? "No process may clean this task."
                                : "These may: "
                                        + answer.candidates().stream()
                                                .map(Answer.Candidate::process)
                                                .collect(Collectors.joining(", ")));
        return code;
    }

    private int refused(Message message, int code, String value, Object... expected) {
        diagnostics.add(message, Place.ofFile(message == Message.NO_SUCH_LINE ? task : value), value, expected);
        return told(code);
    }

    private int told(int code) {
        DiagnosticText.write(diagnostics.all(), err());
        return code;
    }

    private PrintWriter err() {
        return spec.commandLine().getErr();
    }
}
