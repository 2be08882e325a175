package org.washwright.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.washwright.assessment.Outcome;
import org.washwright.assessment.RefusedTask;
import org.washwright.explain.whynot.Outlook;
import org.washwright.explain.whynot.WhyNot;
import org.washwright.explain.whynot.WhyNotText;
import org.washwright.line.ProcessLine;
import org.washwright.rule.Rule;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Says why a process does not stand, or why a rule did not fire. */
@Command(
        name = "why-not",
        mixinStandardHelpOptions = true,
        description = "Says why a process does not stand or why a rule did not fire, with the conditions that failed or"
                + " are undecided and their values; without either, every process that does not stand.")
final class WhyNotCommand implements Callable<Integer> {

    @CommandLine.Mixin
    private AskedTask asked = new AskedTask();

    @Option(names = "--process", paramLabel = "ID", description = "process by id or name")
    private String process;

    @Option(
            names = "--rule",
            paramLabel = "ID",
            description = "rule by id; with --process, as far as that is concerned")
    private String rule;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        Optional<AskedTask.Ready> ready = asked.read(err);
        if (ready.isEmpty()) {
            return ExitCode.UNREADABLE_INPUT;
        }
        try {
            Outcome outcome = ready.get()
                    .evaluator()
                    .assessor()
                    .outcome(ready.get().task(), ready.get().wishes());
            return answer(outcome, out, err);
        } catch (RefusedTask e) {
            DiagnosticText.write(e.diagnostics(), err);
            return ExitCode.UNREADABLE_INPUT;
        }
    }

    private int answer(Outcome outcome, PrintWriter out, PrintWriter err) {
        WhyNot whyNot = new WhyNot(outcome);
        Optional<ProcessLine> line = outcome.lines().stream()
                .filter(l -> l.process().id().equals(process)
                        || l.process().term().name().equalsIgnoreCase(process))
                .findFirst();
        Optional<Rule> found = rule == null ? Optional.empty() : whyNot.find(rule);
        if (process != null && line.isEmpty()) {
            err.println(
                    "The edition has no process \"" + process + "\". Give an id as \"grid\" or \"assess\" name it.");
            return ExitCode.USAGE;
        }
        if (rule != null && found.isEmpty()) {
            err.println("The edition has no rule \"" + rule + "\". Give an id such as "
                    + outcome.edition().rules().get(0).id() + ".");
            return ExitCode.USAGE;
        }
        if (found.isPresent()) {
            Outlook outlook = line.isPresent()
                    ? whyNot.rule(found.get(), line.get().process().id())
                    : whyNot.rule(found.get());
            write(outlook, WhyNotText.of(outlook), out);
        } else if (line.isPresent()) {
            var outlook = whyNot.process(line.get().process().id());
            write(outlook, WhyNotText.of(outlook), out);
        } else {
            var all = outcome.lines().stream()
                    .filter(l -> l.status() != ProcessLine.Status.RECOMMENDED)
                    .map(whyNot::brief)
                    .toList();
            write(all, WhyNotText.of(all), out);
        }
        return ExitCode.OK;
    }

    private void write(Object data, String text, PrintWriter out) {
        if (asked.json()) {
            EditionOptions.write(data, out);
        } else {
            out.print(text);
            out.flush();
        }
    }
}
