package org.washwright.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            description = "text (default), json, sarif (OASIS SARIF 2.1.0) or junit (JUnit XML)")
    private String format;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        OutputFormat wanted = OutputFormat.of(format, json, OutputFormat.all(), spec.commandLine());
        Optional<Path> path = Optional.ofNullable(edition);
        EditionInput.Opened opened = EditionInput.open(path);
        EditionReader.Result result = opened.result();
        PrintWriter out = spec.commandLine().getOut();
        switch (wanted) {
            case JSON -> out.print(new String(Hashes.canonical(json(result)), StandardCharsets.UTF_8));
            case SARIF ->
                EditionOptions.write(
                        SarifReport.of(result.diagnostics().all().stream()
                                .map(d -> Noted.of(d, path))
                                .toList()),
                        out);
            case JUNIT -> out.print(JUnitReport.of("edition", tested(opened)));
            default -> {
                DiagnosticText.write(result.diagnostics().all(), out);
                out.println(summary(result));
            }
        }
        out.flush();
        return result.edition().isPresent() ? ExitCode.OK : ExitCode.FINDINGS;
    }

    /** Every file of the edition, and what else something was found in. */
    private static List<JUnitReport.Tested> tested(EditionInput.Opened opened) {
        Map<String, List<Diagnostic>> byFile = new TreeMap<>();
        opened.files().files().keySet().forEach(name -> byFile.put(name, new ArrayList<>()));
        opened.result()
                .diagnostics()
                .all()
                .forEach(d -> byFile.computeIfAbsent(d.place().file(), f -> new ArrayList<>())
                        .add(d));
        List<JUnitReport.Tested> out = new ArrayList<>();
        byFile.forEach((file, found) -> {
            long errors =
                    found.stream().filter(d -> d.severity() == Severity.ERROR).count();
            out.add(new JUnitReport.Tested(
                    "edition",
                    file,
                    errors == 0 ? "" : errors + (errors == 1 ? " error" : " errors"),
                    String.join("\n", found.stream().map(Diagnostic::toString).toList())));
        });
        return out;
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
