package org.washwright.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.washwright.analysis.Examination;
import org.washwright.analysis.Examiner;
import org.washwright.analysis.Finding;
import org.washwright.exchange.EditionReader;
import org.washwright.rule.Edition;
import org.washwright.task.TaskWriter;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Looks for faults between the rules of an edition. */
@Command(
        name = "examine",
        mixinStandardHelpOptions = true,
        description = "Looks for rules that never fire, say the same, contradict each other or leave no value for a"
                + " parameter; each with a proof or with a task that shows it.")
final class Examine implements Callable<Integer> {

    @CommandLine.Mixin
    private EditionOptions options = new EditionOptions();

    @Option(
            names = "--tries",
            paramLabel = "N",
            defaultValue = "" + Examiner.USUAL_BUDGET,
            description = "tasks tried for one question before it is left undecided (default: ${DEFAULT-VALUE})")
    private int tries;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        Optional<EditionReader.Result> read = options.read(spec.commandLine().getErr());
        if (read.isEmpty()) {
            return ExitCode.UNREADABLE_INPUT;
        }
        Edition edition = read.get().edition().orElseThrow();
        Examination examination = new Examiner(edition, options.asOf(), tries)
                .examine(read.get().checks().known());
        if (options.json()) {
            EditionOptions.write(examination.asData(edition), out);
        } else {
            text(examination, edition, out);
        }
        return examination.open().isEmpty() ? ExitCode.OK : ExitCode.FINDINGS;
    }

    private static void text(Examination examination, Edition edition, PrintWriter out) {
        for (Finding f : examination.findings()) {
            out.println(f.kind().word() + "  " + String.join(", ", f.rules()) + "  at " + f.place());
            out.println("  " + f.words());
            f.accepted().ifPresent(why -> out.println("  accepted: " + why));
            f.witness().ifPresent(task -> {
                out.println("  a task that shows it, as of " + f.asOf() + ":");
                out.print(TaskWriter.yaml(task, edition, "    "));
            });
        }
        long shown = examination.examples().values().stream()
                .filter(list -> !list.isEmpty())
                .count();
        out.println(edition.rules().size() + " rules, " + shown + " with a task on which they fire; "
                + examination.open().size() + " findings, "
                + (examination.findings().size() - examination.open().size()) + " accepted");
        out.flush();
    }
}
