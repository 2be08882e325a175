package org.washwright.explain.change;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntConsumer;
import org.washwright.assessment.Assessor;
import org.washwright.assessment.Wishes;
import org.washwright.explain.vary.Place;
import org.washwright.explain.vary.PlaceWords;
import org.washwright.explain.vary.Places;
import org.washwright.explain.vary.Reads;
import org.washwright.explain.vary.Seen;
import org.washwright.explain.vary.Trials;
import org.washwright.task.CleaningTask;
import org.washwright.task.Group;

/** Finds the smallest sets of changes to a task that reach a goal. Safe for use by several threads at once. */
public final class ChangeFinder {

    /** Groups that stay as they are unless somebody lets them go: the part is what it is, and so is the law of the place. */
    public static final Set<Group> FIXED = java.util.Collections.unmodifiableSet(
            EnumSet.of(Group.PART, Group.MATERIALS, Group.COMPONENTS, Group.FEATURES, Group.JURISDICTIONS));

    /** Most changes in a set, unless fewer are wanted. */
    public static final int MOST_CHANGES = 3;

    /** Most evaluations of one search. */
    public static final int MOST_EVALUATIONS = 3000;

    /** Part of the budget that is kept for what else becomes otherwise, and part of the rest that one set may use. */
    private static final int SHARE_KEPT = 20;

    private static final int SHARE_OF_A_SET = 8;

    private final Assessor assessor;
    private final Places places;
    private final Reads reads;

    /** A finder that asks this assessor; one that runs rules by an index is by far the quickest. */
    public ChangeFinder(Assessor assessor) {
        this.assessor = assessor;
        this.places = new Places(assessor.edition());
        this.reads = new Reads(assessor.edition(), places.readers());
    }

    /**
     * How far to look.
     *
     * @param freed groups of {@link #FIXED} that may change too
     * @param most most changes in a set, 1 to {@link #MOST_CHANGES}
     * @param evaluations most evaluations, from 1
     */
    public record Scope(Set<Group> freed, int most, int evaluations) {

        /** As far as usual. */
        public static final Scope USUAL = new Scope(Set.of(), MOST_CHANGES, MOST_EVALUATIONS);

        /** Keeps a copy. */
        public Scope {
            freed = Set.copyOf(freed);
        }

        Set<Group> fixed() {
            EnumSet<Group> fixed = EnumSet.copyOf(FIXED);
            fixed.removeAll(freed);
            return fixed;
        }
    }

    /** What may change of a task for a goal, with every value that is tried. */
    public List<Places.Choice> choices(CleaningTask task, Goal goal, Set<Group> fixed) {
        return places.of(task, fixed, new Aim(goal.kind(), goal.process()).needsOrder());
    }

    /**
     * Looks for changes.
     *
     * @param progress told the number of evaluations after each
     * @throws org.washwright.assessment.RefusedTask when values of the task contradict each other
     * @throws IllegalArgumentException when the process of the goal is none of the edition
     */
    public Changes find(CleaningTask task, Wishes wishes, Goal goal, Scope scope, IntConsumer progress) {
        return find(task, wishes, goal, scope, choices(task, goal, scope.fixed()), progress);
    }

    /** The same over some places only. */
    Changes find(
            CleaningTask task,
            Wishes wishes,
            Goal goal,
            Scope scope,
            List<Places.Choice> choices,
            IntConsumer progress) {
        boolean known = assessor.edition().catalogue().leaves().stream().anyMatch(p -> p.id().equals(goal.process()));
        if (goal.kind().needsProcess() && !known) {
            throw new IllegalArgumentException("no process of this edition: " + goal.process());
        }
        Trials trials = new Trials(assessor, wishes, scope.evaluations(), progress);
        Seen now = trials.seeOrRefuse(task);
        String process = goal.kind().needsProcess() ? goal.process() : now.first();
        Aim aim = new Aim(goal.kind(), process);
        Telling telling = new Telling(assessor.edition(), goal, process, scope, choices.size());
        if (aim.isReached(now) || process.isEmpty()) {
            return telling.reached(trials.done());
        }
        List<Place> all = choices.stream().map(Places.Choice::place).toList();
        Bounds bounds = new Bounds(task, aim, all, reads, trials);
        if (scope.evaluations() > 1 && !bounds.mayReach(List.of(), all)) {
            return telling.impossible(trials.done());
        }
        int kept = scope.evaluations() / SHARE_KEPT;
        SetSearch search = new SetSearch(task, aim, choices, bounds, trials, now, scope.evaluations() / SHARE_OF_A_SET);
        trials.keep(kept);
        try {
            bounds.start(now);
        } catch (Trials.Spent spent) {
            // Without those cuts less is passed over; what is then left out is said by the search itself.
        }
        search.run(scope.most());
        trials.keep(0);
        List<Changes.Proposal> proposals = new Proposals(
                        assessor.edition().catalogue(),
                        task,
                        now,
                        trials,
                        aim,
                        new PlaceWords(task, assessor.edition()))
                .of(search.found());
        return telling.found(proposals, search.sizes(), trials.done());
    }
}
