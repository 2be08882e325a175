package org.washwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.washwright.exchange.EditionReader;
import org.washwright.explain.proof.Breach;
import org.washwright.explain.proof.ProofCheck;
import org.washwright.explain.proof.Verdict;
import org.washwright.library.EditionInput;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Checks that an answer follows from its own request. */
@Command(
        name = "verify",
        mixinStandardHelpOptions = true,
        description = "Takes an answer as \"assess --json\" writes it, derives it anew from its request by the plain"
                + " interpreter and the formulas, and names what does not follow. Trusts no hash.")
final class VerifyCommand implements Callable<Integer> {

    private static final String USUAL_MOST = "50";

    @Parameters(paramLabel = "ANSWER", description = "file with the answer, as JSON")
    private Path answer;

    @Option(
            names = "--rulebook",
            paramLabel = "EDITION",
            description = "folder or zip bundle of the edition that answered (default: the starter rulebook)")
    private Path rulebook;

    @Option(
            names = "--most",
            paramLabel = "N",
            defaultValue = USUAL_MOST,
            description = "most faults to list (default: " + USUAL_MOST + ")")
    private int most;

    @Option(names = "--json", description = "write JSON instead of text")
    private boolean json;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        EditionReader.Result read = rulebook == null ? EditionInput.readStarter() : EditionInput.read(rulebook);
        if (read.edition().isEmpty()) {
            DiagnosticText.write(read.diagnostics().all(), err);
            return ExitCode.UNREADABLE_INPUT;
        }
        try {
            Verdict verdict = new ProofCheck(read.edition().get()).check(Files.readAllBytes(answer), most);
            if (json) {
                EditionOptions.write(verdict, out);
            } else {
                write(verdict, out);
            }
            return verdict.holds() ? ExitCode.OK : ExitCode.FINDINGS;
        } catch (NoSuchFileException e) {
            err.println("error " + answer + ": there is no such file.");
            return ExitCode.UNREADABLE_INPUT;
        } catch (IOException e) {
            err.println("error " + answer + ": " + e.getMessage() + " Give a file as \"assess --json\" writes it.");
            return ExitCode.UNREADABLE_INPUT;
        }
    }

    private static void write(Verdict verdict, PrintWriter out) {
        out.println(verdict.sentence());
        verdict.notes().forEach(n -> out.println("  mind: " + n));
        for (Breach b : verdict.breaches()) {
            out.println("  " + b.step().words() + ": " + b.about() + " (" + b.at() + ")");
            if (!b.stated().isEmpty() || !b.derived().isEmpty()) {
                out.println("    stated:  " + (b.stated().isEmpty() ? "nothing" : b.stated()));
                out.println("    follows: " + (b.derived().isEmpty() ? "nothing" : b.derived()));
            }
        }
        if (verdict.more() > 0) {
            out.println("  and " + verdict.more() + " more");
        }
        out.println("answer  " + verdict.hash());
        out.flush();
    }
}
