package org.washwright.explain.vary;

import java.util.Optional;
import java.util.function.IntConsumer;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.RefusedTask;
import org.washwright.assessment.Wishes;
import org.washwright.task.CleaningTask;

/** Tries tasks and counts the tries, up to a budget. */
public final class Trials {

    private final Assessor assessor;
    private final Wishes wishes;
    private final int budget;
    private final IntConsumer progress;
    private int done;
    private int ceiling;
    private int kept;

    /**
     * Trials by one edition.
     *
     * @param budget most evaluations
     * @param progress told the number of evaluations after each
     */
    public Trials(Assessor assessor, Wishes wishes, int budget, IntConsumer progress) {
        this.assessor = assessor;
        this.wishes = wishes;
        this.budget = budget;
        this.progress = progress;
        this.ceiling = budget;
    }

    /** No evaluation is left. */
    public static final class Spent extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Spent(int budget) {
            super(budget + " evaluations are spent", null, false, false);
        }
    }

    /**
     * Tries a task.
     *
     * @param order true when the order of what stands is wanted too
     * @return empty when values of the task contradict each other
     * @throws Spent when the budget is used up
     */
    public Optional<Seen> see(CleaningTask task, boolean order) {
        count();
        try {
            return Optional.of(
                    order ? Seen.of(assessor.standing(task, wishes)) : Seen.of(assessor.outcome(task, wishes)));
        } catch (RefusedTask contradiction) {
            return Optional.empty();
        }
    }

    /** From now on so many more evaluations, as far as the budget goes. */
    public void allow(int more) {
        ceiling = (int) Math.min(budget - kept, (long) done + more);
    }

    /** So many evaluations of the budget are not to be used for now. */
    public void keep(int some) {
        kept = some;
        ceiling = budget - kept;
    }

    /**
     * Tries the task that is asked about, with its order.
     *
     * @throws RefusedTask when its values contradict each other
     */
    public Seen seeOrRefuse(CleaningTask task) {
        count();
        return Seen.of(assessor.standing(task, wishes));
    }

    private void count() {
        if (done >= ceiling) {
            throw new Spent(ceiling);
        }
        done++;
        progress.accept(done);
    }

    /** Evaluations so far. */
    public int done() {
        return done;
    }

    /** Evaluations left. */
    public int left() {
        return budget - done;
    }
}
