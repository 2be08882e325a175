package org.washwright.assessment;

import org.washwright.engine.FactBuilder;
import org.washwright.engine.Inference;
import org.washwright.engine.InferenceFactory;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;

/** Answers cleaning tasks by one edition. Safe for use by several threads at once. */
public final class Assessor {

    private final Edition edition;
    private final FactBuilder builder;
    private final Inference taskRules;
    private final Inference lineRules;

    private Assessor(Edition edition, Inference taskRules, Inference lineRules) {
        this.edition = edition;
        this.builder = new FactBuilder(edition);
        this.taskRules = taskRules;
        this.lineRules = lineRules;
    }

    /** Makes an edition ready to answer; with compiled rules this takes seconds, so do it once and keep it. */
    public static Assessor of(Edition edition, InferenceFactory factory) {
        return new Assessor(
                edition,
                factory.prepare(edition.taskRules(), edition.levels(), edition.types()),
                factory.prepare(edition.lineRules(), edition.levels(), edition.types()));
    }

    /** The edition it answers by. */
    public Edition edition() {
        return edition;
    }

    /**
     * Answers a task.
     *
     * @throws RefusedTask when values of the task contradict each other or a wish can't be read
     */
    public FrozenAnswer assess(CleaningTask task, Wishes wishes) {
        return new Assessment(edition, builder, taskRules, lineRules, task, wishes).freeze();
    }

    /**
     * What the edition makes of a task, without grading or wording it.
     *
     * @throws RefusedTask when values of the task contradict each other or a wish can't be read
     */
    public Outcome outcome(CleaningTask task, Wishes wishes) {
        return new Assessment(edition, builder, taskRules, lineRules, task, wishes).outcome();
    }

    /**
     * What stands of a task and in which order, graded but not worded: for whoever asks many tasks who is first.
     *
     * @throws RefusedTask as {@link #assess}
     */
    public Standing standing(CleaningTask task, Wishes wishes) {
        return Standing.of(designs(task, wishes));
    }

    /** Lines sized and graded, before anything is worded; for those who measure what that costs. */
    Assessment.Designs designs(CleaningTask task, Wishes wishes) {
        return new Assessment(edition, builder, taskRules, lineRules, task, wishes).designs();
    }

    /**
     * Says what is wanted of a task: what hangs on each thing that is not known.
     *
     * @throws RefusedTask as {@link #assess}
     */
    public Wanted wanted(CleaningTask task, Wishes wishes) {
        return new Assessment(edition, builder, taskRules, lineRules, task, wishes).wanted();
    }
}
