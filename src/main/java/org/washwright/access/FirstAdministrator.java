package org.washwright.access;

import io.quarkus.elytron.security.common.BcryptUtil;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.transaction.Transactional;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;

/** Makes the first real account of an installation, from settings, when there is none but demo accounts. */
@ApplicationScoped
class FirstAdministrator {
    private static final Logger LOG = Logger.getLogger(FirstAdministrator.class);

    private final Accounts accounts;
    private final DemoAccounts demo;
    private final Optional<String> password;
    private final String name;
    private final String workspace;

    FirstAdministrator(
            Accounts accounts,
            DemoAccounts demo,
            @ConfigProperty(name = "washwright.administrator.password") Optional<String> password,
            @ConfigProperty(name = "washwright.administrator.name", defaultValue = "admin") String name,
            @ConfigProperty(name = "washwright.workspace", defaultValue = "main") String workspace) {
        this.accounts = accounts;
        this.demo = demo;
        this.password = password;
        this.name = name;
        this.workspace = workspace;
    }

    @Transactional
    void create(@Observes @Priority(DemoAccounts.PRIORITY + 1) StartupEvent start) {
        if (accounts.anyReal()) {
            return;
        }
        if (password.isPresent()) {
            String checked = Passwords.requireUsable(password.get());
            accounts.add(
                    accounts.workspace(workspace, workspace), name, BcryptUtil.bcryptHash(checked), Roles.ALL, false);
            LOG.infof("Made the first administrator '%s' in the workspace '%s'.", name, workspace);
        } else if (!demo.usable()) {
            LOG.warn("Nobody can sign in yet: set WASHWRIGHT_ADMINISTRATOR_PASSWORD and start again.");
        }
    }
}
