package org.washwright.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.washwright.document.Diagnostic;
import org.washwright.document.Hashes;
import org.washwright.document.Severity;
import org.washwright.exchange.EditionReader;
import org.washwright.library.EditionInput;
import org.washwright.rule.Edition;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Checks an edition and lists everything that is wrong with it. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        description = "Checks an edition: every error and warning with its place and advice.")
final class Check implements Callable<Integer> {

    @Parameters(
            paramLabel = "EDITION",
            arity = "0..1",
            description = "folder or zip bundle of the edition (default: the starter rulebook)")
    private Path edition;

    @Option(names = "--json", description = "write JSON instead of text")
    private boolean json;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        EditionReader.Result result = edition == null ? EditionInput.readStarter() : EditionInput.read(edition);
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.print(new String(Hashes.canonical(json(result)), StandardCharsets.UTF_8));
        } else {
            DiagnosticText.write(result.diagnostics().all(), out);
            out.println(summary(result));
        }
        out.flush();
        return result.edition().isPresent() ? ExitCode.OK : ExitCode.FINDINGS;
    }

    private static Map<String, Object> json(EditionReader.Result result) {
        Map<String, Object> all = new TreeMap<>();
        all.put(
                "diagnostics",
                result.diagnostics().all().stream().map(Diagnostic::asData).toList());
        result.edition().ifPresent(e -> {
            all.put("name", e.name());
            all.put("rules", e.rules().size());
            all.put("meaningHash", e.meaningHash());
            all.put("textHash", e.textHash());
        });
        return all;
    }

    private static String summary(EditionReader.Result result) {
        long errors = result.diagnostics().all().stream()
                .map(Diagnostic::severity)
                .filter(s -> s == Severity.ERROR)
                .count();
        long warnings = result.diagnostics().all().size() - errors;
        String found = errors
                + (errors == 1 ? " error, " : " errors, ")
                + warnings
                + (warnings == 1 ? " warning" : " warnings");
        return result.edition().map(e -> sound(e, found)).orElse(found);
    }

    private static String sound(Edition e, String found) {
        long lineRules = e.lineRules().size();
        return found + System.lineSeparator()
                + e.title() + " (" + e.name() + "): " + e.rules().size() + " rules (" + lineRules + " over lines), "
                + e.catalogue().leaves().size() + " processes, " + e.trees().size() + " question trees"
                + System.lineSeparator()
                + "meaning " + e.meaningHash() + System.lineSeparator()
                + "text    " + e.textHash();
    }
}
