package org.washwright.editing.text;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.rulebook.RuleStandings;

/** How the rules of an edition stand, for programs. */
@Path("/api/editions/{id}/standings")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Writing", description = "Help while a file of a draft is written; nothing is stored.")
class StandingsApi {
    private final Caller caller;
    private final RuleStandings standings;

    StandingsApi(Caller caller, RuleStandings standings) {
        this.caller = caller;
        this.standings = standings;
    }

    @GET
    @Operation(
            summary = "How each rule stands: cases on which it fires, open marks, findings of the examination",
            description = "Running the cases is begun when it was not before; ask again while counting is true.")
    @APIResponse(responseCode = "200", description = "Standing by rule id, by the files as they are stored.")
    public RuleStandings.Standings standings(@PathParam("id") UUID id) {
        return standings.of(caller.workspaceId(), id);
    }
}
