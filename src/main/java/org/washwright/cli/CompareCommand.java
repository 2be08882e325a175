package org.washwright.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.assessment.RefusedTask;
import org.washwright.document.Diagnostics;
import org.washwright.exchange.EditionReader;
import org.washwright.explain.compare.Comparing;
import org.washwright.explain.compare.Comparison;
import org.washwright.impact.meaning.MeaningComparison;
import org.washwright.library.EditionInput;
import org.washwright.library.Engine;
import org.washwright.library.TaskEvaluator;
import org.washwright.task.CleaningTask;
import org.washwright.taskfile.TaskFile;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Holds two answers against each other with no server and no database. */
@Command(
        name = "compare",
        mixinStandardHelpOptions = true,
        description =
                "Says what differs between two answers and which rules made the difference, or what differs in meaning"
                        + " between two editions.")
final class CompareCommand implements Callable<Integer> {

    @Parameters(
            index = "0",
            paramLabel = "TASK_OR_ANSWER",
            description =
                    "the earlier one: a task of any kind of file, or an answer as \"assess --json\" writes it; or an"
                            + " edition, as a folder or zip bundle")
    private String before;

    @Parameters(
            index = "1",
            paramLabel = "TASK_OR_ANSWER",
            description = "the later one, task or answer; or an edition where the earlier one is")
    private String after;

    @Option(
            names = "--other-rulebook",
            paramLabel = "EDITION",
            description = "edition that answers the later task instead of the one of --rulebook")
    private Path otherRulebook;

    @Option(names = "--json", description = "write canonical JSON instead of text")
    private boolean json;

    @Option(names = "--format", paramLabel = "FORMAT", description = "text (default) or json")
    private String format;

    @CommandLine.Mixin
    private RequestOptions request = new RequestOptions();

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        boolean asJson =
                OutputFormat.of(format, json, EnumSet.of(OutputFormat.TEXT, OutputFormat.JSON), spec.commandLine())
                        == OutputFormat.JSON;
        boolean first = EditionInput.isEdition(Path.of(before));
        if (first != EditionInput.isEdition(Path.of(after))) {
            throw new CommandLine.ParameterException(
                    spec.commandLine(), "An edition can only be compared with another edition. Give two of a kind.");
        }
        return first ? editions(asJson, out, err) : answers(asJson, out, err);
    }

    private Integer editions(boolean asJson, PrintWriter out, PrintWriter err) {
        Optional<EditionPair> pair = EditionPair.read(Path.of(before), Path.of(after), err);
        if (pair.isEmpty()) {
            return ExitCode.UNREADABLE_INPUT;
        }
        MeaningComparison found =
                MeaningComparison.of(pair.get().before(), pair.get().after());
        if (asJson) {
            EditionOptions.write(found, out);
        } else {
            new MeaningText(found, out).write();
        }
        return ExitCode.OK;
    }

    private Integer answers(boolean asJson, PrintWriter out, PrintWriter err) {
        Diagnostics diagnostics = new Diagnostics();
        Optional<FrozenAnswer> old = kept(before, diagnostics);
        Optional<FrozenAnswer> now = kept(after, diagnostics);
        if (diagnostics.hasErrors()) {
            DiagnosticText.write(diagnostics.all(), err);
            return ExitCode.UNREADABLE_INPUT;
        }
        // A task held against an answer is asked for the same date, so that only what differs is told.
        String date = old.or(() -> now)
                .map(a -> a.answer().request().asOf())
                .orElseGet(() -> LocalDate.now(ZoneOffset.UTC).toString());
        Optional<FrozenAnswer> first = old.isPresent() ? old : asked(before, Optional.empty(), date, err);
        Optional<FrozenAnswer> second =
                now.isPresent() ? now : asked(after, Optional.ofNullable(otherRulebook), date, err);
        if (first.isEmpty() || second.isEmpty()) {
            return ExitCode.UNREADABLE_INPUT;
        }
        write(Comparing.of(first.get(), second.get()), asJson, out);
        return ExitCode.OK;
    }

    static void write(Comparison comparison, boolean json, PrintWriter out) {
        if (json) {
            EditionOptions.write(comparison, out);
        } else {
            new CompareText(comparison, out).write();
            out.flush();
        }
    }

    private static Optional<FrozenAnswer> kept(String file, Diagnostics diagnostics) {
        return AnswerFile.isAnswer(file) ? AnswerFile.read(file, diagnostics) : Optional.empty();
    }

    /** The answer to a task; empty after what is wrong has been written. */
    private Optional<FrozenAnswer> asked(String file, Optional<Path> other, String date, PrintWriter err) {
        EditionReader.Result read = other.map(EditionInput::read).orElseGet(request::edition);
        if (read.edition().isEmpty()) {
            DiagnosticText.write(read.diagnostics().all(), err);
            err.println("The edition " + other.map(Path::toString).orElseGet(request::editionName)
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
        try {
            return Optional.of(TaskEvaluator.of(read.edition().get(), request.engine(Engine.QUICK))
                    .assessor()
                    .assess(task.get(), request.wishes(date)));
        } catch (RefusedTask refusal) {
            err.println(file + ":");
            DiagnosticText.write(refusal.diagnostics(), err);
            return Optional.empty();
        }
    }
}
