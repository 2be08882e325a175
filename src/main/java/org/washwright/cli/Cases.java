package org.washwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.washwright.cases.Case;
import org.washwright.cases.CaseResult;
import org.washwright.cases.CaseRunner;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.document.Similar;
import org.washwright.exchange.EditionReader;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Runs the reference cases of an edition. */
@Command(
        name = "cases",
        mixinStandardHelpOptions = true,
        description = "Runs the reference cases of an edition and says which expectations are not met, and why.")
final class Cases implements Callable<Integer> {

    @CommandLine.Mixin
    private EditionOptions options = new EditionOptions();

    @Option(names = "--case", paramLabel = "ID", description = "run this case alone")
    private String only;

    @Option(names = "--junit", paramLabel = "FILE", description = "write the results as JUnit XML too")
    private Path junit;

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            description = "text (default), json, sarif (OASIS SARIF 2.1.0: what is not met) or junit (JUnit XML)")
    private String format;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        OutputFormat wanted = OutputFormat.of(format, options.json(), OutputFormat.all(), spec.commandLine());
        Optional<EditionReader.Result> read = options.read(err);
        if (read.isEmpty()) {
            return ExitCode.UNREADABLE_INPUT;
        }
        List<Case> all = read.get().checks().cases();
        List<Case> cases =
                all.stream().filter(c -> only == null || c.id().equals(only)).toList();
        if (only != null && cases.isEmpty()) {
            return unknown(all, err);
        }
        List<CaseResult> results = new CaseRunner(
                        EditionOptions.quick(read.get().edition().orElseThrow()).assessor(), options.asOf())
                .run(cases);
        switch (wanted) {
            case JSON -> EditionOptions.write(json(results), out);
            case SARIF -> EditionOptions.write(SarifReport.of(CaseNotes.of(results, options.path())), out);
            case JUNIT -> out.print(JUnitReport.of(results));
            default -> text(results, out);
        }
        out.flush();
        if (junit != null && !written(results, err)) {
            return ExitCode.CANNOT_WRITE;
        }
        return results.stream().allMatch(CaseResult::holds) ? ExitCode.OK : ExitCode.FINDINGS;
    }

    private Integer unknown(List<Case> all, PrintWriter err) {
        Diagnostics diagnostics = new Diagnostics();
        diagnostics.add(
                Message.UNKNOWN_REFERENCE,
                Place.ofFile("--case"),
                only,
                "case of this edition",
                Similar.advice(only, all.stream().map(Case::id).toList()));
        DiagnosticText.write(diagnostics.all(), err);
        return ExitCode.UNREADABLE_INPUT;
    }

    private boolean written(List<CaseResult> results, PrintWriter err) {
        try {
            Files.writeString(junit, JUnitReport.of(results));
            return true;
        } catch (IOException e) {
            Diagnostics diagnostics = new Diagnostics();
            diagnostics.add(
                    Message.OUTPUT_UNWRITABLE,
                    Place.ofFile(junit.toString()),
                    junit.toString(),
                    String.valueOf(e.getMessage()));
            DiagnosticText.write(diagnostics.all(), err);
            return false;
        }
    }

    private static Map<String, Object> json(List<CaseResult> results) {
        Map<String, Object> all = new TreeMap<>();
        all.put("cases", results.stream().map(CaseResult::asData).toList());
        all.put("hold", results.stream().filter(CaseResult::holds).count());
        all.put("fail", results.stream().filter(r -> !r.holds()).count());
        return all;
    }

    private static void text(List<CaseResult> results, PrintWriter out) {
        for (CaseResult r : results) {
            out.println((r.holds() ? "holds  " : "FAILS  ") + r.reference().id() + "  "
                    + r.reference().title());
            if (!r.holds()) {
                out.println("         at " + r.reference().place());
                r.unmet().forEach(c -> {
                    out.println("       expected: " + c.expected());
                    out.println("       found:    " + c.found());
                });
                r.refused().forEach(d -> out.println("       refused:  " + d));
            }
        }
        long fail = results.stream().filter(r -> !r.holds()).count();
        long checks = results.stream().mapToLong(r -> r.checks().size()).sum();
        out.println(results.size() + " cases with " + checks + " expectations: " + (results.size() - fail) + " hold, "
                + fail + " fail");
        out.flush();
    }
}
