package org.washwright.casework;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.washwright.access.Person;
import org.washwright.problem.Conflict;
import org.washwright.problem.NotFound;

/** Where task forms are kept that are not done yet. A draft is seen by the one who typed it alone. */
@ApplicationScoped
class Drafts {
    /** Most drafts of one account. */
    static final int MOST = 100;

    private static final int LARGEST = 2_000_000;

    private final EntityManager store;
    private final Clock clock;

    Drafts(EntityManager store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    /** The drafts of a person, kept last first. */
    @Transactional
    List<DraftView> of(UUID workspace, Person by) {
        return all(workspace, by).stream().map(StoredDraft::view).toList();
    }

    @Transactional
    DraftView view(UUID workspace, Person by, UUID id) {
        return get(workspace, by, id).view();
    }

    /** What was typed. */
    @Transactional
    FormFields fields(UUID workspace, Person by, UUID id) {
        return FormFields.ofJson(get(workspace, by, id).fields);
    }

    /** Keeps what was typed, in the draft it belongs to or in a new one. */
    @Transactional
    DraftView keep(UUID workspace, Person by, FormOf form, FormFields typed) {
        if (typed.json().length() > LARGEST) {
            throw new Conflict("The form holds more than a draft can. Save it as a task, or shorten the notes.");
        }
        StoredDraft draft;
        if (form.draft().isPresent()) {
            draft = get(workspace, by, form.draft().get());
        } else {
            if (all(workspace, by).size() >= MOST) {
                throw new Conflict("You have " + MOST + " drafts. Delete one that you no longer need, then go back and"
                        + " keep this one.");
            }
            draft = new StoredDraft(workspace, by, form.task(), form.version());
        }
        draft.keep(typed, clock.instant().truncatedTo(ChronoUnit.MICROS));
        if (form.draft().isEmpty()) {
            store.persist(draft);
        }
        store.flush();
        return draft.view();
    }

    @Transactional
    void drop(UUID workspace, Person by, UUID id) {
        store.remove(get(workspace, by, id));
    }

    private List<StoredDraft> all(UUID workspace, Person by) {
        return store.createQuery(
                        "from StoredDraft where workspaceId = :workspace and accountId = :account"
                                + " order by changedAt desc, id",
                        StoredDraft.class)
                .setParameter("workspace", workspace)
                .setParameter("account", by.id())
                .setMaxResults(MOST)
                .getResultList();
    }

    private StoredDraft get(UUID workspace, Person by, UUID id) {
        return Optional.ofNullable(store.find(StoredDraft.class, id))
                .filter(d -> d.workspaceId.equals(workspace) && d.accountId.equals(by.id()))
                .orElseThrow(() -> NotFound.of("draft", id));
    }
}
