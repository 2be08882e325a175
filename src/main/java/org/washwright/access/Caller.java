package org.washwright.access;

import io.quarkus.security.UnauthorizedException;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import io.vertx.core.http.Cookie;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.RequestScoped;
import jakarta.inject.Named;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;

/** Who is asking. Inject it wherever a request's account, roles or workspace matter. */
@Named("caller")
@RequestScoped
public class Caller {
    static final String ATTRIBUTE = "washwright.signed-in";

    private static final Pattern FORM_TOKEN = Pattern.compile("[A-Za-z0-9_-]{1,200}");

    private final SecurityIdentity identity;
    private final CurrentVertxRequest request;

    Caller(SecurityIdentity identity, CurrentVertxRequest request) {
        this.identity = identity;
        this.request = request;
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

    /** Whether the caller may keep tasks and have them answered; pages offer only what the reader may do. */
    public boolean mayWrite() {
        return has(Roles.ENGINEER) || has(Roles.CONSULTANT);
    }

    /** Whether the caller writes rulebooks. */
    public boolean mayAuthor() {
        return has(Roles.CONSULTANT);
    }

    /** Whether the caller may set exercises and see what everybody made of them. */
    public boolean mayTrain() {
        return has(Roles.CONSULTANT) || has(Roles.REVIEWER) || has(Roles.ENGINEER);
    }

    /**
     * The token every form sends along; templates write it with {@code {#csrfField /}}.
     *
     * <p>A page about a refused request may be written before the check of form tokens has run; then the token is the
     * one the browser already holds, or empty.
     */
    public String formToken() {
        RoutingContext context = request.getCurrent();
        if (context == null) {
            return "";
        }
        String issued = context.get("csrf_token");
        if (issued != null) {
            return issued;
        }
        Cookie held = context.request().getCookie("washwright-csrf");
        return held != null && FORM_TOKEN.matcher(held.getValue()).matches() ? held.getValue() : "";
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
