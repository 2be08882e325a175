package org.washwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.impact.replay.Impact;
import org.washwright.impact.replay.Origin;
import org.washwright.impact.replay.Replaying;
import org.washwright.impact.replay.Trial;
import org.washwright.library.Engine;
import org.washwright.taskfile.TaskFile;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Answers tasks by two editions with no server and no database, and says what the change does to them. */
@Command(
        name = "impact",
        mixinStandardHelpOptions = true,
        description =
                "Answers tasks and reference cases by two editions: which answers change, how, and by which rule.")
final class ImpactCommand implements Callable<Integer> {

    private static final List<String> ENDINGS = List.of(".yaml", ".yml", ".json", ".csv", ".xlsx");

    @Parameters(index = "0", paramLabel = "BEFORE", description = "the earlier edition, folder or zip bundle")
    private Path before;

    @Parameters(index = "1", paramLabel = "AFTER", description = "the later edition, folder or zip bundle")
    private Path after;

    @Parameters(
            index = "2..*",
            paramLabel = "TASKS",
            description = "files of one task each, and folders of them; the cases of both editions are always tried")
    private List<Path> tasks = new ArrayList<>();

    @Option(names = "--as-of", paramLabel = "DATE", description = "date for which law is read (default: today, UTC)")
    private String asOf;

    @Option(names = "--unchanged", description = "an answer that changes in more than its words is a failure too")
    private boolean unchanged;

    @Option(names = "--json", description = "write canonical JSON instead of text")
    private boolean json;

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            description = "text (default), json, sarif (OASIS SARIF 2.1.0) or junit (JUnit XML)")
    private String format;

    @Option(
            names = "--also",
            paramLabel = "FORMAT=FILE",
            description = "write the same result into a file too, in another format; may be given several times")
    private Map<String, Path> also = new LinkedHashMap<>();

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Override
    public Integer call() {
        OutputFormat wanted = OutputFormat.of(format, json, OutputFormat.all(), spec.commandLine());
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        Diagnostics diagnostics = new Diagnostics();
        Map<Path, OutputFormat> files = new LinkedHashMap<>();
        also.forEach(
                (word, file) -> files.put(file, OutputFormat.of(word, false, OutputFormat.all(), spec.commandLine())));
        List<Trial> trials = trials(diagnostics);
        Optional<EditionPair> pair = EditionPair.read(before, after, err);
        if (diagnostics.hasErrors()) {
            DiagnosticText.write(diagnostics.all(), err);
        }
        if (diagnostics.hasErrors() || pair.isEmpty()) {
            return ExitCode.UNREADABLE_INPUT;
        }
        trials.addAll(Trial.ofCases(pair.get().before(), pair.get().after()));
        Replaying replaying = new Replaying(
                pair.get().before(),
                pair.get().after(),
                Engine.QUICK.factory(),
                asOf == null ? LocalDate.now(ZoneOffset.UTC).toString() : asOf);
        Impact impact = replaying.of(trials, n -> {});
        ImpactNotes notes = new ImpactNotes(impact, replaying.change(), after, unchanged);
        try {
            for (Map.Entry<Path, OutputFormat> file : files.entrySet()) {
                Files.writeString(file.getKey(), written(file.getValue(), impact, notes));
            }
        } catch (IOException e) {
            diagnostics.add(
                    Message.OUTPUT_UNWRITABLE,
                    Place.ofFile("--also"),
                    String.valueOf(e.getMessage()),
                    "it is no place for a file");
            DiagnosticText.write(diagnostics.all(), err);
            return ExitCode.CANNOT_WRITE;
        }
        out.print(written(wanted, impact, notes));
        out.flush();
        return notes.breaks() ? ExitCode.FINDINGS : ExitCode.OK;
    }

    private static String written(OutputFormat format, Impact impact, ImpactNotes notes) {
        StringWriter text = new StringWriter();
        PrintWriter out = new PrintWriter(text);
        switch (format) {
            case JSON -> EditionOptions.write(impact, out);
            case SARIF -> EditionOptions.write(SarifReport.of(notes.notes()), out);
            case JUNIT -> out.print(JUnitReport.of("impact", notes.tested()));
            default -> new ImpactText(impact, out).write();
        }
        out.flush();
        return text.toString();
    }

    private List<Trial> trials(Diagnostics diagnostics) {
        List<Trial> out = new ArrayList<>();
        for (Path given : tasks) {
            try (Stream<Path> files = Files.walk(given)) {
                files.filter(Files::isRegularFile)
                        .filter(f -> f.equals(given) || isTask(f))
                        .sorted()
                        .forEach(f -> out.add(trial(f)));
            } catch (IOException e) {
                diagnostics.add(Message.UNREADABLE, Place.ofFile(given.toString()), given.toString());
            }
        }
        return out;
    }

    private static boolean isTask(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        return ENDINGS.stream().anyMatch(name::endsWith);
    }

    private static Trial trial(Path file) {
        String name = file.toString();
        return new Trial(
                name,
                name,
                Origin.FILE,
                Optional.empty(),
                (edition, wrong) -> TaskInput.read(name, edition, wrong).map(TaskFile.Read::task));
    }
}
