package org.washwright.access;

import io.quarkus.security.UnauthorizedException;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.enterprise.context.RequestScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/** Who is asking. Inject it wherever a request's account, roles or workspace matter. */
@RequestScoped
public class Caller {
    static final String ATTRIBUTE = "washwright.signed-in";

    private final SecurityIdentity identity;

    Caller(SecurityIdentity identity) {
        this.identity = identity;
    }

    /** Whether anyone is signed in at all. */
    public boolean isSignedIn() {
        return known().isPresent();
    }

    /** The account's id; refused with 401 when nobody is signed in, as are the next two. */
    public UUID accountId() {
        return required().accountId();
    }

    /** The workspace that everything this caller sees or makes belongs to. */
    public UUID workspaceId() {
        return required().workspaceId();
    }

    /** The sign-in name. */
    public String name() {
        return required().name();
    }

    /** The roles, sorted; empty when nobody is signed in. */
    public List<String> roles() {
        return known().map(k -> k.roles().stream().sorted().toList()).orElse(List.of());
    }

    /** Whether the caller has a role, one of {@link Roles}. */
    public boolean has(String role) {
        return known().map(k -> k.roles().contains(role)).orElse(false);
    }

    /** Whether the caller came with the cookie of a browser session rather than with a token. */
    boolean bySession() {
        return known().map(k -> k.by() == SignedIn.By.SESSION).orElse(false);
    }

    private Optional<SignedIn> known() {
        return Optional.ofNullable(identity.getAttribute(ATTRIBUTE));
    }

    private SignedIn required() {
        return known().orElseThrow(UnauthorizedException::new);
    }
}
