package org.washwright.reasons;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.casework.Answers;
import org.washwright.casework.KeptAnswer;
import org.washwright.http.Tags;

/** Marks on one answer, for programs. */
@Path("/api/assessments/{id}/marks")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
@Tag(name = "Marks")
class NewMarksApi {
    private final Caller caller;
    private final Answers answers;
    private final Marks marks;

    NewMarksApi(Caller caller, Answers answers, Marks marks) {
        this.caller = caller;
        this.answers = answers;
        this.marks = marks;
    }

    /** What is marked, and what is wrong with it. */
    record NewMark(String of, String because) {}

    @GET
    @Operation(summary = "Marks on the statements of an answer, the first one first")
    @APIResponse(responseCode = "200", description = "The marks.")
    public Response list(@PathParam("id") UUID id, @Context Request request) {
        answers.open(caller.workspaceId(), id);
        return Tags.answer(request, marks.of(caller.workspaceId(), id)).build();
    }

    @POST
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT, Roles.REVIEWER})
    @Operation(
            summary = "Say that a statement of an answer is wrong",
            description = "of is its JSON pointer in the answer.")
    @APIResponse(responseCode = "201", description = "The mark with its ETag; it names the rules it stands at.")
    @APIResponse(responseCode = "422", description = "Every error with its place; nothing was stored.")
    public Response add(@PathParam("id") UUID id, NewMark mark) {
        KeptAnswer kept = answers.open(caller.workspaceId(), id);
        String of = mark == null ? "" : mark.of();
        String because = mark == null ? "" : mark.because();
        MarkView made = marks.add(
                caller.workspaceId(), kept, MarkForm.objection(kept.answer(), of, because), Person.of(caller));
        return Response.created(URI.create("/api/marks/" + made.id()))
                .entity(made)
                .tag(Tags.of(made.version()))
                .build();
    }
}
