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
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.problem.ProblemError;

/** How an answer came about, for people: one step a page, forwards and back. */
@Path("/tasks/{task}/assessments/{id}/replay")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class ReplayPages {
    private final Caller caller;
    private final Replays replays;

    ReplayPages(Caller caller, Replays replays) {
        this.caller = caller;
        this.replays = replays;
    }

    @GET
    public Response show(
            @PathParam("task") UUID task,
            @PathParam("id") UUID id,
            @QueryParam("process") @DefaultValue("") String process,
            @QueryParam("step") @DefaultValue("1") String step) {
        Replays.Walk walk = replays.of(caller.workspaceId(), task, id, process);
        List<ProblemError> errors = new ArrayList<>();
        int n = Numbers.within("step", step.strip(), 1, walk.replay().size(), errors);
        ReplaySight sight = ReplaySight.of(walk.kept().url() + "/replay", walk.replay(), n);
        return Response.status(errors.isEmpty() ? 200 : 422)
                .entity(Templates.replay(
                        sight,
                        ReplayChoices.of(walk.kept().answer()),
                        walk.kept().task().title(),
                        walk.kept().crumb(),
                        walk.kept().url(),
                        errors.isEmpty()
                                ? ""
                                : "There is no step “" + step.strip() + "”; this walk has "
                                        + walk.replay().size() + "."))
                .build();
    }

    @CheckedTemplate(basePath = "reasons")
    static class Templates {
        static native TemplateInstance replay(
                ReplaySight sight,
                List<ReplayChoices.Group> choices,
                String title,
                String crumb,
                String assessmentUrl,
                String stepError);
    }
}
