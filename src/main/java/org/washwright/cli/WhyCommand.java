package org.washwright.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.washwright.explain.why.Explanation;
import org.washwright.explain.why.NothingThere;
import org.washwright.explain.why.Why;
import org.washwright.explain.why.WhyText;
import org.washwright.library.Evaluation;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Says why an answer says something. */
@Command(
        name = "why",
        mixinStandardHelpOptions = true,
        description = "Answers a task and says why the answer says something, down to what was given and to sources.")
final class WhyCommand implements Callable<Integer> {

    private static final String USUAL_DEPTH = "6";

    @CommandLine.Mixin
    private AskedTask asked = new AskedTask();

    @Option(
            names = "--of",
            paramLabel = "WHAT",
            description = "id or name of a process, or place in the answer such as /cautions/0 or"
                    + " /candidates/0/stages/2; without it all that can be asked is listed with its place")
    private String what;

    @Option(
            names = "--depth",
            paramLabel = "N",
            defaultValue = USUAL_DEPTH,
            description = "steps of reasons to write out (default: " + USUAL_DEPTH + ")")
    private int depth;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        Optional<Evaluation.Answered> answered = asked.read(err).flatMap(r -> r.answered(err));
        if (answered.isEmpty()) {
            return ExitCode.UNREADABLE_INPUT;
        }
        Why why = new Why(answered.get().answer());
        if (what == null) {
            list(why, out);
            return ExitCode.OK;
        }
        try {
            Explanation explanation = why.of(what.isEmpty() || what.startsWith("/") ? what : why.process(what));
            if (asked.json()) {
                EditionOptions.write(explanation, out);
            } else {
                out.print(WhyText.of(explanation, depth));
                out.flush();
            }
            return ExitCode.OK;
        } catch (NothingThere e) {
            err.println(e.getMessage() + " Run the command without --of to see what can be asked.");
            return ExitCode.USAGE;
        }
    }

    private void list(Why why, PrintWriter out) {
        if (asked.json()) {
            EditionOptions.write(why.statements(), out);
            return;
        }
        why.statements().forEach(t -> out.println(t.at() + "  " + t.text()));
        out.flush();
    }
}
