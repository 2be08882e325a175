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
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.assist.SaidRule;

/** What the rules of a text say, for programs. */
@Path("/api/editions/{id}/sentences")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Writing", description = "Help while a file of a draft is written; nothing is stored.")
class SentencesApi {
    private final Caller caller;
    private final Desk desk;

    SentencesApi(Caller caller, Desk desk) {
        this.caller = caller;
        this.desk = desk;
    }

    @POST
    @Consumes({MediaType.TEXT_PLAIN, MediaType.APPLICATION_OCTET_STREAM})
    @Operation(
            summary = "What the rules of a text say, each as one would say it",
            description = "The body is the text; rules that can not be understood are left out.")
    @APIResponse(
            responseCode = "200",
            description = "The rules in the order of the file, with basis, sources and lines.")
    @APIResponse(responseCode = "422", description = "No name of a file of an edition, not UTF-8, or too large.")
    public List<SaidRule> said(
            @PathParam("id") UUID id, @QueryParam("file") @DefaultValue("") String file, byte[] text) {
        return desk.said(caller.workspaceId(), id, WrittenText.of(file, text));
    }
}
