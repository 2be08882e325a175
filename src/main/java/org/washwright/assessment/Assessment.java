package org.washwright.assessment;

import org.washwright.engine.Inference;
import org.washwright.rule.Edition;
import org.washwright.task.CleaningTask;

/** One assessment in the making. */
final class Assessment {

    Assessment(Edition edition, Inference taskRules, Inference lineRules, CleaningTask task, Wishes wishes) {}

    FrozenAnswer freeze() {
        throw new IllegalStateException("under way");
    }
}
