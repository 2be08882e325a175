package org.washwright.judging;

import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.jboss.logging.Logger;
import org.washwright.access.Person;
import org.washwright.casework.PastTasks;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.impact.meaning.State;
import org.washwright.impact.replay.Impact;
import org.washwright.impact.replay.Origin;
import org.washwright.impact.replay.Replaying;
import org.washwright.impact.replay.Trial;
import org.washwright.problem.ProblemException;
import org.washwright.rulebook.Recent;
import org.washwright.rulebook.Work;

/**
 * Tries the tasks of a workspace and the cases of two editions by both, on a thread of its own. What goes on is told by the
 * hashes of the files; what came of it is kept.
 */
@ApplicationScoped
class Impacts {
    /** Most kept tasks that are tried, the latest ones. */
    static final int MOST_TASKS = 300;

    private static final Logger LOG = Logger.getLogger(Impacts.class);
    private static final int KEPT = 16;
    private static final int WAITING = 8;

    private final EditionPairs pairs;
    private final PastTasks tasks;
    private final Runs runs;
    private final Recent<Work<Impact>> works = new Recent<>(KEPT);
    private final ThreadPoolExecutor thread =
            new ThreadPoolExecutor(1, 1, 0, TimeUnit.SECONDS, new ArrayBlockingQueue<>(WAITING), task -> {
                Thread made = new Thread(task, "edition-impact");
                made.setDaemon(true);
                made.setContextClassLoader(Impacts.class.getClassLoader());
                return made;
            });

    Impacts(EditionPairs pairs, PastTasks tasks, Runs runs) {
        this.pairs = pairs;
        this.tasks = tasks;
        this.runs = runs;
    }

    /** Where a run stands: going on, failed, or neither, and what was kept of the last one. */
    record Standing(Optional<Work<Impact>> going, boolean failed, Optional<KeptRun> kept) {}

    Standing standing(UUID workspace, EditionPairs.Pair pair) {
        Optional<Work<Impact>> work = works.find(key(workspace, pair));
        boolean failed = work.filter(Impacts::isFailed).isPresent();
        Optional<Work<Impact>> going =
                work.filter(w -> !isFailed(w) && w.result().isEmpty());
        return new Standing(
                going,
                failed,
                going.isPresent()
                        ? Optional.empty()
                        : runs.latest(
                                workspace,
                                pair.before().textHash(),
                                pair.after().textHash()));
    }

    /** Begins a run unless one goes on. */
    void begin(UUID workspace, EditionPairs.Pair pair, Person by) {
        if (standing(workspace, pair).going().isPresent()) {
            return;
        }
        State before = pairs.state(workspace, pair.before());
        State after = pairs.state(workspace, pair.after());
        List<Trial> trials = new ArrayList<>();
        for (PastTasks.PastTask task : tasks.newest(workspace, MOST_TASKS)) {
            trials.add(Trial.of(
                    task.id().toString(),
                    task.title(),
                    Origin.KEPT,
                    Optional.empty(),
                    task.document().getBytes(StandardCharsets.UTF_8)));
        }
        trials.addAll(Trial.ofCases(before, after));
        Work<Impact> work = new Work<>(trials.size());
        String date = runs.today();
        try {
            thread.execute(() -> {
                work.run(progress -> {
                    Impact impact = new Replaying(before, after, SweepInference.factory(), date).of(trials, progress);
                    runs.add(workspace, pair.after().id(), pair.before().id(), impact, by);
                    return impact;
                });
                failure(work).ifPresent(e -> LOG.error("an impact run failed", e));
            });
        } catch (RejectedExecutionException e) {
            throw new ProblemException(
                    503, "Busy", "Too many editions are being tried; try again in a minute.", List.of());
        }
        works.put(key(workspace, pair), work);
    }

    private static Optional<IllegalStateException> failure(Work<Impact> work) {
        try {
            work.result();
            return Optional.empty();
        } catch (IllegalStateException e) {
            return Optional.of(e);
        }
    }

    private static boolean isFailed(Work<Impact> work) {
        return failure(work).isPresent();
    }

    private static String key(UUID workspace, EditionPairs.Pair pair) {
        return workspace + " " + pair.before().textHash() + " " + pair.after().textHash();
    }

    @PreDestroy
    void stop() {
        thread.shutdownNow();
    }
}
