package org.washwright.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.washwright.assessment.RefusedTask;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.document.Similar;
import org.washwright.explain.change.ChangeFinder;
import org.washwright.explain.change.Changes;
import org.washwright.explain.change.Goal;
import org.washwright.explain.vary.Difference;
import org.washwright.rule.Edition;
import org.washwright.task.Group;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Says what would change an answer, with no server, no database and no port. */
@Command(
        name = "changes",
        mixinStandardHelpOptions = true,
        description = "Finds the smallest sets of changes to a task that bring a process in or make another one first.")
final class ChangesCommand implements Callable<Integer> {

    @CommandLine.Mixin
    private AskedTask asked = new AskedTask();

    @Option(
            names = "--goal",
            required = true,
            paramLabel = "GOAL",
            description = "bring-in=PROCESS, let-stand=PROCESS, first=PROCESS or displace-first")
    private String goal;

    @Option(
            names = "--free",
            split = ",",
            paramLabel = "GROUP",
            description =
                    "what may change though it is held fast else: part, materials, components, features, jurisdictions")
    private List<String> free = new ArrayList<>();

    @Option(names = "--most", defaultValue = "3", description = "most changes in a set, 1 to 3 (default: 3)")
    private int most;

    @Option(names = "--evaluations", defaultValue = "3000", description = "most tasks tried (default: 3000)")
    private int evaluations;

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
        Diagnostics diagnostics = new Diagnostics();
        Optional<Goal> wanted = goal(ready.get().evaluator().edition(), diagnostics);
        Set<Group> freed = freed(diagnostics);
        range("--most", most, ChangeFinder.MOST_CHANGES, diagnostics);
        range("--evaluations", evaluations, ChangeFinder.MOST_EVALUATIONS, diagnostics);
        if (diagnostics.hasErrors() || wanted.isEmpty()) {
            DiagnosticText.write(diagnostics.all(), err);
            return ExitCode.USAGE;
        }
        try {
            ChangeFinder finder = new ChangeFinder(ready.get().evaluator().assessor());
            Changes found = finder.find(
                    ready.get().task(),
                    ready.get().wishes(),
                    wanted.get(),
                    new ChangeFinder.Scope(freed, most, evaluations),
                    n -> {});
            if (asked.json()) {
                EditionOptions.write(found, out);
            } else {
                write(found, out);
            }
            return found.reached() || !found.proposals().isEmpty() ? ExitCode.OK : ExitCode.FINDINGS;
        } catch (RefusedTask e) {
            DiagnosticText.write(e.diagnostics(), err);
            return ExitCode.UNREADABLE_INPUT;
        }
    }

    private Optional<Goal> goal(Edition edition, Diagnostics diagnostics) {
        int equals = goal.indexOf('=');
        String word = equals < 0 ? goal : goal.substring(0, equals);
        String process = equals < 0 ? "" : goal.substring(equals + 1);
        Place place = Place.ofFile("--goal");
        List<String> kinds =
                java.util.Arrays.stream(Goal.Kind.values()).map(Goal.Kind::word).toList();
        Optional<Goal.Kind> kind = Goal.Kind.byWord(word);
        if (kind.isEmpty()) {
            diagnostics.add(Message.UNKNOWN_REFERENCE, place, word, "goal", Similar.advice(word, kinds));
            return Optional.empty();
        }
        if (!kind.get().needsProcess()) {
            return Optional.of(new Goal(kind.get(), ""));
        }
        List<String> leaves =
                edition.catalogue().leaves().stream().map(p -> p.id()).toList();
        Optional<String> named = edition.term("process", process).filter(leaves::contains);
        if (named.isEmpty()) {
            diagnostics.add(
                    Message.UNKNOWN_REFERENCE,
                    place,
                    process,
                    "process of this edition",
                    Similar.advice(process, leaves));
        }
        return named.map(id -> new Goal(kind.get(), id));
    }

    private Set<Group> freed(Diagnostics diagnostics) {
        EnumSet<Group> out = EnumSet.noneOf(Group.class);
        List<String> known = ChangeFinder.FIXED.stream().map(Group::key).toList();
        for (String key : free) {
            Optional<Group> group = Group.byKey(key).filter(ChangeFinder.FIXED::contains);
            group.ifPresent(out::add);
            if (group.isEmpty()) {
                diagnostics.add(
                        Message.UNKNOWN_REFERENCE,
                        Place.ofFile("--free"),
                        key,
                        "group that is held fast",
                        Similar.advice(key, known));
            }
        }
        return out;
    }

    private static void range(String option, int value, int most, Diagnostics diagnostics) {
        if (value < 1 || value > most) {
            diagnostics.add(Message.OUT_OF_RANGE, Place.ofFile(option), String.valueOf(value), "1 to " + most);
        }
    }

    private static void write(Changes found, PrintWriter out) {
        out.println(found.verdict());
        for (Changes.Proposal p : found.proposals()) {
            out.println();
            out.println(p.effortWords());
            p.changes().forEach(c -> {
                out.println("  " + c.sentence());
                if (!c.others().isEmpty()) {
                    out.println("    or: "
                            + String.join(
                                    "; ",
                                    c.others().stream().map(Changes.Other::to).toList()));
                }
            });
            elsewhere(p.elsewhere(), out);
        }
        out.println();
        found.search().text().forEach(out::println);
        out.println(found.search().evaluations() + " tasks tried of at most "
                + found.search().budget() + ".");
        out.flush();
    }

    static void elsewhere(Difference d, PrintWriter out) {
        names("  gains", d.gained(), out);
        names("  loses", d.lost(), out);
        names("  moves", d.moved(), out);
        d.first()
                .filter(Difference.First::changes)
                .ifPresent(f -> out.println("  first is " + f.nameAfter() + " instead of " + f.nameBefore()));
    }

    private static void names(String verb, List<Difference.Turn> turns, PrintWriter out) {
        if (!turns.isEmpty()) {
            out.println(verb + " "
                    + String.join(
                            ", ",
                            turns.stream()
                                    .map(t -> t.name() + " (" + t.after() + ")")
                                    .toList()));
        }
    }
}
