package org.washwright.analysis;

import java.util.Optional;
import org.washwright.rule.Condition;
import org.washwright.task.CleaningTask;

/**
 * A task that shows what a rule does.
 *
 * @param rule id of the rule
 * @param fires true when the rule fires on it, false when it neither fires nor is undecided
 * @param task the task
 * @param asOf date for which law is read, ISO 8601
 * @param pattern pattern of the rule that it is about, from 0; -1 for the rule as a whole
 * @param test the comparison that it is about; empty for the pattern as a whole
 * @param words what it shows
 */
public record Example(
        String rule,
        boolean fires,
        CleaningTask task,
        String asOf,
        int pattern,
        Optional<Condition.Test> test,
        String words) {

    /** The same task under another title, by which people tell examples apart. */
    Example titled(String title) {
        CleaningTask named = new CleaningTask(title, task.notes(), task.lists(), task.declared());
        return new Example(rule, fires, named, asOf, pattern, test, words);
    }
}
