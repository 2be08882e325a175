package org.washwright.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.washwright.assessment.RefusedTask;
import org.washwright.explain.asking.Asking;
import org.washwright.explain.asking.FindOut;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Says what to find out next, with no server, no database and no port. */
@Command(
        name = "find-out",
        mixinStandardHelpOptions = true,
        description = "Says in which order to find out what is not known of a task, and what hangs on it.")
final class FindOutCommand implements Callable<Integer> {

    @CommandLine.Mixin
    private AskedTask asked = new AskedTask();

    @Option(names = "--evaluations", defaultValue = "3000", description = "most tasks tried (default: 3000)")
    private int evaluations;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        if (evaluations < 1) {
            throw new CommandLine.ParameterException(
                    spec.commandLine(), "--evaluations " + evaluations + ": at least one task has to be tried.");
        }
        Optional<AskedTask.Ready> ready = asked.read(err);
        if (ready.isEmpty()) {
            return ExitCode.UNREADABLE_INPUT;
        }
        try {
            FindOut found = new Asking(ready.get().evaluator().assessor())
                    .ask(ready.get().task(), ready.get().wishes(), evaluations, n -> {});
            if (asked.json()) {
                EditionOptions.write(found, out);
            } else {
                write(found, out);
            }
            return ExitCode.OK;
        } catch (RefusedTask e) {
            DiagnosticText.write(e.diagnostics(), err);
            return ExitCode.UNREADABLE_INPUT;
        }
    }

    private static void write(FindOut found, PrintWriter out) {
        out.println(found.verdict());
        int place = 1;
        for (FindOut.Unknown u : found.matters()) {
            out.println();
            out.println(place++ + "  " + u.question());
            out.println("   " + u.text());
        }
        list(
                "The same whatever it is:",
                found.same().stream().map(FindOut.Unknown::question).toList(),
                out);
        list("Not tried, as the evaluations were spent:", found.notTried(), out);
        out.println();
        if (!found.matters().isEmpty()) {
            out.println(found.assumption());
        }
        out.println(found.evaluations() + " tasks tried of at most " + found.budget() + ".");
        out.flush();
    }

    private static void list(String head, List<String> lines, PrintWriter out) {
        if (!lines.isEmpty()) {
            out.println();
            out.println(head);
            lines.forEach(l -> out.println("  " + l));
        }
    }
}
