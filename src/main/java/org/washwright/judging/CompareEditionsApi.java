package org.washwright.judging;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.EntityTag;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.document.Hashes;
import org.washwright.impact.meaning.MeaningComparison;

/** Two editions compared by meaning, for programs. */
@Path("/api/editions/{id}/compare")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Editions", description = "Versioned rulebooks: drafts, review, release.")
class CompareEditionsApi {
    private final Caller caller;
    private final EditionPairs pairs;

    CompareEditionsApi(Caller caller, EditionPairs pairs) {
        this.caller = caller;
        this.pairs = pairs;
    }

    @GET
    @Operation(
            summary = "How this edition differs in meaning from an earlier one",
            description = "with names the earlier edition; without it, the one its rulebook released last.")
    @APIResponse(responseCode = "200", description = "The comparison in canonical JSON, with its ETag.")
    @APIResponse(responseCode = "304", description = "The caller holds it already.")
    @APIResponse(responseCode = "404", description = "One of the editions is not in this workspace.")
    @APIResponse(responseCode = "409", description = "One of them has errors, or there is no other one.")
    public Response compare(
            @PathParam("id") UUID id, @QueryParam("with") Optional<UUID> with, @Context Request request) {
        UUID workspace = caller.workspaceId();
        EditionPairs.Pair pair = pairs.require(workspace, id, with);
        byte[] bytes = Hashes.canonical(
                MeaningComparison.of(pairs.state(workspace, pair.before()), pairs.state(workspace, pair.after())));
        EntityTag tag = new EntityTag(Hashes.sha256(bytes).substring(0, 32));
        return Optional.ofNullable(request.evaluatePreconditions(tag))
                .orElseGet(() -> Response.ok(bytes).tag(tag))
                .build();
    }
}
