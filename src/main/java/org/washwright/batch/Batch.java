package org.washwright.batch;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.washwright.assessment.Wishes;
import org.washwright.library.Engine;
import org.washwright.library.TaskEvaluator;
import org.washwright.rule.Edition;

/** A run over many tasks, from what was asked to how it ended. */
public final class Batch implements AutoCloseable {

    /** Name of standard input and standard output. */
    public static final String STANDARD = "-";

    private final RecordSource source;
    private final ResultSink sink;
    private final Judge judge;
    private final BatchRun run;
    private final Tally tally = new Tally();

    /**
     * What is asked.
     *
     * @param edition answers by it
     * @param wishes for every task
     * @param input folder, file or {@link #STANDARD}
     * @param output file or {@link #STANDARD}
     * @param full whether each line holds the whole answer
     * @param again whether an earlier output is thrown away
     * @param threads threads that answer
     * @param judgeEvery each how manieth answer is judged by compiled rules; 0 for none
     * @param engine answers with it
     */
    public record Request(
            Edition edition,
            Wishes wishes,
            String input,
            String output,
            boolean full,
            boolean again,
            int threads,
            long judgeEvery,
            Engine engine) {}

    /** The streams that {@link #STANDARD} stands for. */
    public record Streams(InputStream in, OutputStream out) {}

    /** Hears of each record that is not answered. */
    public interface Listener {
        /** A record without an answer, and why, in words. */
        void unanswered(String key, long record, long line, List<String> trouble);
    }

    /**
     * How a run ended.
     *
     * @param writeFailure the output could not be written on
     * @param readFailure the input could not be read on
     * @param difference two engines disagreed, in words
     */
    public record End(
            Optional<IOException> writeFailure, Optional<IOException> readFailure, Optional<String> difference) {}

    private Batch(Request request, Streams streams, Listener listener) throws BatchRefusal {
        Inputs.refuseOutputThatIsInput(request.input(), request.output());
        this.source = Inputs.open(request.input(), streams.in(), request.edition());
        try {
            this.sink = open(request, streams.out(), source.signature());
        } catch (BatchRefusal e) {
            Inputs.close(source, e);
            throw e;
        }
        TaskEvaluator evaluator = TaskEvaluator.of(request.edition(), request.engine());
        RecordAnswerer answerer = new RecordAnswerer(
                source, (name, task) -> evaluator.evaluate(name, task, request.wishes()), request.full());
        this.judge = new Judge(
                request.judgeEvery(),
                () -> {
                    TaskEvaluator compiled = TaskEvaluator.of(request.edition(), Engine.COMPILED);
                    return task -> compiled.evaluate(task, request.wishes());
                },
                tally,
                this::stop);
        this.run = new BatchRun(
                source,
                sink,
                answerer,
                judge,
                tally,
                request.threads(),
                (record, result) ->
                        listener.unanswered(record.key(), record.number(), record.line(), result.trouble()));
    }

    /**
     * Opens input and output; nothing is answered yet.
     *
     * @throws BatchRefusal when the run can't begin
     */
    public static Batch open(Request request, Streams streams, Listener listener) throws BatchRefusal {
        return new Batch(request, streams, listener);
    }

    /** The date that an unfinished output was asked for: who goes on with it on the next day means the same date. */
    public static Optional<String> asOfOf(String output) throws BatchRefusal {
        try {
            return isFile(output) ? ResultFile.identity(Path.of(output)).flatMap(RunIdentity::asOf) : Optional.empty();
        } catch (IOException e) {
            throw ResultFile.unwritable(output, e);
        }
    }

    private static ResultSink open(Request request, OutputStream out, String signature) throws BatchRefusal {
        String output = request.output();
        if (output.equals(STANDARD)) {
            return new StreamSink(STANDARD, out);
        }
        try {
            if (!isFile(output)) {
                return new StreamSink(output, Files.newOutputStream(Path.of(output)));
            }
        } catch (IOException e) {
            throw ResultFile.unwritable(output, e);
        }
        RunIdentity identity = RunIdentity.of(request.edition(), request.wishes(), signature, request.full());
        return ResultFile.open(Path.of(output), identity, request.again());
    }

    /** True for a file that can be read back; a pipe or device can't. */
    private static boolean isFile(String output) {
        Path path = Path.of(output);
        return !output.equals(STANDARD) && (Files.isRegularFile(path) || Files.notExists(path));
    }

    /**
     * Runs to the end of the input, or until it is stopped.
     *
     * @throws BatchRefusal when the output is one of other records
     */
    public End run() throws BatchRefusal, InterruptedException {
        Optional<IOException> unwritten = Optional.empty();
        Optional<IOException> unread = Optional.empty();
        try {
            unwritten = run.run();
        } catch (IOException e) {
            unread = Optional.of(e);
        }
        Optional<String> difference = judge.verdict()
                .map(d -> "record " + d.record() + ": answer " + d.hash() + ", by compiled rules " + d.other());
        return new End(unwritten, unread, difference);
    }

    /** What it has done so far. */
    public Tally tally() {
        return tally;
    }

    /** Takes no more records; those taken are answered and written. */
    public void stop() {
        run.stop();
    }

    /** True when every record taken is written. */
    public boolean isSettled() {
        return run.isSettled();
    }

    @Override
    public void close() throws IOException {
        try {
            source.close();
        } finally {
            sink.close();
        }
    }
}
