package org.washwright.rulebook;

import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.function.IntConsumer;

/** Work that takes a while: how far it is, and what came of it. */
public final class Work<T> {
    private final int all;
    private volatile int done;
    private volatile T result;
    private volatile RuntimeException failure;
    private final CountDownLatch over = new CountDownLatch(1);

    /** Work of so many parts. */
    public Work(int all) {
        this.all = all;
    }

    /** Does the work; a failure is kept for whoever asks for the result. */
    public void run(Function<IntConsumer, T> task) {
        try {
            result = task.apply(n -> done = Math.max(done, n));
        } catch (RuntimeException e) {
            failure = e;
        } finally {
            over.countDown();
        }
    }

    /** Waits a little for the end, for whoever would rather have the result at once. */
    public void await(long millis) {
        try {
            // Whether it is over by then is told by the result.
            boolean ignored = over.await(millis, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Parts that are done. */
    public int done() {
        return done;
    }

    /** Parts in all. */
    public int all() {
        return all;
    }

    /** What came of it; empty while it goes on. A failure of the program is thrown to whoever asks. */
    public Optional<T> result() {
        if (failure != null) {
            throw new IllegalStateException("work failed", failure);
        }
        return Optional.ofNullable(result);
    }
}
