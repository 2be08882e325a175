package org.washwright.problem;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import io.quarkus.security.ForbiddenException;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/** Turns everything that goes wrong into a problem answer; nothing internal reaches the caller. */
class ProblemMappers {
    private static final Logger LOG = Logger.getLogger(ProblemMappers.class);

    private final ProblemAnswers answers;

    ProblemMappers(ProblemAnswers answers) {
        this.answers = answers;
    }

    @ServerExceptionMapper
    Response refused(ProblemException refusal, ContainerRequestContext request) {
        return answers.answer(request, refusal.status(), refusal.title(), refusal.getMessage(), refusal.errors());
    }

    @ServerExceptionMapper
    Response forbidden(ForbiddenException refusal, ContainerRequestContext request) {
        return answers.answer(request, 403, "Not allowed", StandardTexts.detail(403, request), List.of());
    }

    @ServerExceptionMapper
    Response unreadable(MismatchedInputException failure, ContainerRequestContext request) {
        return unreadableJson(failure, request);
    }

    @ServerExceptionMapper
    Response http(WebApplicationException failure, ContainerRequestContext request) {
        Response response = failure.getResponse();
        if (response.getStatus() < 400 || response.hasEntity()) {
            return response;
        }
        if (failure.getCause() instanceof JsonProcessingException json) {
            return unreadableJson(json, request);
        }
        if (response.getStatus() >= 500) {
            return unexpected(failure, request);
        }
        return standard(response.getStatus(), request);
    }

    @ServerExceptionMapper
    Response unexpected(Throwable failure, ContainerRequestContext request) {
        String reference = UUID.randomUUID().toString().substring(0, 8);
        LOG.errorf(failure, "Reference %s: %s %s failed", reference, request.getMethod(), ProblemAnswers.path(request));
        return answers.answer(
                request,
                500,
                "Something went wrong",
                "The service failed at this request. Nothing of it was kept unless told otherwise. If it happens again,"
                        + " give the operator the reference " + reference + ", which stands in the log.",
                List.of());
    }

    /** Gives a body to refusals that come without one, such as those of the form-token check. */
    @ServerResponseFilter
    void fill(ContainerRequestContext request, ContainerResponseContext response) {
        if (response.getStatus() < 400
                || response.hasEntity()
                || request.getMethod().equals("HEAD")) {
            return;
        }
        Response filled = standard(response.getStatus(), request);
        response.setEntity(filled.getEntity(), null, filled.getMediaType());
    }

    private Response standard(int status, ContainerRequestContext request) {
        return answers.answer(
                request, status, StandardTexts.title(status), StandardTexts.detail(status, request), List.of());
    }

    private Response unreadableJson(JsonProcessingException failure, ContainerRequestContext request) {
        return answers.answer(
                request,
                400,
                "Unreadable JSON",
                "The body is not the JSON this address takes.",
                List.of(JsonErrors.describe(failure)));
    }
}
