package org.washwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.assessment.RefusedTask;
import org.washwright.assessment.Wishes;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.drools.DroolsInference;
import org.washwright.engine.InferenceFactory;
import org.washwright.engine.ReferenceInterpreter;
import org.washwright.exchange.EditionReader;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;
import org.washwright.task.TaskReader;
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

    @Parameters(paramLabel = "TASK", description = "task as YAML or JSON; - reads standard input")
    private String task;

    @Option(
            names = "--rulebook",
            paramLabel = "EDITION",
            description = "folder or zip bundle of the edition (default: ${DEFAULT-VALUE})",
            defaultValue = "rules/starter")
    private Path rulebook;

    @Option(names = "--json", description = "write the hashed bytes of the answer (canonical JSON) instead of text")
    private boolean json;

    @Option(names = "--trace", description = "add every firing with what it read and where that comes from")
    private boolean trace;

    @Option(names = "--as-of", paramLabel = "DATE", description = "date for which law is read (default: today, UTC)")
    private String asOf;

    @Option(names = "--weight", paramLabel = "AREA=NUMBER", description = "weight of an area instead of the edition's")
    private Map<String, Double> weights = new TreeMap<>();

    @Option(
            names = "--assume",
            paramLabel = "ID=VALUE",
            description = "value of an assumption instead of the edition's")
    private Map<String, String> assumptions = new TreeMap<>();

    @Option(names = "--seed", description = "seed for anything sampled (default: 0)", defaultValue = "0")
    private long seed;

    @Option(
            names = "--interpret",
            description = "answer with the plain interpreter: nothing is compiled, and the answer is the same")
    private boolean interpret;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        EditionReader.Result read = EditionInput.read(rulebook);
        if (read.edition().isEmpty()) {
            DiagnosticText.write(read.diagnostics().all(), err);
            err.println("The edition " + rulebook + " can't be used. Mend it; \"check\" lists the same errors.");
            return ExitCode.UNREADABLE_INPUT;
        }
        Diagnostics diagnostics = new Diagnostics();
        Optional<CleaningTask> cleaningTask = task(read.edition().get(), diagnostics);
        if (cleaningTask.isEmpty()) {
            DiagnosticText.write(diagnostics.all(), err);
            return ExitCode.UNREADABLE_INPUT;
        }
        try {
            FrozenAnswer answer = assess(read.edition().get(), cleaningTask.get());
            if (json) {
                out.print(new String(answer.bytes(), StandardCharsets.UTF_8));
            } else {
                new AnswerText(answer, cleaningTask.get().title(), out).write(trace);
            }
            out.flush();
            boolean recommended = answer.answer().candidates().stream()
                    .anyMatch(c -> c.status().equals("recommended"));
            return recommended ? ExitCode.OK : ExitCode.FINDINGS;
        } catch (RefusedTask e) {
            DiagnosticText.write(e.diagnostics(), err);
            return ExitCode.UNREADABLE_INPUT;
        }
    }

    private FrozenAnswer assess(Edition edition, CleaningTask cleaningTask) {
        InferenceFactory factory = interpret ? ReferenceInterpreter.factory() : DroolsInference.factory();
        String date = asOf == null ? LocalDate.now(ZoneOffset.UTC).toString() : asOf;
        return Assessor.of(edition, factory).assess(cleaningTask, new Wishes(weights, assumptions, date, seed));
    }

    private Optional<CleaningTask> task(Edition edition, Diagnostics diagnostics) {
        try {
            return TaskReader.read(task, bytes(), edition, diagnostics);
        } catch (IOException e) {
            diagnostics.add(Message.UNREADABLE, Place.ofFile(task), task);
            return Optional.empty();
        }
    }

    private byte[] bytes() throws IOException {
        if (!task.equals("-")) {
            return Files.readAllBytes(Path.of(task));
        }
        try (InputStream in = System.in) {
            // One byte more than allowed is enough to tell that it is too much.
            return in.readNBytes(TaskReader.MAX_BYTES + 1);
        }
    }
}
