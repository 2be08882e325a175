package org.washwright.rulebook;

import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.IntConsumer;
import org.washwright.analysis.Examination;
import org.washwright.analysis.Examiner;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.RefusedTask;
import org.washwright.assessment.Wishes;
import org.washwright.cases.Case;
import org.washwright.cases.CaseResult;
import org.washwright.cases.CaseRunner;
import org.washwright.coverage.Coverage;
import org.washwright.coverage.CoverageCount;
import org.washwright.engine.sweep.SweepInference;
import org.washwright.grid.Grid;
import org.washwright.grid.GridPlan;
import org.washwright.problem.Conflict;
import org.washwright.problem.ProblemException;

/**
 * Checks editions as their authors ask: runs cases at once, and what takes longer on a thread of its own. Results are kept by
 * the hash of the files and the day, so that they never speak of other files.
 */
@ApplicationScoped
class Checkings {
    private static final int KEPT = 8;
    private static final int SHEETS_KEPT = 64;
    private static final int WAITING = 16;

    private final Editions editions;
    private final Clock clock;
    private final Recent<List<CaseResult>> results = new Recent<>(KEPT);
    private final Recent<Work<Examination>> examinations = new Recent<>(KEPT);
    private final Recent<Work<Coverage>> coverages = new Recent<>(KEPT);
    private final Recent<Work<Grid>> grids = new Recent<>(SHEETS_KEPT);
    /** Work of minutes, and work of seconds that need not wait for it. */
    private final ExecutorService slow = thread("edition-examiner");

    private final ExecutorService quick = thread("edition-counter");

    Checkings(Editions editions, Clock clock) {
        this.editions = editions;
        this.clock = clock;
    }

    private static ExecutorService thread(String name) {
        return new ThreadPoolExecutor(1, 1, 0, TimeUnit.SECONDS, new ArrayBlockingQueue<>(WAITING), task -> {
            Thread made = new Thread(task, name);
            made.setDaemon(true);
            made.setContextClassLoader(Checkings.class.getClassLoader());
            return made;
        });
    }

    /** The date for which law is read. */
    String today() {
        return LocalDate.now(clock).toString();
    }

    private Reading reading(UUID workspace, UUID id) {
        editions.content(workspace, id);
        return editions.reading(workspace, id);
    }

    private String key(Reading reading) {
        return reading.textHash() + " " + today();
    }

    private static Assessor assessor(Reading reading) {
        return Assessor.of(reading.edition().orElseThrow(), SweepInference.factory());
    }

    /** The cases of an edition. */
    List<Case> cases(UUID workspace, UUID id) {
        return reading(workspace, id).checks().cases();
    }

    /** Runs the cases. */
    List<CaseResult> run(UUID workspace, UUID id) {
        Reading reading = reading(workspace, id);
        List<CaseResult> fresh =
                new CaseRunner(assessor(reading), today()).run(reading.checks().cases());
        return results.get(key(reading), k -> fresh);
    }

    /** What came of the last run today; empty when there was none. */
    Optional<List<CaseResult>> results(UUID workspace, UUID id) {
        return results.find(key(reading(workspace, id)));
    }

    /** How far the cases exercise the rules, begun unless it was before. */
    Work<Coverage> coverage(UUID workspace, UUID id) {
        Reading reading = reading(workspace, id);
        List<Case> cases = reading.checks().cases();
        return coverages.get(
                key(reading),
                k -> begun(quick, new Work<>(cases.size()), progress -> {
                    Assessor assessor = assessor(reading);
                    CoverageCount count = new CoverageCount(assessor.edition());
                    for (int i = 0; i < cases.size(); i++) {
                        add(assessor, cases.get(i), count);
                        progress.accept(i + 1);
                    }
                    return count.coverage();
                }));
    }

    private void add(Assessor assessor, Case c, CoverageCount count) {
        String date = c.asOf().orElse(today());
        try {
            count.add(c.id(), c.task(), date, assessor.outcome(c.task(), Wishes.on(date)));
        } catch (RefusedTask covered) {
            // A case whose task is refused fails when it is run, with what is wrong; it covers nothing.
        }
    }

    /** The examination, begun unless it was before. */
    Work<Examination> examine(UUID workspace, UUID id) {
        Reading reading = reading(workspace, id);
        String date = today();
        return examinations.get(key(reading), k -> {
            int rules = reading.edition().orElseThrow().rules().size();
            return begun(
                    slow,
                    new Work<>(rules),
                    progress -> new Examiner(reading.edition().orElseThrow(), date, Examiner.USUAL_BUDGET)
                            .examine(reading.checks().known(), progress));
        });
    }

    /** The examination as far as it was begun. */
    Optional<Work<Examination>> examination(UUID workspace, UUID id) {
        return examinations.find(key(reading(workspace, id)));
    }

    /** What an edition's grid is made over. */
    GridPlan gridPlan(UUID workspace, UUID id) {
        return reading(workspace, id)
                .checks()
                .grid()
                .orElseThrow(() -> new Conflict(
                        "This edition has no grid.yaml, which says what the grid is made over; add one to its files."));
    }

    /** These stops of the grid, begun unless they were before. */
    Work<Grid> grid(UUID workspace, UUID id, List<List<GridPlan.Stop>> stops) {
        Reading reading = reading(workspace, id);
        String date = today();
        GridPlan plan = gridPlan(workspace, id);
        String key = key(reading) + " " + stops.stream().map(Checkings::ids).toList();
        return grids.get(
                key, k -> begun(quick, new Work<>(1), progress -> Grid.of(plan, stops, assessor(reading), date)));
    }

    private static List<String> ids(List<GridPlan.Stop> stops) {
        return stops.stream().map(GridPlan.Stop::id).toList();
    }

    /** One cell of the grid, by the place on each axis. */
    Grid cell(UUID workspace, UUID id, List<GridPlan.Stop> at) {
        return Grid.of(
                gridPlan(workspace, id), at.stream().map(List::of).toList(), assessor(reading(workspace, id)), today());
    }

    /** Long work. */
    private interface Task<T> {
        T run(IntConsumer progress);
    }

    private static <T> Work<T> begun(ExecutorService thread, Work<T> work, Task<T> task) {
        try {
            thread.execute(() -> work.run(task::run));
            return work;
        } catch (RejectedExecutionException e) {
            throw new ProblemException(
                    503, "Busy", "Too many editions are being examined; try again in a minute.", List.of());
        }
    }

    @PreDestroy
    void stop() {
        slow.shutdownNow();
        quick.shutdownNow();
    }
}
