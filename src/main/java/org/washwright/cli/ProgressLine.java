package org.washwright.cli;

import java.util.Locale;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.washwright.batch.Status;
import org.washwright.batch.Tally;

/** Shows how far a run over many tasks is: on a terminal one line drawn anew, elsewhere a plain line now and then. */
final class ProgressLine implements AutoCloseable {

    private static final long DRAW_MILLIS = 500;
    private static final long PLAIN_MILLIS = 10_000;

    private final ScheduledExecutorService clock = Executors.newSingleThreadScheduledExecutor(task -> {
        Thread thread = new Thread(task, "progress");
        thread.setDaemon(true);
        return thread;
    });
    private final Tally tally;
    private final BulkReport report;
    private final boolean drawn;
    private final long started = System.nanoTime();

    /** When a line is drawn anew. */
    enum When {
        auto,
        always,
        never
    }

    private ProgressLine(Tally tally, BulkReport report, boolean drawn) {
        this.tally = tally;
        this.report = report;
        this.drawn = drawn;
    }

    static ProgressLine start(When when, Tally tally, BulkReport report) {
        boolean drawn = when == When.always || when == When.auto && Terminal.isStandardError();
        ProgressLine line = new ProgressLine(tally, report, drawn);
        if (when != When.never) {
            long every = drawn ? DRAW_MILLIS : PLAIN_MILLIS;
            line.clock.scheduleAtFixedRate(line::show, every, every, TimeUnit.MILLISECONDS);
        }
        return line;
    }

    private void show() {
        double seconds = (System.nanoTime() - started) / 1e9;
        String text = text(tally.done(), tally.kept(), tally.count(Status.REFUSED), seconds, tally.share());
        if (drawn) {
            report.draw(text);
        } else {
            report.say(text);
        }
    }

    /** What is shown: pure, so that it can be tested without a clock. */
    static String text(long done, long kept, long refused, double seconds, double share) {
        double rate = (done - kept) / Math.max(seconds, 0.001);
        String text = done + " records" + (kept > 0 ? " (" + kept + " kept)" : "") + ", " + refused + " refused, "
                + String.format(Locale.ROOT, rate < 10 ? "%.1f" : "%.0f", rate) + " a second";
        if (share <= 0 || share >= 1 || done <= kept) {
            return text;
        }
        // Records kept cost nothing, so what is left is told from the rate at which new ones come.
        double left = (done / share - done) / rate;
        return text + ", " + Math.round(share * 100) + " %, about " + span(left) + " left";
    }

    private static String span(double seconds) {
        if (seconds < 90) {
            return Math.round(seconds) + " s";
        }
        return seconds < 5400 ? Math.round(seconds / 60) + " min" : Math.round(seconds / 3600) + " h";
    }

    @Override
    public void close() {
        clock.shutdownNow();
        report.clear();
    }
}
