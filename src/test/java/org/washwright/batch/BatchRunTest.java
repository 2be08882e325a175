package org.washwright.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.library.Evaluation;

/** How records run through: order, bounds and every way to end. Answering is played, so that each case is certain. */
@Timeout(60)
class BatchRunTest {

    private static final int THREADS = 4;
    private static final Diagnostic REASON = reason();

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final Tally tally = new Tally();
    private final AtomicLong evaluated = new AtomicLong();
    private final List<Long> unanswered = new ArrayList<>();

    @Test
    void lines_come_in_the_order_of_the_records_however_long_each_takes() throws Exception {
        run(input(300), out, task -> {
            pause(ThreadLocalRandom.current().nextInt(3));
            return refuse();
        });
        assertEquals(LongStream.rangeClosed(1, 300).boxed().toList(), written());
        assertEquals(300, tally.count(Status.REFUSED));
        assertEquals(300, unanswered.size());
    }

    @Test
    void no_more_records_are_held_than_the_window_allows() throws Exception {
        AtomicLong most = new AtomicLong();
        run(input(5000), out, task -> {
            most.accumulateAndGet(evaluated.incrementAndGet() - tally.done(), Math::max);
            return refuse();
        });
        assertTrue(most.get() <= THREADS * 16 + THREADS + 2, "held at once: " + most);
    }

    @Test
    void a_writer_without_space_ends_the_run_and_takes_no_further_records() throws Exception {
        OutputStream full = new OutputStream() {
            private int lines;

            @Override
            public void write(int b) {
                throw new AssertionError("lines are written whole");
            }

            @Override
            public void write(byte[] line, int from, int length) throws IOException {
                if (++lines > 10) {
                    throw new IOException("No space left on device");
                }
            }
        };
        Optional<IOException> failure = run(input(100_000), full, task -> {
            evaluated.incrementAndGet();
            return refuse();
        });
        assertEquals("No space left on device", failure.orElseThrow().getMessage());
        assertEquals(10, tally.done());
        assertTrue(evaluated.get() < 1000, "evaluated " + evaluated);
    }

    @Test
    void a_fault_on_one_record_is_written_on_its_line_and_costs_no_other() throws Exception {
        run(input(20), out, task -> {
            if (new String(task, StandardCharsets.UTF_8).equals("{7}")) {
                throw new IllegalStateException("seven");
            }
            return refuse();
        });
        assertEquals(1, tally.count(Status.FAILED));
        assertEquals(20, tally.done());
        assertTrue(lines().get(6).contains("\"failure\":\"java.lang.IllegalStateException: seven\""), lines().get(6));
    }

    @Test
    void a_run_that_is_stopped_writes_everything_it_took() throws Exception {
        BatchRun[] run = new BatchRun[1];
        run[0] = make(source(input(100_000)), new StreamSink("-", out), task -> {
            if (evaluated.incrementAndGet() == 50) {
                run[0].stop();
            }
            return refuse();
        });
        run[0].run();
        assertTrue(run[0].isSettled());
        assertEquals(evaluated.get(), tally.done());
        assertTrue(tally.done() < 1000, "written " + tally.done());
        assertEquals(LongStream.rangeClosed(1, tally.done()).boxed().toList(), written());
    }

    @Test
    void an_input_that_breaks_off_is_told_after_what_was_taken_is_written() throws Exception {
        byte[] start = input(30);
        java.io.InputStream broken =
                new java.io.SequenceInputStream(new ByteArrayInputStream(start), new java.io.InputStream() {
                    @Override
                    public int read() throws IOException {
                        throw new IOException("cable pulled");
                    }
                });
        BatchRun run = make(new LineSource(broken, "-", -1), new StreamSink("-", out), task -> refuse());
        assertEquals("cable pulled", assertThrows(IOException.class, run::run).getMessage());
        assertEquals(30, tally.done());
    }

    private Optional<IOException> run(byte[] input, OutputStream to, Answering answering) throws Exception {
        return make(source(input), new StreamSink("-", to), answering).run();
    }

    private interface Answering {
        Evaluation answer(byte[] task);
    }

    private BatchRun make(RecordSource source, ResultSink sink, Answering answering) {
        RecordAnswerer answerer = new RecordAnswerer(source, (name, task) -> answering.answer(task), false);
        Judge none = new Judge(0, () -> task -> refuse(), tally, () -> {});
        return new BatchRun(
                source, sink, answerer, none, tally, THREADS, (record, result) -> unanswered.add(record.number()));
    }

    private static RecordSource source(byte[] input) throws IOException {
        return new LineSource(new ByteArrayInputStream(input), "-", input.length);
    }

    private static byte[] input(int records) {
        return LongStream.rangeClosed(1, records)
                .mapToObj(i -> "{" + i + "}\n")
                .collect(Collectors.joining())
                .getBytes(StandardCharsets.UTF_8);
    }

    private static Evaluation refuse() {
        return new Evaluation.Refused("", List.of(REASON));
    }

    private static Diagnostic reason() {
        Diagnostics diagnostics = new Diagnostics();
        diagnostics.add(Message.NO_TITLE, Place.ofFile("x"), "");
        return diagnostics.all().get(0);
    }

    private List<String> lines() {
        return out.toString(StandardCharsets.UTF_8).lines().toList();
    }

    private List<Long> written() {
        return lines().stream()
                .map(l -> Long.valueOf(l.replaceAll("^\\{\"record\":([0-9]+),.*", "$1")))
                .toList();
    }

    private static void pause(int millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
