package org.washwright.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.washwright.explain.mark.Objection;
import org.washwright.explain.why.NothingThere;
import org.washwright.explain.why.Why;
import org.washwright.library.Evaluation;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Says that a reason is wrong, as a file for the consultant. */
@Command(
        name = "mark",
        mixinStandardHelpOptions = true,
        description =
                "Says that a statement of an answer is wrong: writes a file that names the statement, the rules behind"
                        + " it, what is wrong and the task, for the consultant, who lists such files with \"marks\".")
final class MarkCommand implements Callable<Integer> {

    @CommandLine.Mixin
    private AskedTask asked = new AskedTask();

    @Option(
            names = "--of",
            paramLabel = "WHAT",
            required = true,
            description = "id or name of a process, or place in the answer, as for \"why\"")
    private String what;

    @Option(names = "--because", paramLabel = "TEXT", required = true, description = "what is wrong with it")
    private String because;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter err = spec.commandLine().getErr();
        if (because.isBlank() || because.length() > Objection.MOST_LETTERS) {
            err.println("Say in a sentence what is wrong, in at most " + Objection.MOST_LETTERS + " letters.");
            return ExitCode.USAGE;
        }
        Optional<Evaluation.Answered> answered = asked.read(err).flatMap(r -> r.answered(err));
        if (answered.isEmpty()) {
            return ExitCode.UNREADABLE_INPUT;
        }
        try {
            String at = what.startsWith("/") ? what : new Why(answered.get().answer()).process(what);
            EditionOptions.write(
                    Objection.of(answered.get().answer(), at, because),
                    spec.commandLine().getOut());
            return ExitCode.OK;
        } catch (NothingThere e) {
            err.println(e.getMessage() + " Run \"why\" without --of to see what can be asked.");
            return ExitCode.USAGE;
        }
    }
}
