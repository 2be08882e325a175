package org.washwright.reasons;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.casework.Answers;
import org.washwright.casework.KeptAnswer;

/** What would change an answer, for programs. */
@Path("/api/assessments/{id}/changes")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Reasons", description = "What an answer hangs on.")
class ChangesApi {
    private final Caller caller;
    private final Answers answers;
    private final Searches searches;

    ChangesApi(Caller caller, Answers answers, Searches searches) {
        this.caller = caller;
        this.answers = answers;
        this.searches = searches;
    }

    @GET
    @Operation(summary = "The smallest sets of changes to the task that reach a goal; may take seconds to minutes")
    @APIResponse(responseCode = "200", description = "The sets by effort, and how far it was searched.")
    @APIResponse(responseCode = "202", description = "It is being searched; ask again.")
    @APIResponse(responseCode = "304", description = "The caller holds it already.")
    @APIResponse(responseCode = "404", description = "No such answer.")
    @APIResponse(responseCode = "422", description = "A parameter names no goal, process or group.")
    public Response changes(
            @PathParam("id") UUID id,
            @Parameter(description = "bring-in, let-stand, first or displace-first")
                    @QueryParam("goal")
                    @DefaultValue("")
                    String goal,
            @Parameter(description = "Id of the process it is wanted of; not for displace-first")
                    @QueryParam("process")
                    @DefaultValue("")
                    String process,
            @Parameter(description = "Groups that may change though they are held fast else, such as materials,part")
                    @QueryParam("free")
                    List<String> free,
            @Parameter(description = "Most changes in a set, 1 to 3") @QueryParam("most") @DefaultValue("3") int most,
            @Context Request request) {
        KeptAnswer kept = answers.open(caller.workspaceId(), id);
        ChangesQuery query = ChangesQuery.read(goal, process, free, most, kept.edition());
        return Waiting.answer(request, searches.changes(caller.workspaceId(), kept, query.goal(), query.scope()));
    }
}
