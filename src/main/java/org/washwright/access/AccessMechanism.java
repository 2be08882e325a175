package org.washwright.access;

import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.identity.IdentityProviderManager;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.identity.request.AuthenticationRequest;
import io.quarkus.vertx.http.runtime.security.ChallengeData;
import io.quarkus.vertx.http.runtime.security.HttpAuthenticationMechanism;
import io.smallrye.mutiny.Uni;
import io.vertx.core.http.Cookie;
import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Set;
import org.washwright.problem.Problem;
import org.washwright.problem.ProblemAnswers;

/**
 * Recognises a caller by a bearer token or by the session cookie.
 *
 * <p>A wrong token is refused; a wrong or ended session makes the caller nobody, so that public pages still open. A
 * request with a token never falls back to the cookie.
 */
@ApplicationScoped
class AccessMechanism implements HttpAuthenticationMechanism {
    private static final String BEARER = "Bearer ";

    private final ProblemAnswers answers;

    AccessMechanism(ProblemAnswers answers) {
        this.answers = answers;
    }

    @Override
    public Uni<SecurityIdentity> authenticate(RoutingContext context, IdentityProviderManager identities) {
        String authorization = context.request().getHeader(HttpHeaders.AUTHORIZATION);
        if (authorization != null && authorization.regionMatches(true, 0, BEARER, 0, BEARER.length())) {
            Secret token = new Secret(authorization.substring(BEARER.length()).strip());
            return identities.authenticate(new SecretRequest(SignedIn.By.TOKEN, token));
        }
        Cookie cookie = context.request().getCookie(SessionCookie.NAME);
        if (cookie == null || isPublic(context.normalizedPath())) {
            return Uni.createFrom().nullItem();
        }
        return identities
                .authenticate(new SecretRequest(SignedIn.By.SESSION, new Secret(cookie.getValue())))
                .onFailure(AuthenticationFailedException.class)
                .recoverWithNull();
    }

    @Override
    public Uni<ChallengeData> getChallenge(RoutingContext context) {
        return Uni.createFrom().item(new ChallengeData(401, "WWW-Authenticate", "Bearer"));
    }

    /** Answers a wrong token, which is refused before any resource is looked for. */
    @Override
    public Uni<Boolean> sendChallenge(RoutingContext context) {
        Problem problem = answers.problem(
                context.normalizedPath(),
                401,
                "Sign in first",
                "The token is unknown, revoked or has ended; make a new one on the account page.",
                List.of());
        return Uni.createFrom()
                .completionStage(context.response()
                        .setStatusCode(401)
                        .putHeader("WWW-Authenticate", "Bearer error=\"invalid_token\"")
                        .putHeader(HttpHeaders.CONTENT_TYPE, Problem.MEDIA_TYPE)
                        .end(answers.json(problem))
                        .toCompletionStage())
                .replaceWith(true);
    }

    @Override
    public Set<Class<? extends AuthenticationRequest>> getCredentialTypes() {
        return Set.of(SecretRequest.class);
    }

    /** Files and health need no caller: spare them the look-up. */
    private static boolean isPublic(String path) {
        return path.startsWith("/assets/") || path.startsWith("/q/");
    }
}
