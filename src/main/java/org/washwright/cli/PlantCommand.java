package org.washwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.RefusedTask;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.document.Similar;
import org.washwright.exchange.EditionReader;
import org.washwright.library.Engine;
import org.washwright.library.TaskEvaluator;
import org.washwright.plant.Plant;
import org.washwright.plant.PlantJudge;
import org.washwright.plant.PlantReader;
import org.washwright.plant.PlantWeek;
import org.washwright.plant.SetTask;
import org.washwright.quantity.Dimension;
import org.washwright.quantity.Quantities;
import org.washwright.quantity.Span;
import org.washwright.rule.Edition;
import org.washwright.task.Value;
import org.washwright.taskfile.TaskFile;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Holds a set of tasks against one plant with no server, no database and no port. */
@Command(
        name = "plant",
        mixinStandardHelpOptions = true,
        description = "Says which tasks a plant can serve, what blocks the others and how full its week is.")
final class PlantCommand implements Callable<Integer> {

    @Parameters(index = "0", paramLabel = "PLANT", description = "plant as YAML or JSON")
    private String plant;

    @Parameters(
            index = "1..*",
            arity = "0..*",
            paramLabel = "TASK",
            description =
                    "tasks as YAML, JSON, table (.csv) or workbook (.xlsx), in the order in which the week is filled")
    private List<String> tasks = new ArrayList<>();

    @Option(
            names = "--parts-per-week",
            paramLabel = "TASK=NUMBER",
            description = "parts a week of a task, by its file as given or its file name; a range is allowed")
    private Map<String, String> partsPerWeek = new TreeMap<>();

    @Option(names = "--json", description = "write JSON instead of text")
    private boolean json;

    @CommandLine.Mixin
    private RequestOptions request = new RequestOptions();

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        EditionReader.Result read = request.edition();
        if (read.edition().isEmpty()) {
            DiagnosticText.write(read.diagnostics().all(), err);
            err.println("The edition " + request.editionName()
                    + " can't be used. Mend it; \"check\" lists the same errors.");
            return ExitCode.UNREADABLE_INPUT;
        }
        Edition edition = read.edition().get();
        Diagnostics diagnostics = new Diagnostics();
        Optional<Plant> given = plant(edition, diagnostics);
        List<SetTask> set = set(edition, diagnostics);
        if (diagnostics.hasErrors() || given.isEmpty()) {
            DiagnosticText.write(diagnostics.all(), err);
            return ExitCode.UNREADABLE_INPUT;
        }
        Optional<PlantWeek> week = judge(edition, given.get(), set, err);
        if (week.isEmpty()) {
            return ExitCode.UNREADABLE_INPUT;
        }
        if (json) {
            EditionOptions.write(week.get(), out);
        } else {
            new PlantText(week.get(), out).write();
        }
        boolean all = week.get().tasks().stream().noneMatch(t -> t.verdict().equals(PlantJudge.DOES_NOT_SERVE));
        return all ? ExitCode.OK : ExitCode.FINDINGS;
    }

    private Optional<PlantWeek> judge(Edition edition, Plant given, List<SetTask> set, PrintWriter err) {
        Assessor assessor =
                TaskEvaluator.of(edition, request.engine(Engine.QUICK)).assessor();
        PlantJudge judge = new PlantJudge(assessor, request.wishes());
        List<PlantWeek.TaskOnPlant> judged = new ArrayList<>();
        List<Diagnostic> wrong = new ArrayList<>();
        for (int i = 0; i < set.size(); i++) {
            try {
                judged.add(judge.task(given, set.get(i)));
            } catch (RefusedTask e) {
                // Places of a task that was read already know no file any more.
                err.println(tasks.get(i) + ":");
                wrong.addAll(e.diagnostics());
                DiagnosticText.write(e.diagnostics(), err);
            }
        }
        return wrong.isEmpty() ? Optional.of(judge.gathered(given, judged)) : Optional.empty();
    }

    private Optional<Plant> plant(Edition edition, Diagnostics diagnostics) {
        try (InputStream in = Files.newInputStream(Path.of(plant))) {
            return PlantReader.read(plant, in.readNBytes(PlantReader.MAX_BYTES + 1), edition, diagnostics);
        } catch (IOException e) {
            diagnostics.add(Message.UNREADABLE, Place.ofFile(plant), plant);
            return Optional.empty();
        }
    }

    private List<SetTask> set(Edition edition, Diagnostics diagnostics) {
        if (tasks.size() > PlantJudge.MOST_TASKS) {
            diagnostics.add(
                    Message.LIST_TOO_LONG,
                    Place.ofFile("-"),
                    String.valueOf(tasks.size()),
                    "tasks",
                    PlantJudge.MOST_TASKS);
            return List.of();
        }
        Map<String, Value> parts = parts(diagnostics);
        List<SetTask> set = new ArrayList<>();
        for (String file : tasks) {
            Diagnostics own = new Diagnostics();
            TaskInput.read(file, edition, own)
                    .map(TaskFile.Read::task)
                    .ifPresent(t -> set.add(new SetTask(
                            t, parts.getOrDefault(file, parts.getOrDefault(fileName(file), Value.UNKNOWN)))));
            diagnostics.addAll(own);
        }
        return set;
    }

    private Map<String, Value> parts(Diagnostics diagnostics) {
        List<String> known = new ArrayList<>(tasks);
        tasks.forEach(t -> known.add(fileName(t)));
        Map<String, Value> out = new TreeMap<>();
        partsPerWeek.forEach((task, number) -> {
            Place place = Place.ofFile("--parts-per-week");
            if (!known.contains(task)) {
                diagnostics.add(
                        Message.UNKNOWN_REFERENCE, place, task, "task of this set", Similar.advice(task, known));
            }
            Optional<Span> span = Quantities.readSpan(number, Dimension.RATIO, place, diagnostics);
            span.ifPresent(s -> out.put(task, new Value.Number(s)));
        });
        return out;
    }

    private static String fileName(String file) {
        Path name = Path.of(file).getFileName();
        return name == null ? file : name.toString();
    }
}
