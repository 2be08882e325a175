package org.washwright.casework;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.UUID;
import org.washwright.access.Person;
import org.washwright.http.Paged;
import org.washwright.http.Slice;
import org.washwright.http.Tags;
import org.washwright.problem.NotFound;

/** Where plants are kept. Every look-up names the workspace. */
@ApplicationScoped
class Plants {
    private final EntityManager store;
    private final Clock clock;

    Plants(EntityManager store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    @Transactional
    Paged<PlantView> list(UUID workspace, Slice slice) {
        return Paged.of(
                store.createQuery(
                                "from StoredPlant where workspaceId = :workspace order by changedAt desc, id",
                                StoredPlant.class)
                        .setParameter("workspace", workspace)
                        .setFirstResult(slice.from())
                        .setMaxResults(slice.size())
                        .getResultStream()
                        .map(StoredPlant::view)
                        .toList(),
                slice,
                store.createQuery("select count(*) from StoredPlant where workspaceId = :workspace", Long.class)
                        .setParameter("workspace", workspace)
                        .getSingleResult());
    }

    @Transactional
    PlantView view(UUID workspace, UUID id) {
        return get(workspace, id, LockModeType.NONE).view();
    }

    /** The document as it was given. */
    @Transactional
    String document(UUID workspace, UUID id) {
        return get(workspace, id, LockModeType.NONE).document;
    }

    @Transactional
    PlantView add(UUID workspace, Person by, GivenPlant given) {
        StoredPlant made = new StoredPlant(workspace, given, by, now());
        store.persist(made);
        store.flush();
        return made.view();
    }

    @Transactional
    PlantView change(UUID workspace, Person by, UUID id, int expected, GivenPlant given) {
        StoredPlant plant = get(workspace, id, LockModeType.PESSIMISTIC_WRITE);
        Tags.check(expected, plant.version);
        plant.change(given, by, now());
        store.flush();
        return plant.view();
    }

    @Transactional
    void delete(UUID workspace, UUID id, int expected) {
        StoredPlant plant = get(workspace, id, LockModeType.PESSIMISTIC_WRITE);
        Tags.check(expected, plant.version);
        store.remove(plant);
        store.flush();
    }

    private StoredPlant get(UUID workspace, UUID id, LockModeType lock) {
        return store.createQuery("from StoredPlant where workspaceId = :workspace and id = :id", StoredPlant.class)
                .setParameter("workspace", workspace)
                .setParameter("id", id)
                .setLockMode(lock)
                .getResultStream()
                .findFirst()
                .orElseThrow(() -> NotFound.of("plant", id));
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
