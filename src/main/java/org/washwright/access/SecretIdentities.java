package org.washwright.access;

import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.identity.AuthenticationRequestContext;
import io.quarkus.security.identity.IdentityProvider;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.runtime.QuarkusPrincipal;
import io.quarkus.security.runtime.QuarkusSecurityIdentity;
import io.smallrye.mutiny.Uni;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;

/** Looks up whose session or token a secret is. */
@ApplicationScoped
class SecretIdentities implements IdentityProvider<SecretRequest> {
    private final Sessions sessions;
    private final Tokens tokens;

    SecretIdentities(Sessions sessions, Tokens tokens) {
        this.sessions = sessions;
        this.tokens = tokens;
    }

    @Override
    public Class<SecretRequest> getRequestType() {
        return SecretRequest.class;
    }

    @Override
    public Uni<SecurityIdentity> authenticate(SecretRequest request, AuthenticationRequestContext context) {
        return context.runBlocking(() -> find(request)
                .map(SecretIdentities::identity)
                .orElseThrow(() -> new AuthenticationFailedException("unknown or ended")));
    }

    private Optional<SignedIn> find(SecretRequest request) {
        if (!request.secret().plausible()) {
            return Optional.empty();
        }
        return switch (request.by()) {
            case SESSION -> sessions.find(request.secret());
            case TOKEN -> tokens.find(request.secret());
        };
    }

    private static SecurityIdentity identity(SignedIn signedIn) {
        return QuarkusSecurityIdentity.builder()
                .setPrincipal(new QuarkusPrincipal(signedIn.name()))
                .addRoles(signedIn.roles())
                .addAttribute(Caller.ATTRIBUTE, signedIn)
                .build();
    }
}
