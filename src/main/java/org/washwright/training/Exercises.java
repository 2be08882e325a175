package org.washwright.training;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.TypedQuery;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.washwright.access.Person;
import org.washwright.explain.exercise.Exercise;
import org.washwright.explain.exercise.Feedback;
import org.washwright.explain.exercise.Prediction;
import org.washwright.http.Paged;
import org.washwright.http.Slice;
import org.washwright.problem.NotFound;

/** Where exercises and tries are kept. Every look-up names the workspace. */
@ApplicationScoped
class Exercises {
    /** Most tries that are looked at together, the latest first. */
    static final int MOST_TRIES = 1000;

    private static final String EXERCISE = "exercise";

    private final EntityManager store;
    private final Clock clock;

    Exercises(EntityManager store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    @Transactional
    Paged<SetExercise> list(UUID workspace, Slice slice) {
        return Paged.of(
                store.createQuery(
                                "from StoredExercise where workspaceId = :workspace order by createdAt desc, id",
                                StoredExercise.class)
                        .setParameter("workspace", workspace)
                        .setFirstResult(slice.from())
                        .setMaxResults(slice.size())
                        .getResultStream()
                        .map(StoredExercise::view)
                        .toList(),
                slice,
                store.createQuery("select count(*) from StoredExercise where workspaceId = :workspace", Long.class)
                        .setParameter("workspace", workspace)
                        .getSingleResult());
    }

    @Transactional
    SetExercise view(UUID workspace, UUID id) {
        return store.createQuery(
                        "from StoredExercise where workspaceId = :workspace and id = :id", StoredExercise.class)
                .setParameter("workspace", workspace)
                .setParameter("id", id)
                .getResultStream()
                .findFirst()
                .orElseThrow(() -> NotFound.of(EXERCISE, id))
                .view();
    }

    @Transactional
    SetExercise add(UUID workspace, Person by, UUID assessment, Exercise exercise, Optional<LocalDate> due) {
        StoredExercise made = new StoredExercise(workspace, assessment, exercise, due.orElse(null), by, now());
        store.persist(made);
        store.flush();
        return made.view();
    }

    @Transactional
    TryView addTry(UUID workspace, Person by, UUID exercise, Prediction prediction, Feedback feedback) {
        StoredTry made = new StoredTry(workspace, exercise, prediction, feedback, by, now());
        store.persist(made);
        store.flush();
        return made.view();
    }

    /** Tries at an exercise, the latest first: those of one account, or of all. */
    @Transactional
    List<TryView> tries(UUID workspace, UUID exercise, Optional<UUID> by) {
        TypedQuery<StoredTry> query = store.createQuery(
                        "from StoredTry where workspaceId = :workspace and exerciseId = :exercise"
                                + (by.isPresent() ? " and madeBy = :by" : "") + " order by madeAt desc, id",
                        StoredTry.class)
                .setParameter("workspace", workspace)
                .setParameter(EXERCISE, exercise)
                .setMaxResults(MOST_TRIES);
        by.ifPresent(account -> query.setParameter("by", account));
        return query.getResultStream().map(StoredTry::view).toList();
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
