package org.washwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.RefusedTask;
import org.washwright.assessment.Wishes;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.document.Similar;
import org.washwright.exchange.EditionReader;
import org.washwright.explain.exercise.Comparison;
import org.washwright.explain.exercise.Exercise;
import org.washwright.explain.exercise.ExerciseMaker;
import org.washwright.explain.exercise.Feedback;
import org.washwright.explain.exercise.PredictionReader;
import org.washwright.explain.exercise.PredictionTemplate;
import org.washwright.library.Engine;
import org.washwright.library.TaskEvaluator;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;
import org.washwright.taskfile.TaskFile;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A task as an exercise: writes an empty prediction, or compares one that was filled in with the answer. */
@Command(
        name = "exercise",
        mixinStandardHelpOptions = true,
        description =
                "Makes an exercise of a task: --template writes an empty prediction to fill in, --predict compares"
                        + " one with the answer, reason by reason.")
final class ExerciseCommand implements Callable<Integer> {

    @Parameters(
            paramLabel = "TASK",
            description =
                    "task as YAML, JSON, table (.csv) or workbook (.xlsx); - reads YAML or JSON from standard input")
    private String task;

    @CommandLine.ArgGroup(multiplicity = "1")
    private What what;

    @Option(
            names = "--process",
            paramLabel = "ID",
            description = "a process to judge; give it once for each, at most " + Exercise.MOST_PROCESSES
                    + " (default: a mix)")
    private List<String> processes = new ArrayList<>();

    @Option(names = "--json", description = "write JSON instead of text")
    private boolean json;

    @CommandLine.Mixin
    private RequestOptions request = new RequestOptions();

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    private final Diagnostics diagnostics = new Diagnostics();

    /** What is done. */
    static final class What {
        @Option(names = "--template", description = "write an empty prediction (YAML, or the exercise as JSON)")
        private boolean template;

        @Option(names = "--predict", paramLabel = "FILE", description = "prediction as YAML or JSON")
        private String predict;
    }

    @Override
    public Integer call() {
        EditionReader.Result read = request.edition();
        if (read.edition().isEmpty()) {
            diagnostics.addAll(read.diagnostics());
            return refused();
        }
        Optional<CleaningTask> given =
                TaskInput.read(task, read.edition().get(), diagnostics).map(TaskFile.Read::task);
        if (given.isEmpty()) {
            return refused();
        }
        try {
            return answered(read.edition().get(), given.get());
        } catch (RefusedTask e) {
            e.diagnostics().forEach(diagnostics::add);
            return refused();
        }
    }

    private Integer answered(Edition edition, CleaningTask given) {
        Assessor assessor =
                TaskEvaluator.of(edition, request.engine(Engine.QUICK)).assessor();
        Wishes wishes = request.wishes();
        Answer answer = assessor.assess(given, wishes).answer();
        checkProcesses(answer);
        if (diagnostics.hasErrors()) {
            return refused();
        }
        Exercise exercise = new ExerciseMaker(answer, edition).make(given.title(), "", wishes.seed(), processes);
        if (what.template) {
            write(exercise);
            return ExitCode.OK;
        }
        Comparison comparison = new Comparison(
                exercise, answer, edition, assessor.outcome(given, wishes).facts());
        Optional<Feedback> feedback = bytes().flatMap(
                        b -> PredictionReader.read(what.predict, b, exercise, diagnostics))
                .map(comparison::of);
        if (feedback.isEmpty()) {
            return refused();
        }
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            EditionOptions.write(feedback.get(), out);
        } else {
            new FeedbackText(out).write(feedback.get());
            out.flush();
        }
        return ExitCode.OK;
    }

    private void write(Exercise exercise) {
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            EditionOptions.write(exercise, out);
        } else {
            out.print(PredictionTemplate.of(exercise));
            out.flush();
        }
    }

    private void checkProcesses(Answer answer) {
        List<String> known = new ArrayList<>();
        answer.candidates().forEach(c -> known.add(c.process()));
        answer.ruledOut().forEach(r -> known.add(r.process()));
        processes.stream()
                .filter(p -> !known.contains(p))
                .forEach(p -> diagnostics.add(
                        Message.UNKNOWN_REFERENCE,
                        Place.ofFile("--process"),
                        p,
                        "process of this answer",
                        Similar.advice(p, known)));
        if (processes.size() > Exercise.MOST_PROCESSES) {
            diagnostics.add(
                    Message.LIST_TOO_LONG,
                    Place.ofFile("--process"),
                    String.valueOf(processes.size()),
                    "processes",
                    Exercise.MOST_PROCESSES);
        }
    }

    private Optional<byte[]> bytes() {
        try (InputStream in = Files.newInputStream(Path.of(what.predict))) {
            return Optional.of(in.readNBytes(PredictionReader.MAX_BYTES + 1));
        } catch (IOException e) {
            diagnostics.add(Message.UNREADABLE, Place.ofFile(what.predict), what.predict);
            return Optional.empty();
        }
    }

    private int refused() {
        DiagnosticText.write(diagnostics.all(), spec.commandLine().getErr());
        return ExitCode.UNREADABLE_INPUT;
    }
}
