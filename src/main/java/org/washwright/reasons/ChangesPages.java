package org.washwright.reasons;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.casework.Answers;
import org.washwright.casework.KeptAnswer;
import org.washwright.explain.change.Changes;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;
import org.washwright.rulebook.Work;

/** What would change an answer, for people. The address holds what is asked, so that it can be handed on. */
@Path("/tasks/{task}/assessments/{id}/changes")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class ChangesPages {
    private static final int UNPROCESSABLE = 422;

    private final Caller caller;
    private final Answers answers;
    private final Searches searches;

    ChangesPages(Caller caller, Answers answers, Searches searches) {
        this.caller = caller;
        this.answers = answers;
        this.searches = searches;
    }

    @GET
    public Response show(
            @PathParam("task") UUID task,
            @PathParam("id") UUID id,
            @QueryParam("goal") @DefaultValue("") String goal,
            @QueryParam("process") @DefaultValue("") String process,
            @QueryParam("free") List<String> free,
            @Context UriInfo uri) {
        KeptAnswer kept = answers.open(caller.workspaceId(), task, id);
        ChangesForm form = ChangesForm.of(kept.answer(), goal, process, free);
        String address = kept.url() + "/changes?"
                + Optional.ofNullable(uri.getRequestUri().getRawQuery()).orElse("");
        if (goal.isEmpty()) {
            return Response.ok(page(kept, form, List.of(), Optional.empty(), address))
                    .build();
        }
        try {
            ChangesQuery query = ChangesQuery.read(goal, process, free, 3, kept.edition());
            Work<Changes> work = searches.changes(caller.workspaceId(), kept, query.goal(), query.scope());
            return Response.ok(page(kept, form, List.of(), Optional.of(work), address))
                    .build();
        } catch (Invalid wrong) {
            return Response.status(UNPROCESSABLE)
                    .entity(page(kept, form, wrong.errors(), Optional.empty(), address))
                    .build();
        }
    }

    private static TemplateInstance page(
            KeptAnswer kept,
            ChangesForm form,
            List<ProblemError> errors,
            Optional<Work<Changes>> work,
            String address) {
        Optional<ChangesView> view = work.flatMap(Work::result).map(c -> ChangesView.of(c, kept.url()));
        return Templates.changes(kept, form, errors, work, view, address);
    }

    @CheckedTemplate(basePath = "reasons")
    static class Templates {
        static native TemplateInstance changes(
                KeptAnswer kept,
                ChangesForm form,
                List<ProblemError> errors,
                Optional<Work<Changes>> work,
                Optional<ChangesView> view,
                String address);
    }
}
