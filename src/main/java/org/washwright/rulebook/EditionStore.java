package org.washwright.rulebook;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import org.washwright.exchange.EditionFiles;
import org.washwright.http.Slice;
import org.washwright.problem.NotFound;

/** Where rulebooks and editions are kept. Every look-up names the workspace. Called within a transaction. */
@ApplicationScoped
class EditionStore {
    private final EntityManager store;

    EditionStore(EntityManager store) {
        this.store = store;
    }

    List<StoredEdition> list(UUID workspace, Slice slice) {
        return store.createQuery(
                        "from StoredEdition where workspaceId = :workspace order by changedAt desc, id",
                        StoredEdition.class)
                .setParameter("workspace", workspace)
                .setFirstResult(slice.from())
                .setMaxResults(slice.size())
                .getResultList();
    }

    long count(UUID workspace) {
        return store.createQuery("select count(*) from StoredEdition where workspaceId = :workspace", Long.class)
                .setParameter("workspace", workspace)
                .getSingleResult();
    }

    StoredEdition get(UUID workspace, UUID id) {
        return find(workspace, id, LockModeType.NONE);
    }

    /** The row, kept from changing until the transaction ends. */
    StoredEdition hold(UUID workspace, UUID id) {
        return find(workspace, id, LockModeType.PESSIMISTIC_WRITE);
    }

    private StoredEdition find(UUID workspace, UUID id, LockModeType lock) {
        return store.createQuery("from StoredEdition where workspaceId = :workspace and id = :id", StoredEdition.class)
                .setParameter("workspace", workspace)
                .setParameter("id", id)
                .setLockMode(lock)
                .getResultStream()
                .findFirst()
                .orElseThrow(() -> NotFound.of("edition", id));
    }

    /** The edition released last. */
    Optional<StoredEdition> current(UUID workspace) {
        return store.createQuery(
                        "from StoredEdition where workspaceId = :workspace and state = :state"
                                + " order by releasedAt desc, number desc, id",
                        StoredEdition.class)
                .setParameter("workspace", workspace)
                .setParameter("state", EditionState.RELEASED)
                .setMaxResults(1)
                .getResultStream()
                .findFirst();
    }

    Optional<Rulebook> rulebook(UUID workspace, String name) {
        return store.createQuery("from Rulebook where workspaceId = :workspace and name = :name", Rulebook.class)
                .setParameter("workspace", workspace)
                .setParameter("name", name)
                .getResultStream()
                .findFirst();
    }

    /** The number the next edition of a rulebook takes; the rulebook is held meanwhile. */
    int nextNumber(Rulebook rulebook) {
        store.lock(rulebook, LockModeType.PESSIMISTIC_WRITE);
        return store.createQuery(
                        "select coalesce(max(number), 0) + 1 from StoredEdition where rulebook = :rulebook",
                        Integer.class)
                .setParameter("rulebook", rulebook)
                .getSingleResult();
    }

    /** Notes what reading the files told, unless they have changed since; the tag of the edition stays as it is. */
    void count(UUID workspace, UUID id, Reading reading) {
        StoredEdition counts = new StoredEdition();
        counts.count(reading);
        store.createQuery("update StoredEdition set title = :title, meaningHash = :meaning, errors = :errors,"
                        + " warnings = :warnings, rules = :rules, terms = :terms, counted = true"
                        + " where workspaceId = :workspace and id = :id and textHash = :hash and counted = false")
                .setParameter("title", counts.title)
                .setParameter("meaning", counts.meaningHash)
                .setParameter("errors", counts.errors)
                .setParameter("warnings", counts.warnings)
                .setParameter("rules", counts.rules)
                .setParameter("terms", counts.terms)
                .setParameter("workspace", workspace)
                .setParameter("id", id)
                .setParameter("hash", reading.textHash())
                .executeUpdate();
    }

    void add(Object row) {
        store.persist(row);
        store.flush();
    }

    void flush() {
        store.flush();
    }

    /** Gives an edition its files in place of those it had. */
    void setFiles(StoredEdition edition, EditionFiles files) {
        store.flush();
        store.createNativeQuery("DELETE FROM edition_file WHERE workspace_id = :workspace AND edition_id = :edition")
                .setParameter("workspace", edition.workspaceId)
                .setParameter("edition", edition.id)
                .executeUpdate();
        files.files()
                .forEach((path, bytes) -> store.createNativeQuery(
                                "INSERT INTO edition_file (edition_id, workspace_id, path, bytes)"
                                        + " VALUES (:edition, :workspace, :path, :bytes)")
                        .setParameter("edition", edition.id)
                        .setParameter("workspace", edition.workspaceId)
                        .setParameter("path", path)
                        .setParameter("bytes", bytes)
                        .executeUpdate());
    }

    /** One file of an edition. */
    Optional<KeptFile> file(StoredEdition edition, String path) {
        return store.createNativeQuery(
                        "SELECT bytes FROM edition_file"
                                + " WHERE workspace_id = :workspace AND edition_id = :edition AND path = :path",
                        byte[].class)
                .setParameter("workspace", edition.workspaceId)
                .setParameter("edition", edition.id)
                .setParameter("path", path)
                .getResultStream()
                .findFirst()
                .map(bytes -> KeptFile.of(path, (byte[]) bytes));
    }

    /** Puts one file in place of the one of that name, if any. */
    void putFile(StoredEdition edition, String path, byte[] bytes) {
        store.createNativeQuery("INSERT INTO edition_file (edition_id, workspace_id, path, bytes)"
                        + " VALUES (:edition, :workspace, :path, :bytes)"
                        + " ON CONFLICT (edition_id, path) DO UPDATE SET bytes = excluded.bytes")
                .setParameter("edition", edition.id)
                .setParameter("workspace", edition.workspaceId)
                .setParameter("path", path)
                .setParameter("bytes", bytes)
                .executeUpdate();
    }

    void removeFile(StoredEdition edition, String path) {
        store.createNativeQuery("DELETE FROM edition_file"
                        + " WHERE workspace_id = :workspace AND edition_id = :edition AND path = :path")
                .setParameter("workspace", edition.workspaceId)
                .setParameter("edition", edition.id)
                .setParameter("path", path)
                .executeUpdate();
    }

    /** Notes that somebody gave a draft a file. */
    void wrote(StoredEdition edition, UUID account) {
        if (account != null) {
            store.createNativeQuery("INSERT INTO edition_writer (edition_id, workspace_id, account_id)"
                            + " VALUES (:edition, :workspace, :account) ON CONFLICT DO NOTHING")
                    .setParameter("edition", edition.id)
                    .setParameter("workspace", edition.workspaceId)
                    .setParameter("account", account)
                    .executeUpdate();
        }
    }

    /** Whether an account ever gave an edition a file. */
    boolean writtenBy(StoredEdition edition, UUID account) {
        return edition.writtenBy(account)
                || !store.createNativeQuery(
                                "SELECT 1 FROM edition_writer"
                                        + " WHERE workspace_id = :workspace AND edition_id = :edition AND account_id = :account")
                        .setParameter("workspace", edition.workspaceId)
                        .setParameter("edition", edition.id)
                        .setParameter("account", account)
                        .getResultList()
                        .isEmpty();
    }

    EditionFiles files(StoredEdition edition) {
        List<?> rows = store.createNativeQuery(
                        "SELECT path, bytes FROM edition_file WHERE workspace_id = :workspace AND edition_id = :edition")
                .setParameter("workspace", edition.workspaceId)
                .setParameter("edition", edition.id)
                .getResultList();
        Map<String, byte[]> files = new TreeMap<>();
        rows.forEach(row -> files.put((String) ((Object[]) row)[0], (byte[]) ((Object[]) row)[1]));
        return new EditionFiles(files);
    }
}
