package org.washwright.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import org.washwright.assessment.Wishes;
import org.washwright.batch.Batch;
import org.washwright.batch.BatchRefusal;
import org.washwright.document.Diagnostic;
import org.washwright.exchange.EditionReader;
import org.washwright.library.Engine;
import org.washwright.library.TaskEvaluator;
import org.washwright.rule.Edition;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Answers many cleaning tasks on all cores, one line of JSON each, and takes up where a stopped run ended. */
@Command(
        name = "bulk",
        mixinStandardHelpOptions = true,
        description = "Answers many tasks on all cores: one line of JSON each, in the order of the input.")
final class Bulk implements Callable<Integer> {

    @Parameters(
            paramLabel = "INPUT",
            description = "folder of task files, file with one JSON task a line, table (.csv), or - for lines on"
                    + " standard input")
    private String input;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            defaultValue = Batch.STANDARD,
            description = "where the lines go; a later run takes up where this one ends (default: standard output)")
    private String output;

    @Option(names = "--again", description = "throw away what FILE holds and start anew")
    private boolean again;

    @Option(names = "--full", description = "put the whole answer on each line, the same bytes as assess --json")
    private boolean full;

    @Option(names = "--threads", paramLabel = "N", description = "threads that answer (default: one a core)")
    private int threads = Runtime.getRuntime().availableProcessors();

    @Option(
            names = "--judge",
            paramLabel = "N",
            defaultValue = "1000",
            description = "answer the first and every Nth task by compiled rules too; both must give the same bytes"
                    + " (default: ${DEFAULT-VALUE}, 0: never)")
    private long judge;

    @Option(
            names = "--progress",
            paramLabel = "WHEN",
            defaultValue = "auto",
            description = "show progress on one line: ${COMPLETION-CANDIDATES} (default: ${DEFAULT-VALUE}, that is on"
                    + " a terminal; elsewhere a line each ten seconds)")
    private ProgressLine.When progress;

    @CommandLine.Mixin
    private RequestOptions request = new RequestOptions();

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    // A print stream would hide that nobody reads any more.
    private final Supplier<OutputStream> standardOutput;

    Bulk() {
        this(() -> new FileOutputStream(FileDescriptor.out));
    }

    Bulk(Supplier<OutputStream> standardOutput) {
        this.standardOutput = standardOutput;
    }

    @Override
    public Integer call() throws InterruptedException {
        if (threads < 1 || threads > 1024 || judge < 0) {
            throw new CommandLine.ParameterException(
                    spec.commandLine(), "--threads is a number from 1 to 1024, --judge one from 0.");
        }
        PrintWriter err = spec.commandLine().getErr();
        EditionReader.Result read = request.edition();
        if (read.edition().isEmpty()) {
            return refuse(read.diagnostics().all(), "The edition " + request.editionName() + " can't be used.", err);
        }
        try {
            Wishes wishes = wishes();
            List<Diagnostic> wrong =
                    TaskEvaluator.of(read.edition().get(), Engine.PLAIN).wrongWith(wishes);
            return wrong.isEmpty()
                    ? run(read.edition().get(), wishes, err)
                    : refuse(wrong, "No task can be answered with these options.", err);
        } catch (BatchRefusal e) {
            return refuse(e.diagnostics(), "Nothing was changed.", err);
        }
    }

    private Wishes wishes() throws BatchRefusal {
        String today = LocalDate.now(ZoneOffset.UTC).toString();
        return request.wishes(again ? today : Batch.asOfOf(output).orElse(today));
    }

    private int run(Edition edition, Wishes wishes, PrintWriter err) throws BatchRefusal, InterruptedException {
        Batch.Request asked = new Batch.Request(
                edition, wishes, input, output, full, again, threads, judge, request.engine(Engine.QUICK));
        BulkReport report = new BulkReport(output, err);
        try (Batch batch = Batch.open(asked, new Batch.Streams(System.in, standardOutput.get()), report::unanswered)) {
            try (Interruption interruption = Interruption.of(batch, report);
                    ProgressLine line = ProgressLine.start(progress, batch.tally(), report)) {
                Batch.End end = batch.run();
                line.close();
                interruption.close();
                return report.end(end, batch.tally());
            }
        } catch (IOException e) {
            return report.notClosed(e);
        }
    }

    private static int refuse(List<Diagnostic> diagnostics, String sentence, PrintWriter err) {
        DiagnosticText.write(diagnostics, err);
        err.println(sentence);
        err.flush();
        return ExitCode.UNREADABLE_INPUT;
    }
}
