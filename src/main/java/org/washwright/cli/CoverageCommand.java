package org.washwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.washwright.analysis.TestWords;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.RefusedTask;
import org.washwright.assessment.Wishes;
import org.washwright.cases.Case;
import org.washwright.coverage.Coverage;
import org.washwright.coverage.CoverageCount;
import org.washwright.coverage.RuleCoverage;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.exchange.EditionReader;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;
import org.washwright.task.TaskReader;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Says how far tasks exercise the rules of an edition. */
@Command(
        name = "coverage",
        mixinStandardHelpOptions = true,
        description =
                "Counts how often each rule fired and each of its conditions was true, false and undecided: over the"
                        + " edition's reference cases, or over tasks.")
final class CoverageCommand implements Callable<Integer> {

    @CommandLine.Mixin
    private EditionOptions options = new EditionOptions();

    @Parameters(
            index = "1..*",
            paramLabel = "TASKS",
            description = "files or folders of tasks (default: the tasks of the reference cases)")
    private List<Path> tasks = List.of();

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
        Edition edition = read.get().edition().orElseThrow();
        Diagnostics diagnostics = new Diagnostics();
        CoverageCount count = new CoverageCount(edition);
        if (tasks.isEmpty()) {
            cases(read.get().checks().cases(), count, edition, diagnostics);
        } else {
            files(count, edition, diagnostics);
        }
        if (diagnostics.hasErrors()) {
            DiagnosticText.write(diagnostics.all(), err);
            return ExitCode.UNREADABLE_INPUT;
        }
        Coverage coverage = count.coverage();
        if (options.json()) {
            EditionOptions.write(coverage.asData(edition), out);
        } else {
            text(coverage, edition, out);
        }
        return ExitCode.OK;
    }

    private void cases(List<Case> cases, CoverageCount count, Edition edition, Diagnostics diagnostics) {
        Assessor assessor = EditionOptions.quick(edition).assessor();
        cases.forEach(c -> add(c.id(), c.task(), c.asOf().orElse(options.asOf()), assessor, count, diagnostics));
    }

    private void files(CoverageCount count, Edition edition, Diagnostics diagnostics) {
        Assessor assessor = EditionOptions.quick(edition).assessor();
        for (Path path : files(diagnostics)) {
            Diagnostics own = new Diagnostics();
            try {
                TaskReader.read(path.toString(), Files.readAllBytes(path), edition, own)
                        .ifPresent(task -> add(path.toString(), task, options.asOf(), assessor, count, own));
            } catch (IOException e) {
                own.add(Message.UNREADABLE, Place.ofFile(path.toString()), path.toString());
            }
            diagnostics.addAll(own);
        }
    }

    private static void add(
            String id,
            CleaningTask task,
            String asOf,
            Assessor assessor,
            CoverageCount count,
            Diagnostics diagnostics) {
        try {
            count.add(id, task, asOf, assessor.outcome(task, Wishes.on(asOf)));
        } catch (RefusedTask e) {
            e.diagnostics().forEach(diagnostics::add);
        }
    }

    private List<Path> files(Diagnostics diagnostics) {
        List<Path> out = new ArrayList<>();
        for (Path path : tasks) {
            try (Stream<Path> walk = Files.walk(path)) {
                out.addAll(walk.filter(Files::isRegularFile)
                        .filter(p -> p.equals(path) || p.toString().matches(".*\\.(yaml|yml|json)"))
                        .sorted()
                        .toList());
            } catch (IOException e) {
                diagnostics.add(Message.UNREADABLE, Place.ofFile(path.toString()), path.toString());
            }
        }
        return out;
    }

    private static void text(Coverage coverage, Edition edition, PrintWriter out) {
        for (RuleCoverage r : coverage.rules()) {
            out.println((r.isComplete() ? "complete  " : "partly    ")
                    + r.rule().id() + "  fired " + r.fired()
                    + ", undecided " + r.undecided() + ", silent " + r.failed() + ", "
                    + r.heldBack()
                            .map(pair -> "fires in " + pair.fires() + " and not in " + pair.silent())
                            .orElse(r.readsProcessesAlone() ? "reads processes alone" : "not held back by one change"));
            r.tests().stream()
                    .filter(t -> !t.missing().isEmpty())
                    .forEach(t -> out.println("            "
                            + t.missing() + ": " + TestWords.of(t.test(), edition) + " (true " + t.yes() + ", false "
                            + t.no()
                            + ", undecided " + t.open() + ")"));
        }
        out.println(coverage.tasks() + " tasks: " + coverage.fired() + " of "
                + coverage.rules().size() + " rules fired, " + coverage.heldBack()
                + " were held back by one change and " + coverage.readingProcessesAlone()
                + " read processes alone, " + coverage.bothWays() + " of " + coverage.tests()
                + " conditions were seen both true and false");
        out.flush();
    }
}
