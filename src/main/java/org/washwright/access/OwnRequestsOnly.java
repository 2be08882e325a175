package org.washwright.access;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.washwright.problem.ProblemAnswers;

/**
 * Keeps a foreign page from acting in the name of a signed-in browser.
 *
 * <p>Forms carry a token, checked elsewhere. Any other request that changes something and comes with the session cookie
 * must carry a header that no foreign page can send without this service's leave. Requests with a bearer token need
 * neither: a browser never adds that by itself.
 */
class OwnRequestsOnly {
    static final String HEADER = "X-Washwright";

    private static final Set<String> SAFE = Set.of("GET", "HEAD", "OPTIONS");

    private final Caller caller;
    private final ProblemAnswers answers;

    OwnRequestsOnly(Caller caller, ProblemAnswers answers) {
        this.caller = caller;
        this.answers = answers;
    }

    @ServerRequestFilter
    Optional<Response> check(ContainerRequestContext request) {
        if (SAFE.contains(request.getMethod())
                || !caller.bySession()
                || hasCheckedToken(request)
                || "1".equals(request.getHeaderString(HEADER))) {
            return Optional.empty();
        }
        return Optional.of(answers.answer(
                request,
                403,
                "Not allowed",
                "A request with the session cookie needs the header '" + HEADER
                        + ": 1', or use a bearer token instead.",
                List.of()));
    }

    /** Whether the form-token check has looked at this request: it does so for forms and where its header is sent. */
    private static boolean hasCheckedToken(ContainerRequestContext request) {
        return request.getHeaderString("X-CSRF-TOKEN") != null || isForm(request.getMediaType());
    }

    private static boolean isForm(MediaType type) {
        return type != null
                && (type.getType().equals("application") && type.getSubtype().equals("x-www-form-urlencoded")
                        || type.getType().equals("multipart")
                                && type.getSubtype().equals("form-data"));
    }
}
