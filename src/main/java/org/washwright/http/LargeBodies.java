package org.washwright.http;

import io.quarkus.runtime.configuration.MemorySize;
import io.quarkus.vertx.http.runtime.filters.Filters;
import io.vertx.core.http.HttpHeaders;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.List;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.washwright.problem.Problem;
import org.washwright.problem.ProblemAnswers;

/** Tells a caller that a body is too large before any of it is read. */
@ApplicationScoped
class LargeBodies {
    private static final int BEFORE_ALL = 100_000;

    private final ProblemAnswers answers;
    private final long limit;

    LargeBodies(ProblemAnswers answers, @ConfigProperty(name = "quarkus.http.limits.max-body-size") MemorySize limit) {
        this.answers = answers;
        this.limit = limit.asLongValue();
    }

    void register(@Observes Filters filters) {
        filters.register(this::check, BEFORE_ALL);
    }

    private void check(RoutingContext context) {
        String length = context.request().getHeader(HttpHeaders.CONTENT_LENGTH);
        if (length == null || !length.matches("[0-9]{1,18}") || Long.parseLong(length) <= limit) {
            context.next();
            return;
        }
        Problem problem = answers.problem(
                context.normalizedPath(),
                413,
                "Too large",
                "The body has " + length + " bytes; at most " + limit + " are taken. Leave out what is not needed, or"
                        + " split it.",
                List.of());
        context.response()
                .setStatusCode(413)
                .putHeader(HttpHeaders.CONNECTION, "close")
                .putHeader(HttpHeaders.CONTENT_TYPE, Problem.MEDIA_TYPE)
                .end(answers.json(problem));
    }
}
