package org.washwright.casework;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import org.washwright.access.Person;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.assessment.RefusedTask;
import org.washwright.assessment.Wishes;
import org.washwright.problem.Invalid;
import org.washwright.problem.NotFound;
import org.washwright.problem.ProblemErrors;
import org.washwright.rulebook.EditionView;
import org.washwright.rulebook.Editions;
import org.washwright.task.CleaningTask;

/** Has tasks answered by the current edition, and keeps the answers. */
@ApplicationScoped
class Assessments {
    private final EntityManager store;
    private final Tasks tasks;
    private final Editions editions;
    private final Clock clock;

    Assessments(EntityManager store, Tasks tasks, Editions editions, Clock clock) {
        this.store = store;
        this.tasks = tasks;
        this.editions = editions;
        this.clock = clock;
    }

    /** Today in UTC: the date for which law and prices are read when none is asked for. */
    String today() {
        return LocalDate.now(clock.withZone(ZoneOffset.UTC)).toString();
    }

    /** Answers a kept task as it stands now, and keeps the answer. */
    AssessmentView assess(UUID workspace, Person by, UUID taskId, Wishes wishes) {
        // A task of another workspace is not there, whatever editions this one has.
        tasks.view(workspace, taskId);
        return assess(workspace, by, taskId, editions.requireCurrent(workspace).id(), wishes);
    }

    /** The same by any released edition, so that editions can be compared. */
    AssessmentView assess(UUID workspace, Person by, UUID taskId, UUID editionId, Wishes wishes) {
        TaskView task = tasks.view(workspace, taskId);
        EditionView edition = editions.view(workspace, editionId);
        GivenTask given = GivenTask.read(tasks.document(workspace, taskId), editions.content(workspace, edition.id()));
        FrozenAnswer frozen = answer(workspace, edition, given.task(), wishes);
        return keep(workspace, task, edition.id(), frozen, by);
    }

    /** Keeps an answer to a task as it stands now. */
    AssessmentView keep(UUID workspace, TaskView task, UUID edition, FrozenAnswer frozen, Person by) {
        return keep(new StoredAssessment(
                workspace, task, edition, frozen, by, clock.instant().truncatedTo(ChronoUnit.MICROS)));
    }

    /** Answers a task without keeping anything. */
    FrozenAnswer answer(UUID workspace, EditionView edition, CleaningTask task, Wishes wishes) {
        try {
            return editions.assessor(workspace, edition.id()).assess(task, wishes);
        } catch (RefusedTask refusal) {
            throw new Invalid(ProblemErrors.of(refusal.diagnostics()));
        }
    }

    @Transactional
    AssessmentView keep(StoredAssessment made) {
        store.persist(made);
        store.flush();
        return made.view();
    }

    @Transactional
    List<AssessmentView> of(UUID workspace, UUID taskId) {
        return store.createQuery(
                        "from StoredAssessment where workspaceId = :workspace and taskId = :task"
                                + " order by createdAt desc, id",
                        StoredAssessment.class)
                .setParameter("workspace", workspace)
                .setParameter("task", taskId)
                .setMaxResults(100)
                .getResultStream()
                .map(StoredAssessment::view)
                .toList();
    }

    @Transactional
    AssessmentView view(UUID workspace, UUID id) {
        return get(workspace, id).view();
    }

    /** The hashed bytes of an answer. */
    @Transactional
    byte[] bytes(UUID workspace, UUID id) {
        return get(workspace, id).answer.clone();
    }

    private StoredAssessment get(UUID workspace, UUID id) {
        return store.createQuery(
                        "from StoredAssessment where workspaceId = :workspace and id = :id", StoredAssessment.class)
                .setParameter("workspace", workspace)
                .setParameter("id", id)
                .getResultStream()
                .findFirst()
                .orElseThrow(() -> NotFound.of("assessment", id));
    }
}
