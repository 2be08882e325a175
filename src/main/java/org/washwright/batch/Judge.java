package org.washwright.batch;

import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import java.util.function.Function;
import java.util.function.Supplier;
import org.washwright.library.Evaluation;

/**
 * Answers some records a second time by another engine and compares. That engine is made ready in the judge's own thread
 * when the first record comes, so that nobody waits for it before a backlog has grown.
 */
final class Judge {

    private static final int BACKLOG = 64;

    /** Two engines disagree. */
    record Difference(long record, String hash, String other) {}

    private final long every;
    private final Supplier<Function<byte[], Evaluation>> maker;
    private final Tally tally;
    private final Runnable alarm;
    private final Semaphore room = new Semaphore(BACKLOG);
    private final ExecutorService thread = Executors.newSingleThreadExecutor(task -> {
        Thread t = new Thread(task, "judge");
        t.setDaemon(true);
        return t;
    });
    private Function<byte[], Evaluation> other;
    private Future<?> last;
    private volatile Difference difference;

    /**
     * A judge.
     *
     * @param every each how manieth answer is judged; 0 for none
     * @param alarm is run as soon as a difference is seen
     */
    Judge(long every, Supplier<Function<byte[], Evaluation>> maker, Tally tally, Runnable alarm) {
        this.every = every;
        this.maker = maker;
        this.tally = tally;
        this.alarm = alarm;
    }

    /**
     * Hears an answer.
     *
     * @param n number of the answer among all answers, from 1
     * @param firstOfRun true for the first answer this run gave: each run is judged at least once
     */
    void hear(long n, boolean firstOfRun, long record, byte[] task, String hash) throws InterruptedException {
        if (every > 0 && (firstOfRun || n % every == 0)) {
            room.acquire();
            last = thread.submit(() -> judge(record, task, hash));
        }
    }

    private void judge(long record, byte[] task, String hash) {
        try {
            if (difference == null) {
                if (other == null) {
                    other = maker.get();
                }
                String second = other.apply(task) instanceof Evaluation.Answered a ? a.hash() : "refused";
                tally.judgedOne();
                if (!second.equals(hash)) {
                    difference = new Difference(record, hash, second);
                    alarm.run();
                }
            }
        } finally {
            room.release();
        }
    }

    /** Waits for everything heard; a failure of the other engine is a failure of the run. */
    Optional<Difference> verdict() throws InterruptedException {
        try {
            if (last != null) {
                last.get();
            }
            return Optional.ofNullable(difference);
        } catch (ExecutionException e) {
            throw new IllegalStateException("the judging engine failed", e.getCause());
        } finally {
            thread.shutdown();
        }
    }
}
