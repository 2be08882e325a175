package org.washwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentSkipListMap;
import org.washwright.analysis.Examiner;
import org.washwright.analysis.Example;
import org.washwright.analysis.MissingCases;
import org.washwright.analysis.Proposals;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.document.Similar;
import org.washwright.exchange.EditionReader;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Proposes reference cases from the rules of an edition. */
@Command(
        name = "propose-cases",
        mixinStandardHelpOptions = true,
        description = "Writes cases for every rule: a task on which it fires and tasks at the edge of each of its"
                + " conditions. Look at them before they count.")
final class ProposeCases implements Callable<Integer> {

    @CommandLine.Mixin
    private EditionOptions options = new EditionOptions();

    @Option(names = "--out", paramLabel = "FILE", description = "where they go (default: standard output)")
    private Path file;

    @Option(names = "--rule", paramLabel = "ID", description = "cases for these rules alone")
    private List<String> only = List.of();

    @Option(
            names = "--missing",
            description =
                    "only what the edition's cases do not show: rules that fire in none of them, or that no single"
                            + " change holds back")
    private boolean missing;

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
        Diagnostics unknown = new Diagnostics();
        List<String> ids = edition.rules().stream().map(Rule::id).toList();
        only.stream()
                .filter(id -> !ids.contains(id))
                .forEach(id -> unknown.add(
                        Message.UNKNOWN_REFERENCE,
                        Place.ofFile("--rule"),
                        id,
                        "rule of this edition",
                        Similar.advice(id, ids)));
        if (unknown.hasErrors()) {
            DiagnosticText.write(unknown.all(), err);
            return ExitCode.UNREADABLE_INPUT;
        }
        List<Rule> rules = edition.rules().stream()
                .filter(r -> only.isEmpty() || only.contains(r.id()))
                .toList();
        Proposals proposals = new Proposals(edition);
        String yaml = missing
                ? proposals.yaml(new MissingCases(edition, read.get().checks().cases(), options.asOf()).find(rules))
                : proposals.yaml(examples(edition, rules));
        if (file == null) {
            out.print(yaml);
            out.flush();
            return ExitCode.OK;
        }
        try {
            Files.writeString(file, yaml);
            return ExitCode.OK;
        } catch (IOException e) {
            Diagnostics diagnostics = new Diagnostics();
            diagnostics.add(
                    Message.OUTPUT_UNWRITABLE,
                    Place.ofFile(file.toString()),
                    file.toString(),
                    String.valueOf(e.getMessage()));
            DiagnosticText.write(diagnostics.all(), err);
            return ExitCode.CANNOT_WRITE;
        }
    }

    private Map<String, List<Example>> examples(Edition edition, List<Rule> rules) {
        Examiner examiner = new Examiner(edition, options.asOf(), Examiner.USUAL_BUDGET);
        Map<String, List<Example>> examples = new ConcurrentSkipListMap<>();
        rules.parallelStream().forEach((Rule r) -> examples.put(r.id(), examiner.examples(r)));
        return examples;
    }
}
