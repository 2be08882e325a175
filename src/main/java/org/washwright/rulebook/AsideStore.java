package org.washwright.rulebook;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.washwright.access.Person;
import org.washwright.problem.NotFound;

/** Texts kept aside. Every look-up names the workspace. Called within a transaction. */
@ApplicationScoped
class AsideStore {
    /** Texts kept for one draft; beyond that the oldest give way. */
    private static final int MOST = 200;

    private static final String COLUMNS = "SELECT id, path, why, kept_by_name, kept_at, bytes FROM kept_aside"
            + " WHERE workspace_id = :workspace AND edition_id = :edition";

    private final EntityManager store;

    AsideStore(EntityManager store) {
        this.store = store;
    }

    UUID keep(StoredEdition edition, String path, byte[] bytes, String why, Person by, Instant now) {
        UUID id = UUID.randomUUID();
        store.createNativeQuery(
                        "INSERT INTO kept_aside (id, workspace_id, edition_id, path, bytes, why, kept_by, kept_by_name, kept_at)"
                                + " VALUES (:id, :workspace, :edition, :path, :bytes, :why, :by, :name, :at)")
                .setParameter("id", id)
                .setParameter("workspace", edition.workspaceId)
                .setParameter("edition", edition.id)
                .setParameter("path", path)
                .setParameter("bytes", bytes)
                .setParameter("why", why)
                .setParameter("by", by.id())
                .setParameter("name", by.name())
                .setParameter("at", now)
                .executeUpdate();
        store.createNativeQuery("DELETE FROM kept_aside WHERE workspace_id = :workspace AND edition_id = :edition"
                        + " AND id NOT IN (SELECT id FROM kept_aside WHERE edition_id = :edition"
                        + " ORDER BY kept_at DESC, id LIMIT :most)")
                .setParameter("workspace", edition.workspaceId)
                .setParameter("edition", edition.id)
                .setParameter("most", MOST)
                .executeUpdate();
        return id;
    }

    /** All of a draft, the latest first. */
    List<KeptAside> of(UUID workspace, UUID edition) {
        List<?> rows = store.createNativeQuery(COLUMNS + " ORDER BY kept_at DESC, id", Object[].class)
                .setParameter("workspace", workspace)
                .setParameter("edition", edition)
                .getResultList();
        return rows.stream().map(row -> of((Object[]) row)).toList();
    }

    KeptAside get(UUID workspace, UUID edition, UUID id) {
        List<?> rows = store.createNativeQuery(COLUMNS + " AND id = :id", Object[].class)
                .setParameter("workspace", workspace)
                .setParameter("edition", edition)
                .setParameter("id", id)
                .getResultList();
        return rows.stream().map(row -> of((Object[]) row)).findFirst().orElseThrow(() -> NotFound.of("kept text", id));
    }

    void drop(UUID workspace, UUID edition, UUID id) {
        get(workspace, edition, id);
        store.createNativeQuery(
                        "DELETE FROM kept_aside WHERE workspace_id = :workspace AND edition_id = :edition AND id = :id")
                .setParameter("workspace", workspace)
                .setParameter("edition", edition)
                .setParameter("id", id)
                .executeUpdate();
    }

    private static KeptAside of(Object[] row) {
        return new KeptAside(
                (UUID) row[0], (String) row[1], (String) row[2], (String) row[3], row[4].toString(), (byte[]) row[5]);
    }
}
