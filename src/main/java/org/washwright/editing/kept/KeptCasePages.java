package org.washwright.editing.kept;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Optional;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.casework.Answers;

/** The button on an answer that keeps it as a reference case. */
@Path("/tasks/{task}/assessments/{id}/case")
@RolesAllowed(Roles.CONSULTANT)
@Produces(MediaType.TEXT_HTML)
class KeptCasePages {
    private final Caller caller;
    private final Answers answers;
    private final KeptCases cases;

    KeptCasePages(Caller caller, Answers answers, KeptCases cases) {
        this.caller = caller;
        this.answers = answers;
        this.cases = cases;
    }

    @POST
    public Response keep(@PathParam("task") UUID task, @PathParam("id") UUID id) {
        KeptCases.Put put = cases.keep(
                caller.workspaceId(),
                Person.of(caller),
                answers.open(caller.workspaceId(), task, id),
                Optional.empty());
        return Response.seeOther(URI.create("/rulebooks/" + put.draft() + "/text?file=" + put.file()))
                .build();
    }
}
