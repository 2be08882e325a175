package org.washwright.batch;

import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicLong;
import org.washwright.document.Message;

/**
 * Takes records, has them answered by as many threads as wished, and writes the lines in the order of the records. However
 * long the input, no more than a window of records is held: taking waits for writing.
 */
final class BatchRun {

    private static final int WINDOW_PER_THREAD = 16;
    private static final int BUDGET_KILOBYTES = 16_000;

    private final RecordSource source;
    private final ResultSink sink;
    private final RecordAnswerer answerer;
    private final Judge judge;
    private final Tally tally;
    private final Listener listener;
    private final int threads;
    private final BlockingQueue<Optional<Slot>> window;
    private final Semaphore budget = new Semaphore(BUDGET_KILOBYTES);
    private volatile boolean stopping;
    private final AtomicLong submitted = new AtomicLong();
    private final AtomicLong settled = new AtomicLong();
    private IOException writeFailure;
    private RuntimeException fault;
    private boolean judgedOne;

    /** Hears of records that are not answered. */
    interface Listener {
        /** A record was refused, or the program failed on it. */
        void unanswered(InputRecord record, RecordAnswerer.Result result);
    }

    private record Slot(InputRecord record, Future<RecordAnswerer.Result> result, int cost) {}

    BatchRun(
            RecordSource source,
            ResultSink sink,
            RecordAnswerer answerer,
            Judge judge,
            Tally tally,
            int threads,
            Listener listener) {
        this.source = source;
        this.sink = sink;
        this.answerer = answerer;
        this.judge = judge;
        this.tally = tally;
        this.threads = threads;
        this.listener = listener;
        this.window = new ArrayBlockingQueue<>(threads * WINDOW_PER_THREAD);
    }

    /** Takes no more records; those taken are answered and written. */
    void stop() {
        stopping = true;
    }

    /** True when every record taken is written. */
    boolean isSettled() {
        return submitted.get() == settled.get();
    }

    /**
     * Runs to the end of the input, or until it is stopped.
     *
     * @return the failure to write that ended it; empty when every line is written
     * @throws BatchRefusal when an earlier run answered other records
     * @throws IOException when the input can't be read on
     */
    Optional<IOException> run() throws IOException, BatchRefusal, InterruptedException {
        Optional<InputRecord> first = skipKept();
        ExecutorService pool = Executors.newFixedThreadPool(threads, task -> daemon(task, "answering"));
        FutureTask<Void> writing = new FutureTask<>(this::writeAll, null);
        daemon(writing, "writing").start();
        try {
            for (Optional<InputRecord> r = first; r.isPresent() && !stopping; r = source.next()) {
                submit(r.get(), pool);
                tally.taken(source.share());
            }
        } finally {
            window.put(Optional.empty());
            get(writing);
            pool.shutdown();
        }
        if (fault != null) {
            throw fault;
        }
        if (writeFailure == null) {
            try {
                sink.finish();
            } catch (IOException e) {
                writeFailure = e;
            }
        }
        return Optional.ofNullable(writeFailure);
    }

    /** Passes over the records that an earlier run answered; gives the first that it did not. */
    private Optional<InputRecord> skipKept() throws IOException, BatchRefusal {
        Optional<InputRecord> record = source.next();
        Optional<ResultSink.Kept> kept = sink.kept();
        while (record.isPresent() && kept.isPresent() && !stopping) {
            InputRecord r = record.get();
            if (!r.sha256().equals(kept.get().sha256())) {
                throw BatchRefusal.of(Message.INPUT_CHANGED, sink.name(), r.number());
            }
            tally.done(kept.get().status(), true);
            tally.taken(source.share());
            record = source.next();
            kept = sink.kept();
        }
        if (kept.isPresent() && !stopping) {
            throw BatchRefusal.of(Message.INPUT_SHORTER, sink.name(), kept.get().record() - 1);
        }
        return record;
    }

    private void submit(InputRecord record, ExecutorService pool) throws InterruptedException {
        // A window full of the largest tasks would not fit into little memory: bytes are budgeted as well as records.
        int cost = Math.min(BUDGET_KILOBYTES, 1 + record.bytes().length / 1000);
        budget.acquire(cost);
        submitted.incrementAndGet();
        window.put(Optional.of(new Slot(record, pool.submit(() -> answerer.answer(record)), cost)));
    }

    private void writeAll() {
        try {
            for (Optional<Slot> slot = window.take(); slot.isPresent(); slot = window.take()) {
                settle(slot.get());
            }
        } catch (InterruptedException e) {
            throw new IllegalStateException("nobody interrupts the writing thread", e);
        }
    }

    /** After a failure the window is still emptied, so that whoever fills it comes to see that the run is stopped. */
    private void settle(Slot slot) throws InterruptedException {
        try {
            RecordAnswerer.Result result = get(slot.result());
            if (writeFailure == null && fault == null) {
                write(slot.record(), result);
            }
        } catch (IOException e) {
            writeFailure = e;
            stop();
        } catch (RuntimeException e) {
            fault = e;
            stop();
        } finally {
            budget.release(slot.cost());
            settled.incrementAndGet();
        }
    }

    private void write(InputRecord record, RecordAnswerer.Result result) throws IOException, InterruptedException {
        sink.write(result.line());
        tally.done(result.status(), false);
        if (result.status() == Status.ANSWERED) {
            judge.hear(tally.count(Status.ANSWERED), !judgedOne, record.number(), result.document(), result.hash());
            judgedOne = true;
        } else {
            listener.unanswered(record, result);
        }
    }

    private static <T> T get(Future<T> future) throws InterruptedException {
        try {
            return future.get();
        } catch (ExecutionException e) {
            throw new IllegalStateException("a record could not be worked on", e.getCause());
        }
    }

    private static Thread daemon(Runnable task, String name) {
        Thread thread = new Thread(task, name);
        thread.setDaemon(true);
        return thread;
    }
}
