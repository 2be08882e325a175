package org.washwright.reasons;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.PUT;
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
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.http.Tags;

/** Marks on reasons, for programs. */
@Path("/api/marks")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(
        name = "Marks",
        description = "\"This reason is wrong\": what engineers hold against statements, for the consultant.")
class MarksApi {
    private final Caller caller;
    private final Marks marks;

    MarksApi(Caller caller, Marks marks) {
        this.caller = caller;
        this.marks = marks;
    }

    /** What becomes of a mark. */
    record Settling(String state, String reply) {}

    @GET
    @Operation(summary = "Marks, open ones first; of one rule or one state when that is asked for")
    @APIResponse(responseCode = "200", description = "At most 500 marks.")
    public Response list(
            @QueryParam("rule") @DefaultValue("") String rule,
            @QueryParam("state") @DefaultValue("") String state,
            @Context Request request) {
        List<MarkView> found = marks.list(caller.workspaceId()).stream()
                .filter(m -> rule.isEmpty() || m.rules().contains(rule))
                .filter(m -> state.isEmpty() || m.state().equals(state))
                .toList();
        return Tags.answer(request, found).build();
    }

    @GET
    @Path("{id}")
    @Operation(summary = "One mark")
    @APIResponse(responseCode = "200", description = "The mark with its ETag.")
    @APIResponse(responseCode = "404", description = "Not in this workspace.")
    public Response get(@PathParam("id") UUID id, @Context Request request) {
        MarkView mark = marks.view(caller.workspaceId(), id);
        return Tags.answer(request, mark, mark.version()).build();
    }

    @PUT
    @Path("{id}")
    @RolesAllowed({Roles.CONSULTANT, Roles.REVIEWER})
    @Operation(summary = "Settle a mark: \"will change\", or \"stands\" with a reply; or open it again")
    @APIResponse(responseCode = "200", description = "The mark with its new ETag.")
    @APIResponse(responseCode = "412", description = "Changed since it was read.")
    @APIResponse(responseCode = "428", description = "If-Match is missing.")
    public Response settle(@PathParam("id") UUID id, @HeaderParam("If-Match") String ifMatch, Settling settling) {
        int version = Tags.required(ifMatch);
        MarkForm.Settled settled =
                settling == null ? MarkForm.settled("", "") : MarkForm.settled(settling.state(), settling.reply());
        MarkView changed =
                marks.settle(caller.workspaceId(), id, version, settled.state(), settled.reply(), Person.of(caller));
        return Response.ok(changed).tag(Tags.of(changed.version())).build();
    }
}
