package org.washwright.editing.kept;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.casework.Answers;

/** Keeping an answer as a reference case, for programs. */
@Path("/api/assessments/{id}/case")
@RolesAllowed(Roles.CONSULTANT)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Files", description = "The files of drafts, one by one.")
class KeptCaseApi {
    private final Caller caller;
    private final Answers answers;
    private final KeptCases cases;

    KeptCaseApi(Caller caller, Answers answers, KeptCases cases) {
        this.caller = caller;
        this.answers = answers;
        this.cases = cases;
    }

    @POST
    @Operation(
            summary = "Keep an answer as a reference case",
            description =
                    "In the draft named, else in the draft of the same rulebook that was changed last, else in a new"
                            + " one. The case says what was answered: look at it before it counts.")
    @APIResponse(responseCode = "201", description = "The draft and the file, where Location leads.")
    @APIResponse(responseCode = "409", description = "The edition named is released and never changes.")
    public Response keep(@PathParam("id") UUID id, @QueryParam("draft") UUID draft) {
        KeptCases.Put put = cases.keep(
                caller.workspaceId(),
                Person.of(caller),
                answers.open(caller.workspaceId(), id),
                Optional.ofNullable(draft));
        return Response.created(URI.create("/api/editions/" + put.draft() + "/files/" + put.file()))
                .entity(put)
                .build();
    }
}
