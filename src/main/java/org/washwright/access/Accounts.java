package org.washwright.access;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/** Where accounts and workspaces are kept. */
@ApplicationScoped
class Accounts {
    private final EntityManager store;
    private final Clock clock;

    Accounts(EntityManager store, Clock clock) {
        this.store = store;
        this.clock = clock;
    }

    Optional<Account> named(String name) {
        return store.createQuery("from Account where lower(name) = lower(:name)", Account.class)
                .setParameter("name", name)
                .getResultStream()
                .findFirst();
    }

    /** An account, provided it belongs to that workspace. */
    Optional<Account> find(UUID workspaceId, UUID id) {
        return store.createQuery("from Account where workspace.id = :workspace and id = :id", Account.class)
                .setParameter("workspace", workspaceId)
                .setParameter("id", id)
                .getResultStream()
                .findFirst();
    }

    /** The workspace of that name, made if missing. */
    @Transactional
    Workspace workspace(String name, String title) {
        return workspaceNamed(name).orElseGet(() -> {
            Workspace made = new Workspace(name, title, clock.instant());
            store.persist(made);
            return made;
        });
    }

    Optional<Workspace> workspaceNamed(String name) {
        return store.createQuery("from Workspace where name = :name", Workspace.class)
                .setParameter("name", name)
                .getResultStream()
                .findFirst();
    }

    List<Workspace> allWorkspaces() {
        return store.createQuery("from Workspace order by createdAt, id", Workspace.class)
                .getResultList();
    }

    @Transactional
    Account add(Workspace workspace, String name, String passwordHash, Set<String> roles, boolean demo) {
        Account made = new Account(workspace, name, passwordHash, roles, demo, clock.instant());
        store.persist(made);
        return made;
    }

    /** Whether there is any account besides the demo ones. */
    boolean anyReal() {
        return store.createQuery("select count(*) from Account where demo = false", Long.class)
                        .getSingleResult()
                > 0;
    }
}
