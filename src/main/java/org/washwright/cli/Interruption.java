package org.washwright.cli;

import org.washwright.batch.Batch;

/** On a signal to end: takes no more records, waits until those taken are written, and says how to go on. */
final class Interruption implements AutoCloseable {

    private static final long PATIENCE_MILLIS = 30_000;
    private static final long STEP_MILLIS = 10;

    private final Thread hook;
    private boolean closed;

    private Interruption(Thread hook) {
        this.hook = hook;
    }

    static Interruption of(Batch batch, BulkReport report) {
        Thread hook = new Thread(() -> end(batch, report), "interruption");
        Runtime.getRuntime().addShutdownHook(hook);
        return new Interruption(hook);
    }

    private static void end(Batch batch, BulkReport report) {
        batch.stop();
        try {
            // The thread that takes records may hang in a read; what counts is that nothing taken is lost.
            for (long waited = 0; !batch.isSettled() && waited < PATIENCE_MILLIS; waited += STEP_MILLIS) {
                Thread.sleep(STEP_MILLIS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        report.interrupted(batch.tally());
    }

    @Override
    public void close() {
        if (!closed) {
            closed = true;
            try {
                Runtime.getRuntime().removeShutdownHook(hook);
            } catch (IllegalStateException e) {
                // The program is ending and the hook at work: it has the last word, and the exit code is the signal's.
                await(hook);
            }
        }
    }

    private static void await(Thread hook) {
        try {
            hook.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
