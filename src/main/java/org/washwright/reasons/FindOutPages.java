package org.washwright.reasons;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.Optional;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.casework.Answers;
import org.washwright.casework.KeptAnswer;
import org.washwright.explain.asking.FindOut;
import org.washwright.rulebook.Work;

/** What to find out next, for people. */
@Path("/tasks/{task}/assessments/{id}/find-out")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class FindOutPages {
    private final Caller caller;
    private final Answers answers;
    private final Searches searches;

    FindOutPages(Caller caller, Answers answers, Searches searches) {
        this.caller = caller;
        this.answers = answers;
        this.searches = searches;
    }

    @GET
    public TemplateInstance show(@PathParam("task") UUID task, @PathParam("id") UUID id) {
        KeptAnswer kept = answers.open(caller.workspaceId(), task, id);
        Work<FindOut> work = searches.findOut(caller.workspaceId(), kept);
        return Templates.findOut(kept, work, work.result().map(f -> FindOutView.of(f, kept.url())));
    }

    @CheckedTemplate(basePath = "reasons")
    static class Templates {
        static native TemplateInstance findOut(KeptAnswer kept, Work<FindOut> work, Optional<FindOutView> view);
    }
}
