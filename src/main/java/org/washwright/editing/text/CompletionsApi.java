package org.washwright.editing.text;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.assist.Proposals;

/** What may stand at a place of a text, for programs. */
@Path("/api/editions/{id}/completions")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Writing", description = "Help while a file of a draft is written; nothing is stored.")
class CompletionsApi {
    private final Caller caller;
    private final Desk desk;

    CompletionsApi(Caller caller, Desk desk) {
        this.caller = caller;
        this.desk = desk;
    }

    @POST
    @Consumes({MediaType.TEXT_PLAIN, MediaType.APPLICATION_OCTET_STREAM})
    @Operation(
            summary = "What may stand at a place of a text",
            description = "The body is the text, which may be broken anywhere; line and column count from 1.")
    @APIResponse(
            responseCode = "200",
            description = "Proposals, and the range of the text, in UTF-16 units from 0, whose place they take.")
    @APIResponse(responseCode = "422", description = "No name of a file of an edition, not UTF-8, or too large.")
    public Proposals proposals(
            @PathParam("id") UUID id,
            @QueryParam("file") @DefaultValue("") String file,
            @QueryParam("line") @DefaultValue("1") int line,
            @QueryParam("column") @DefaultValue("1") int column,
            byte[] text) {
        WrittenText written = WrittenText.of(file, text);
        return desk.proposals(caller.workspaceId(), id, written, written.offset(line, column));
    }
}
