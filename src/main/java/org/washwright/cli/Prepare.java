package org.washwright.cli;

import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.assessment.Wishes;
import org.washwright.exchange.EditionReader;
import org.washwright.library.EditionInput;
import org.washwright.library.Engine;
import org.washwright.library.Evaluation;
import org.washwright.library.TaskEvaluator;
import org.washwright.rule.Edition;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Does ahead what costs a first command its time: compiles the rules and keeps them. */
@Command(
        name = "prepare",
        mixinStandardHelpOptions = true,
        description = "Compiles the rules of an edition and keeps them, so that later commands start at once; the"
                + " launcher also keeps the program's classes.")
final class Prepare implements Callable<Integer> {

    // Of a task of which nothing is known every rule may hold, so answering it comes by almost everything there is.
    private static final byte[] TASK = "title: nothing known".getBytes(StandardCharsets.UTF_8);
    private static final Wishes WISHES = Wishes.on("2026-01-01");

    @Option(
            names = "--rulebook",
            paramLabel = "EDITION",
            description = "folder or zip bundle of the edition (default: the starter rulebook)")
    private Path rulebook;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        EditionReader.Result read = rulebook == null ? EditionInput.readStarter() : EditionInput.read(rulebook);
        if (read.edition().isEmpty()) {
            DiagnosticText.write(read.diagnostics().all(), spec.commandLine().getErr());
            return ExitCode.UNREADABLE_INPUT;
        }
        Edition edition = read.edition().get();
        for (Engine engine : Engine.values()) {
            Evaluation.Answered a =
                    (Evaluation.Answered) TaskEvaluator.of(edition, engine).evaluate(TASK, WISHES);
            new AnswerText(
                            new FrozenAnswer(a.answer(), a.bytes(), a.hash()),
                            a.title(),
                            new PrintWriter(Writer.nullWriter()))
                    .write(true);
        }
        out.println("The rules of " + edition.name() + " are compiled and kept.");
        out.flush();
        return ExitCode.OK;
    }
}
