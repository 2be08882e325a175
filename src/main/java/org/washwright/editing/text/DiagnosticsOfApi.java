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

/** What is wrong with a text that is not stored, for programs. */
@Path("/api/editions/{id}/diagnostics-of")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Writing", description = "Help while a file of a draft is written; nothing is stored.")
class DiagnosticsOfApi {
    private final Caller caller;
    private final Desk desk;

    DiagnosticsOfApi(Caller caller, Desk desk) {
        this.caller = caller;
        this.desk = desk;
    }

    @POST
    @Consumes({MediaType.TEXT_PLAIN, MediaType.APPLICATION_OCTET_STREAM})
    @Operation(
            summary = "What would be wrong with the edition if this file had this text",
            description = "The body is the text; it is not stored. Only this file is read again.")
    @APIResponse(responseCode = "200", description = "What was found in this file, and what in others.")
    @APIResponse(responseCode = "422", description = "No name of a file of an edition, not UTF-8, or too large.")
    public Desk.Found found(@PathParam("id") UUID id, @QueryParam("file") @DefaultValue("") String file, byte[] text) {
        return desk.found(caller.workspaceId(), id, WrittenText.of(file, text));
    }
}
