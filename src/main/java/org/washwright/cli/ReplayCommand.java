package org.washwright.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.washwright.assessment.Answer;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.document.Similar;
import org.washwright.explain.replay.Replay;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells step by step how an answer came about. */
@Command(
        name = "replay",
        mixinStandardHelpOptions = true,
        description =
                "Tells step by step how an answer came about: what was given, what the catalogue and formulas add,"
                        + " every firing, and what follows for each process.")
final class ReplayCommand implements Callable<Integer> {

    @Parameters(
            paramLabel = "TASK_OR_ANSWER",
            description = "task as YAML, JSON, table or workbook, or the answer that \"assess --json\" wrote")
    private String file;

    @Option(
            names = "--process",
            paramLabel = "ID",
            description = "only what concerns this process, and what that rests on")
    private String process;

    @CommandLine.ArgGroup
    private Shown shown = new Shown();

    @Option(names = "--json", description = "write all steps as JSON instead of text")
    private boolean json;

    @CommandLine.Mixin
    private RequestOptions request = new RequestOptions();

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    /** Which steps are shown; without either, the chapters. */
    static final class Shown {
        @Option(names = "--step", paramLabel = "N", description = "show this step, from 1")
        private int step;

        @Option(names = "--all", description = "show every step")
        private boolean all;
    }

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        Diagnostics diagnostics = new Diagnostics();
        Optional<AnswerInput.Titled> read = AnswerInput.read(file, request, diagnostics);
        Optional<Replay> replay = read.flatMap(r -> replay(r.answer(), diagnostics));
        if (replay.isEmpty()) {
            DiagnosticText.write(diagnostics.all(), err);
            return ExitCode.UNREADABLE_INPUT;
        }
        Replay walk = replay.get();
        if (shown.step != 0 && (shown.step < 1 || shown.step > walk.size())) {
            diagnostics.add(
                    Message.OUT_OF_RANGE,
                    Place.ofFile("--step"),
                    String.valueOf(shown.step),
                    "the steps 1 to " + walk.size());
            DiagnosticText.write(diagnostics.all(), err);
            return ExitCode.USAGE;
        }
        write(walk, read.get().title(), out);
        return ExitCode.OK;
    }

    private void write(Replay walk, String title, PrintWriter out) {
        if (json) {
            EditionOptions.write(walk, out);
            return;
        }
        out.println(title + (walk.name().isEmpty() ? "" : ": " + walk.name()));
        ReplayText text = new ReplayText(walk, out);
        if (shown.all) {
            text.all();
        } else if (shown.step > 0) {
            text.step(shown.step);
        } else {
            text.chapters();
        }
        out.flush();
    }

    private Optional<Replay> replay(Answer answer, Diagnostics diagnostics) {
        if (process == null) {
            return Optional.of(Replay.of(answer));
        }
        Optional<Replay> story = Replay.of(answer, process);
        if (story.isEmpty()) {
            List<String> known = new ArrayList<>();
            answer.candidates().forEach(c -> known.add(c.process()));
            answer.ruledOut().forEach(r -> known.add(r.process()));
            diagnostics.add(
                    Message.UNKNOWN_REFERENCE,
                    Place.ofFile("--process"),
                    process,
                    "process of this answer",
                    Similar.advice(process, known));
        }
        return story;
    }
}
