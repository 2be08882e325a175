package org.washwright.casework;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.UUID;

/** Kept tasks as other features ask them again: as they were given, to be read by any edition. */
@ApplicationScoped
public class PastTasks {
    private final EntityManager store;

    PastTasks(EntityManager store) {
        this.store = store;
    }

    /** A task with the document it was given as. */
    public record PastTask(UUID id, String title, String document) {}

    /** The tasks changed last, the latest first, at most so many. */
    @Transactional
    public List<PastTask> newest(UUID workspace, int most) {
        return store.createQuery(
                        "from StoredTask where workspaceId = :workspace order by changedAt desc, id", StoredTask.class)
                .setParameter("workspace", workspace)
                .setMaxResults(most)
                .getResultStream()
                .map(t -> new PastTask(t.id, t.title, t.document))
                .toList();
    }
}
