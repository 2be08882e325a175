package org.washwright.casework;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.UUID;
import org.washwright.access.Person;
import org.washwright.http.Paged;
import org.washwright.http.Slice;
import org.washwright.http.Tags;
import org.washwright.problem.NotFound;

/** Where cleaning tasks are kept. Every look-up names the workspace. */
@ApplicationScoped
class Tasks {
    /** Longest title. */
    static final int TITLE_MOST = 200;

    private final EntityManager store;
    private final Clock clock;

    Tasks(EntityManager store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    @Transactional
    Paged<TaskView> list(UUID workspace, Slice slice) {
        return Paged.of(
                store.createQuery(
                                "from StoredTask where workspaceId = :workspace order by changedAt desc, id",
                                StoredTask.class)
                        .setParameter("workspace", workspace)
                        .setFirstResult(slice.from())
                        .setMaxResults(slice.size())
                        .getResultStream()
                        .map(StoredTask::view)
                        .toList(),
                slice,
                store.createQuery("select count(*) from StoredTask where workspaceId = :workspace", Long.class)
                        .setParameter("workspace", workspace)
                        .getSingleResult());
    }

    @Transactional
    TaskView view(UUID workspace, UUID id) {
        return get(workspace, id, LockModeType.NONE).view();
    }

    /** The document as it was given. */
    @Transactional
    String document(UUID workspace, UUID id) {
        return get(workspace, id, LockModeType.NONE).document;
    }

    @Transactional
    TaskView add(UUID workspace, Person by, GivenTask given) {
        StoredTask made = new StoredTask(workspace, given, by, now());
        store.persist(made);
        store.flush();
        return made.view();
    }

    /** Adds a task made from another one by changing something. */
    @Transactional
    TaskView addVariant(UUID workspace, Person by, GivenTask given, UUID original) {
        StoredTask made = new StoredTask(workspace, given, by, now());
        made.variantOf = get(workspace, original, LockModeType.NONE).id;
        store.persist(made);
        store.flush();
        return made.view();
    }

    /** Tasks made from this one by changing something, the latest first, at most 100. */
    @Transactional
    List<TaskView> variants(UUID workspace, UUID original) {
        return store.createQuery(
                        "from StoredTask where workspaceId = :workspace and variantOf = :original"
                                + " order by createdAt desc, id",
                        StoredTask.class)
                .setParameter("workspace", workspace)
                .setParameter("original", original)
                .setMaxResults(100)
                .getResultStream()
                .map(StoredTask::view)
                .toList();
    }

    /** Adds all of them, or none. */
    @Transactional
    List<TaskView> addAll(UUID workspace, Person by, List<GivenTask> given) {
        return given.stream().map(one -> add(workspace, by, one)).toList();
    }

    @Transactional
    TaskView change(UUID workspace, Person by, UUID id, int expected, GivenTask given) {
        StoredTask task = get(workspace, id, LockModeType.PESSIMISTIC_WRITE);
        Tags.check(expected, task.version);
        task.change(given, by, now());
        store.flush();
        return task.view();
    }

    private StoredTask get(UUID workspace, UUID id, LockModeType lock) {
        return store.createQuery("from StoredTask where workspaceId = :workspace and id = :id", StoredTask.class)
                .setParameter("workspace", workspace)
                .setParameter("id", id)
                .setLockMode(lock)
                .getResultStream()
                .findFirst()
                .orElseThrow(() -> NotFound.of("cleaning task", id));
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
