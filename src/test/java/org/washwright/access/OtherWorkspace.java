package org.washwright.access;

import io.quarkus.elytron.security.common.BcryptUtil;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Set;
import java.util.UUID;

/** Makes further workspaces and accounts for tests of the walls between them. */
@ApplicationScoped
public class OtherWorkspace {
    private final Accounts accounts;

    OtherWorkspace(Accounts accounts) {
        this.accounts = accounts;
    }

    /** A workspace with one account of that name and all roles; the password is that of the demo accounts. */
    @Transactional
    public UUID withPerson(String workspace, String account) {
        Workspace made = accounts.workspace(workspace, workspace);
        if (accounts.named(account).isEmpty()) {
            accounts.add(made, account, BcryptUtil.bcryptHash(DemoAccounts.PASSWORD), Roles.ALL, true);
        }
        return made.id;
    }

    /** The demo workspace. */
    @Transactional
    public UUID demo() {
        return accounts.workspace(DemoAccounts.WORKSPACE, "Demonstration").id;
    }

    /** A further account in the demo workspace. */
    @Transactional
    public void inDemo(String account, String... roles) {
        Workspace demo = accounts.workspace(DemoAccounts.WORKSPACE, "Demonstration");
        if (accounts.named(account).isEmpty()) {
            accounts.add(demo, account, BcryptUtil.bcryptHash(DemoAccounts.PASSWORD), Set.of(roles), true);
        }
    }
}
