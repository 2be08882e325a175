package org.washwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.washwright.document.Hashes;
import org.washwright.exchange.EditionReader;
import org.washwright.explain.mark.Objection;
import org.washwright.library.EditionInput;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lists what readers hold against reasons, by the rule it concerns. */
@Command(
        name = "marks",
        mixinStandardHelpOptions = true,
        description = "Lists files that \"mark\" wrote, by the rules they concern.")
final class MarksCommand implements Callable<Integer> {

    private static final String NO_RULE = "";

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "files that \"mark\" wrote")
    private List<Path> files = new ArrayList<>();

    @Option(
            names = "--rulebook",
            paramLabel = "EDITION",
            description = "folder or zip bundle of the edition whose rules are named (default: the starter rulebook)")
    private Path rulebook;

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
        Map<String, List<Objection>> byRule = new TreeMap<>();
        boolean all = true;
        for (Path file : files) {
            all &= read(file, byRule, err);
        }
        byRule.forEach((rule, objections) -> {
            out.println(title(rule, read.edition().get()));
            objections.forEach(o -> {
                out.println("  " + o.said());
                out.println("    wrong: " + o.because());
            });
        });
        out.flush();
        return all ? ExitCode.OK : ExitCode.UNREADABLE_INPUT;
    }

    private static boolean read(Path file, Map<String, List<Objection>> byRule, PrintWriter err) {
        try {
            Objection objection = Hashes.read(Files.readAllBytes(file), Objection.class);
            if (objection.said() == null || objection.because() == null) {
                throw new IOException("it names no statement or nothing that is wrong with it");
            }
            List<String> rules = objection.rules().isEmpty() ? List.of(NO_RULE) : objection.rules();
            rules.forEach(r -> byRule.computeIfAbsent(r, k -> new ArrayList<>()).add(objection));
            return true;
        } catch (IOException e) {
            err.println("error " + file + ": this is no file that \"mark\" wrote: "
                    + String.valueOf(e.getMessage()).lines().findFirst().orElse(""));
            return false;
        }
    }

    private static String title(String rule, Edition edition) {
        if (rule.isEmpty()) {
            return "Figures and catalogue: no rule says these";
        }
        return edition.rules().stream()
                .filter(r -> r.id().equals(rule))
                .findFirst()
                .map(Rule::title)
                .map(t -> t + " [" + rule + "]")
                .orElse("A rule that this edition does not have [" + rule + "]");
    }
}
