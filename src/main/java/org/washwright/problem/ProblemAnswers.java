package org.washwright.problem;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateException;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.logging.Logger;

/** Writes a problem as JSON for programs and as a page for people. */
@ApplicationScoped
public class ProblemAnswers {
    private static final Logger LOG = Logger.getLogger(ProblemAnswers.class);

    private final ObjectMapper json;

    ProblemAnswers(ObjectMapper json) {
        this.json = json;
    }

    /** An answer that fits the caller. */
    public Response answer(
            ContainerRequestContext request, int status, String title, String detail, List<ProblemError> errors) {
        Problem problem = problem(path(request), status, title, detail, errors);
        if (wantsPage(request)) {
            try {
                return Response.status(status)
                        .type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"))
                        .entity(page(problem))
                        .build();
            } catch (TemplateException e) {
                // The page about a fault must not be a fault itself: tell it plainly instead.
                LOG.error("The problem page could not be written", e);
            }
        }
        return Response.status(status)
                .type(Problem.MEDIA_TYPE)
                .entity(json(problem))
                .build();
    }

    /** A problem about a path. */
    public Problem problem(String path, int status, String title, String detail, List<ProblemError> errors) {
        return new Problem(Problem.UNTYPED, title, status, detail, path, errors);
    }

    /** The problem as JSON text. */
    public String json(Problem problem) {
        try {
            return json.writeValueAsString(problem);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a problem is plain data and always writable", e);
        }
    }

    /** The problem as a page. */
    String page(Problem problem) {
        return Templates.problem(problem).render();
    }

    /** Whether a person is asking: outside the API, by something that reads pages. */
    public static boolean wantsPage(ContainerRequestContext request) {
        return !isApi(path(request))
                && (request.getHeaderString("HX-Request") != null
                        || request.getAcceptableMediaTypes().stream()
                                .anyMatch(type -> type.getSubtype().equals("html")));
    }

    /** Whether a path belongs to the API. */
    public static boolean isApi(String path) {
        return path.equals("/api") || path.startsWith("/api/");
    }

    /** The path asked for, without query. */
    public static String path(ContainerRequestContext request) {
        return request.getUriInfo().getRequestUri().getPath();
    }

    @CheckedTemplate(basePath = "problem")
    static class Templates {
        static native TemplateInstance problem(Problem problem);
    }
}
