package org.washwright.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.RefusedTask;
import org.washwright.assessment.Wishes;
import org.washwright.document.Diagnostics;
import org.washwright.document.Place;
import org.washwright.exchange.EditionReader;
import org.washwright.explain.compare.Change;
import org.washwright.explain.compare.Comparing;
import org.washwright.explain.compare.TaskChanges;
import org.washwright.library.Engine;
import org.washwright.library.TaskEvaluator;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;
import org.washwright.taskfile.TaskFile;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what other values of a task would change, with no server and no database. */
@Command(
        name = "what-if",
        mixinStandardHelpOptions = true,
        description = "Says what other values of a task would change, and by which rules.")
final class WhatIfCommand implements Callable<Integer> {

    @Parameters(
            paramLabel = "TASK",
            description =
                    "task as YAML, JSON, table (.csv) or workbook (.xlsx); - reads YAML or JSON from standard input")
    private String task;

    @Option(
            names = "--set",
            paramLabel = "POINTER=VALUE",
            required = true,
            description = "what is to stand where, for instance /following/operation=painting; may be given often")
    private List<String> set = new ArrayList<>();

    @Option(names = "--json", description = "write canonical JSON instead of text")
    private boolean json;

    @CommandLine.Mixin
    private RequestOptions request = new RequestOptions();

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        EditionReader.Result read = request.edition();
        if (read.edition().isEmpty()) {
            DiagnosticText.write(read.diagnostics().all(), err);
            err.println("The edition " + request.editionName()
                    + " can't be used. Mend it; \"check\" lists the same errors.");
            return ExitCode.UNREADABLE_INPUT;
        }
        Edition edition = read.edition().get();
        Diagnostics diagnostics = new Diagnostics();
        Optional<CleaningTask> given =
                TaskInput.read(task, edition, diagnostics).map(TaskFile.Read::task);
        List<Change> changes = new ArrayList<>();
        set.forEach(s -> Change.parse(s, Place.ofFile("--set"), diagnostics).ifPresent(changes::add));
        Optional<CleaningTask> changed = changes.isEmpty()
                ? Optional.empty()
                : given.flatMap(t -> TaskChanges.apply(t, changes, edition, diagnostics));
        if (diagnostics.hasErrors() || given.isEmpty() || changed.isEmpty()) {
            DiagnosticText.write(diagnostics.all(), err);
            return ExitCode.UNREADABLE_INPUT;
        }
        Assessor assessor =
                TaskEvaluator.of(edition, request.engine(Engine.QUICK)).assessor();
        Wishes wishes = request.wishes();
        try {
            CompareCommand.write(
                    Comparing.of(assessor.assess(given.get(), wishes), assessor.assess(changed.get(), wishes)),
                    json,
                    spec.commandLine().getOut());
            return ExitCode.OK;
        } catch (RefusedTask refusal) {
            DiagnosticText.write(refusal.diagnostics(), err);
            return ExitCode.UNREADABLE_INPUT;
        }
    }
}
