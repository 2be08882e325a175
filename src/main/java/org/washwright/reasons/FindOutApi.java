package org.washwright.reasons;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.casework.Answers;

/** What to find out next, for programs. */
@Path("/api/assessments/{id}/find-out")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Reasons", description = "What an answer hangs on.")
class FindOutApi {
    private final Caller caller;
    private final Answers answers;
    private final Searches searches;

    FindOutApi(Caller caller, Answers answers, Searches searches) {
        this.caller = caller;
        this.answers = answers;
        this.searches = searches;
    }

    @GET
    @Operation(summary = "What is not known of the task, in the order in which to find it out")
    @APIResponse(responseCode = "200", description = "Each unknown with its outcomes and what hangs on them.")
    @APIResponse(responseCode = "202", description = "It is being searched; ask again.")
    @APIResponse(responseCode = "304", description = "The caller holds it already.")
    @APIResponse(responseCode = "404", description = "No such answer.")
    public Response findOut(@PathParam("id") UUID id, @Context Request request) {
        return Waiting.answer(request, searches.findOut(caller.workspaceId(), answers.open(caller.workspaceId(), id)));
    }
}
