package org.washwright.access;

import io.quarkus.elytron.security.common.BcryptUtil;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.transaction.Transactional;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * The accounts a newcomer signs in with. Their password is public, so they exist only for a service that listens on
 * this machine alone: where the host is not loopback they are neither made nor accepted, even if made earlier.
 */
@ApplicationScoped
public class DemoAccounts {
    /** The workspace the demo accounts share. */
    public static final String WORKSPACE = "demo";
    /** Their common password. */
    public static final String PASSWORD = "clear water";
    /** Their sign-in names; each has the role of that name. */
    public static final List<String> NAMES = List.of("consultant", "reviewer", "engineer", "trainee", "administrator");

    /** Observers that fill the demo workspace at start take a later priority than this. */
    public static final int PRIORITY = 1000;

    private final Accounts accounts;
    private final boolean usable;

    DemoAccounts(
            Accounts accounts,
            @ConfigProperty(name = "quarkus.http.host") String host,
            @ConfigProperty(name = "washwright.demo", defaultValue = "auto") String setting) {
        this.accounts = accounts;
        this.usable = allowed(setting) && loopback(host);
    }

    /** Whether demo accounts may sign in. */
    public boolean usable() {
        return usable;
    }

    @Transactional
    void create(@Observes @Priority(PRIORITY) StartupEvent start) {
        if (!usable) {
            return;
        }
        Workspace workspace = accounts.workspace(WORKSPACE, "Demonstration");
        String hash = BcryptUtil.bcryptHash(PASSWORD);
        for (String name : NAMES) {
            if (accounts.named(name).isEmpty()) {
                accounts.add(workspace, name, hash, Set.of(name.toUpperCase(Locale.ROOT)), true);
            }
        }
    }

    private static boolean allowed(String setting) {
        return switch (setting) {
            case "auto" -> true;
            case "off" -> false;
            default ->
                throw new IllegalArgumentException("washwright.demo is '" + setting + "'; it must be 'auto' (demo"
                        + " accounts when the service listens on this machine alone) or 'off'.");
        };
    }

    static boolean loopback(String host) {
        try {
            for (InetAddress address : InetAddress.getAllByName(host)) {
                if (!address.isLoopbackAddress()) {
                    return false;
                }
            }
            return true;
        } catch (UnknownHostException e) {
            return false;
        }
    }
}
