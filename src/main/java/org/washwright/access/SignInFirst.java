package org.washwright.access;

import io.quarkus.security.UnauthorizedException;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriBuilder;
import java.net.URI;
import java.util.List;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.washwright.problem.ProblemAnswers;

/** Sends a person to the sign-in page, and back afterwards; tells a program that it needs a token. */
class SignInFirst {
    private final ProblemAnswers answers;

    SignInFirst(ProblemAnswers answers) {
        this.answers = answers;
    }

    @ServerExceptionMapper
    Response nobody(UnauthorizedException refusal, ContainerRequestContext request) {
        if (!ProblemAnswers.wantsPage(request)) {
            Response problem = answers.answer(
                    request,
                    401,
                    "Sign in first",
                    "This needs a signed-in caller: send 'Authorization: Bearer TOKEN' with a token from the account page.",
                    List.of());
            return Response.fromResponse(problem)
                    .header(HttpHeaders.WWW_AUTHENTICATE, "Bearer")
                    .build();
        }
        URI signIn =
                UriBuilder.fromPath("/sign-in").queryParam("return", "{path}").build(returnPath(request));
        if (request.getHeaderString("HX-Request") != null) {
            // A part of a page cannot be replaced by the sign-in page: the whole page goes there.
            return Response.status(401).header("HX-Redirect", signIn).build();
        }
        return Response.seeOther(signIn).build();
    }

    /** Only a page that was to be read can be returned to; something that was to be done is not repeated. */
    private static String returnPath(ContainerRequestContext request) {
        if (!request.getMethod().equals("GET")) {
            return "/";
        }
        URI asked = request.getUriInfo().getRequestUri();
        return asked.getRawQuery() == null ? asked.getRawPath() : asked.getRawPath() + "?" + asked.getRawQuery();
    }
}
