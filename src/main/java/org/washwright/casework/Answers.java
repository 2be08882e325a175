package org.washwright.casework;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.UUID;
import org.washwright.assessment.Asked;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.problem.NotFound;
import org.washwright.rule.Edition;
import org.washwright.rulebook.Editions;

/** Kept answers as other features use them. */
@ApplicationScoped
public class Answers {
    private final Tasks tasks;
    private final Assessments assessments;
    private final Editions editions;

    Answers(Tasks tasks, Assessments assessments, Editions editions) {
        this.tasks = tasks;
        this.assessments = assessments;
        this.editions = editions;
    }

    /** An answer of a workspace. */
    public KeptAnswer open(UUID workspace, UUID id) {
        AssessmentView view = assessments.view(workspace, id);
        TaskView task = tasks.view(workspace, view.taskId());
        Edition edition = editions.content(workspace, view.editionId());
        FrozenAnswer frozen = read(assessments.bytes(workspace, id));
        Asked asked = Asked.of(frozen.answer().request(), edition.catalogue());
        return new KeptAnswer(view, task, frozen, edition, asked);
    }

    /** The same where the task stands in the address too: an answer to another task is not found. */
    public KeptAnswer open(UUID workspace, UUID task, UUID id) {
        KeptAnswer kept = open(workspace, id);
        if (!kept.task().id().equals(task)) {
            throw NotFound.of("assessment", id);
        }
        return kept;
    }

    /** Assessments of a task, the latest first, at most 100. */
    public List<AssessmentView> of(UUID workspace, UUID task) {
        tasks.view(workspace, task);
        return assessments.of(workspace, task);
    }

    private static FrozenAnswer read(byte[] bytes) {
        try {
            return FrozenAnswer.read(bytes);
        } catch (IOException e) {
            throw new UncheckedIOException("an answer that was stored", e);
        }
    }
}
