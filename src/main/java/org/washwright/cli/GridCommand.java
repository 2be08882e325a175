package org.washwright.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.washwright.document.Diagnostics;
import org.washwright.exchange.EditionReader;
import org.washwright.grid.Grid;
import org.washwright.grid.GridPlan;
import org.washwright.rule.Edition;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Says for kinds of work how many processes stand. */
@Command(
        name = "grid",
        mixinStandardHelpOptions = true,
        description = "Counts for each combination of the groups that grid.yaml names how many processes are"
                + " recommended, conditional and ruled out; as a table (CSV) or JSON.")
final class GridCommand implements Callable<Integer> {

    @CommandLine.Mixin
    private EditionOptions options = new EditionOptions();

    @Option(
            names = "--at",
            paramLabel = "AXIS=STOP",
            description = "only this stop of an axis, such as Feature.kind=blind-hole; may be given for several axes")
    private List<String> at = List.of();

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        Optional<EditionReader.Result> read = options.read(err);
        if (read.isEmpty()) {
            return ExitCode.UNREADABLE_INPUT;
        }
        if (read.get().checks().grid().isEmpty()) {
            err.println("The edition has no grid.yaml, which says what the grid is made over.");
            return ExitCode.UNREADABLE_INPUT;
        }
        GridPlan plan = read.get().checks().grid().get();
        Edition edition = read.get().edition().orElseThrow();
        Diagnostics diagnostics = new Diagnostics();
        List<List<GridPlan.Stop>> stops = plan.stops(edition, at, diagnostics);
        if (diagnostics.hasErrors()) {
            DiagnosticText.write(diagnostics.all(), err);
            return ExitCode.UNREADABLE_INPUT;
        }
        Grid grid = Grid.of(plan, stops, EditionOptions.quick(edition).assessor(), options.asOf());
        if (options.json()) {
            EditionOptions.write(grid.asData(), out);
        } else {
            csv(grid, out);
        }
        return ExitCode.OK;
    }

    private static void csv(Grid grid, PrintWriter out) {
        List<String> header =
                new ArrayList<>(grid.axes().stream().map(a -> cell(a.label())).toList());
        header.addAll(List.of("recommended", "conditional", "ruled out", "recommended processes"));
        out.println(String.join(",", header));
        for (Grid.Cell c : grid.cells()) {
            List<String> row = new ArrayList<>();
            for (int i = 0; i < c.at().size(); i++) {
                row.add(cell(grid.stops().get(i).get(c.at().get(i)).label()));
            }
            row.add(c.refused() ? "" : String.valueOf(c.recommended().size()));
            row.add(c.refused() ? "" : String.valueOf(c.conditional().size()));
            row.add(c.refused() ? "" : String.valueOf(c.ruledOut()));
            row.add(cell(String.join("; ", c.recommended())));
            out.println(String.join(",", row));
        }
        out.flush();
    }

    /** A cell of CSV (RFC 4180). */
    private static String cell(String text) {
        return text.matches("[^\",\\r\\n]*") ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
