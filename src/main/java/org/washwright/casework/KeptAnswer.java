package org.washwright.casework;

import org.washwright.assessment.Answer;
import org.washwright.assessment.Asked;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.rule.Edition;

/**
 * An answer as it was kept, with what it was made from.
 *
 * @param view what stands around it
 * @param task the task as it is now; it may have been changed since
 * @param frozen the answer and its hashed bytes
 * @param edition what answered
 * @param asked the task and wishes that were answered, out of the answer itself
 */
public record KeptAnswer(AssessmentView view, TaskView task, FrozenAnswer frozen, Edition edition, Asked asked) {

    /** The answer. */
    public Answer answer() {
        return frozen.answer();
    }

    /** True when the task was changed after it was answered. */
    public boolean isOutdated() {
        return task.version() != view.taskVersion();
    }

    /** Where its page stands. */
    public String url() {
        return "/tasks/" + view.taskId() + "/assessments/" + view.id();
    }

    /** Who asked when, in words. */
    public String crumb() {
        return "assessed " + view.created().minute() + " UTC by "
                + view.created().by();
    }
}
