package org.washwright.reasons;

import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.function.IntConsumer;
import org.washwright.assessment.Assessor;
import org.washwright.casework.KeptAnswer;
import org.washwright.explain.asking.Asking;
import org.washwright.explain.asking.FindOut;
import org.washwright.explain.change.ChangeFinder;
import org.washwright.explain.change.Changes;
import org.washwright.explain.change.Goal;
import org.washwright.problem.ProblemException;
import org.washwright.rulebook.Editions;
import org.washwright.rulebook.Recent;
import org.washwright.rulebook.Work;

/**
 * Searches over kept answers, on a thread of their own as they take seconds. What came of one is kept by the hash of the answer
 * and what was searched for; an answer never changes, so it never grows stale.
 */
@ApplicationScoped
class Searches {
    private static final int KEPT = 64;
    private static final int WAITING = 16;

    /** A search that is quick is waited for, so that nobody has to ask twice. */
    private static final long PATIENCE_MILLIS = 1500;

    private final Editions editions;
    private final Recent<Work<Changes>> changes = new Recent<>(KEPT);
    private final Recent<Work<FindOut>> findOuts = new Recent<>(KEPT);
    private final ExecutorService thread =
            new ThreadPoolExecutor(1, 1, 0, TimeUnit.SECONDS, new ArrayBlockingQueue<>(WAITING), task -> {
                Thread made = new Thread(task, "answer-searcher");
                made.setDaemon(true);
                made.setContextClassLoader(Searches.class.getClassLoader());
                return made;
            });

    Searches(Editions editions) {
        this.editions = editions;
    }

    /** What would change an answer, begun unless it was before. */
    Work<Changes> changes(UUID workspace, KeptAnswer kept, Goal goal, ChangeFinder.Scope scope) {
        Assessor assessor = assessor(workspace, kept);
        String key = kept.frozen().hash() + " " + goal + " " + scope.most() + " " + scope.evaluations() + " "
                + scope.freed().stream().sorted().toList();
        return waited(changes.get(
                key,
                k -> begun(
                        scope.evaluations(),
                        progress -> new ChangeFinder(assessor)
                                .find(kept.asked().task(), kept.asked().wishes(), goal, scope, progress))));
    }

    /** What to find out next, begun unless it was before. */
    Work<FindOut> findOut(UUID workspace, KeptAnswer kept) {
        Assessor assessor = assessor(workspace, kept);
        return waited(findOuts.get(
                kept.frozen().hash(),
                k -> begun(
                        Asking.MOST_EVALUATIONS,
                        progress -> new Asking(assessor)
                                .ask(kept.asked().task(), kept.asked().wishes(), Asking.MOST_EVALUATIONS, progress))));
    }

    private Assessor assessor(UUID workspace, KeptAnswer kept) {
        return editions.indexed(workspace, kept.view().editionId());
    }

    private <T> Work<T> begun(int evaluations, Function<IntConsumer, T> search) {
        Work<T> work = new Work<>(evaluations);
        try {
            thread.execute(() -> work.run(search));
            return work;
        } catch (RejectedExecutionException e) {
            throw new ProblemException(
                    503, "Busy", "Too many answers are being searched; try again in a minute.", List.of());
        }
    }

    private static <T> Work<T> waited(Work<T> work) {
        work.await(PATIENCE_MILLIS);
        return work;
    }

    @PreDestroy
    void stop() {
        thread.shutdownNow();
    }
}
