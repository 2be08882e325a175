package org.washwright.rulebook;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntConsumer;

/** Work that takes a while: how far it is, and what came of it. */
final class Work<T> {
    private final int all;
    private volatile int done;
    private volatile T result;
    private volatile RuntimeException failure;

    /** Work of so many parts. */
    Work(int all) {
        this.all = all;
    }

    void run(Function<IntConsumer, T> task) {
        try {
            result = task.apply(n -> done = Math.max(done, n));
        } catch (RuntimeException e) {
            failure = e;
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
            throw new IllegalStateException("work on an edition failed", failure);
        }
        return Optional.ofNullable(result);
    }
}
