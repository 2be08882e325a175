package org.washwright.plant;

import org.washwright.task.CleaningTask;
import org.washwright.task.Value;

/**
 * A task of the set that one plant is asked to serve.
 *
 * @param task the task
 * @param partsPerWeek parts a week as a plain number; unknown when it is to be made from what the task says
 */
public record SetTask(CleaningTask task, Value partsPerWeek) {

    /** A task whose parts a week come from the task itself. */
    public static SetTask of(CleaningTask task) {
        return new SetTask(task, Value.UNKNOWN);
    }
}
