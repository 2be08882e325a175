package org.washwright.access;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Finds workspaces for features that fill one at start. */
@ApplicationScoped
public class Workspaces {
    private final Accounts accounts;

    Workspaces(Accounts accounts) {
        this.accounts = accounts;
    }

    /** The ids of all workspaces. */
    @Transactional
    public List<UUID> all() {
        return accounts.allWorkspaces().stream().map(workspace -> workspace.id).toList();
    }

    /** The id of the demonstration workspace, when there is one. */
    @Transactional
    public Optional<UUID> demo() {
        return accounts.workspaceNamed(DemoAccounts.WORKSPACE).map(workspace -> workspace.id);
    }
}
