package org.washwright.judging;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.http.Tags;
import org.washwright.impact.replay.Impact;
import org.washwright.problem.NotFound;
import org.washwright.rulebook.Work;

/** What a change does to past answers, and whether it was meant, for programs. */
@Path("/api/editions/{id}/impact")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Editions", description = "Versioned rulebooks: drafts, review, release.")
class ImpactApi {
    private static final int ACCEPTED = 202;

    private final Caller caller;
    private final EditionPairs pairs;
    private final Impacts impacts;
    private final Runs runs;

    ImpactApi(Caller caller, EditionPairs pairs, Impacts impacts, Runs runs) {
        this.caller = caller;
        this.pairs = pairs;
        this.impacts = impacts;
        this.runs = runs;
    }

    /** A run with what was judged of it. */
    record Told(UUID edition, UUID before, String by, String at, Impact impact, Collection<Judgement> judgements) {}

    /** What somebody makes of a changed answer. */
    record Judging(String verdict, String note) {}

    @POST
    @RolesAllowed({Roles.CONSULTANT, Roles.REVIEWER})
    @Operation(
            summary = "Begin to answer past tasks and cases by this edition and an earlier one",
            description = "with names the earlier edition; without it, the one its rulebook released last.")
    @APIResponse(responseCode = "202", description = "Begun, or going on already; ask by GET.")
    @APIResponse(responseCode = "409", description = "One of them has errors, or there is no other one.")
    public Response begin(@PathParam("id") UUID id, @QueryParam("with") Optional<UUID> with) {
        EditionPairs.Pair pair = pairs.require(caller.workspaceId(), id, with);
        impacts.begin(caller.workspaceId(), pair, Person.of(caller));
        return impacts.standing(caller.workspaceId(), pair)
                .going()
                .map(ImpactApi::goesOn)
                .orElseGet(() -> Response.status(ACCEPTED).entity(Map.of()).build());
    }

    @GET
    @Operation(summary = "What the last run of exactly these files found, and what was judged of it")
    @APIResponse(responseCode = "200", description = "The impact with its sample and the judgements.")
    @APIResponse(responseCode = "202", description = "It goes on; ask again.")
    @APIResponse(responseCode = "404", description = "These files were not tried yet.")
    public Response impact(@PathParam("id") UUID id, @QueryParam("with") Optional<UUID> with) {
        EditionPairs.Pair pair = pairs.require(caller.workspaceId(), id, with);
        Impacts.Standing standing = impacts.standing(caller.workspaceId(), pair);
        if (standing.going().isPresent()) {
            return goesOn(standing.going().get());
        }
        KeptRun run = run(standing, id);
        return Response.ok(new Told(
                        run.edition(),
                        run.before(),
                        run.by(),
                        run.at(),
                        run.impact(),
                        runs.judged(caller.workspaceId(), run.impact()).values()))
                .build();
    }

    @PUT
    @Path("judgements/{task}")
    @Consumes(MediaType.APPLICATION_JSON)
    @RolesAllowed({Roles.CONSULTANT, Roles.REVIEWER})
    @Operation(
            summary = "Say whether a changed answer was meant",
            description = "The body holds verdict, \"meant\" or \"not meant\", and note, needed for the latter.")
    @APIResponse(responseCode = "200", description = "The judgement with its ETag.")
    @APIResponse(responseCode = "404", description = "No such answer changes, or nothing was tried yet.")
    @APIResponse(responseCode = "412", description = "Somebody judged it since it was read.")
    @APIResponse(responseCode = "422", description = "Everything that is wrong, at once.")
    public Response judge(
            @PathParam("id") UUID id,
            @PathParam("task") String task,
            @QueryParam("with") Optional<UUID> with,
            @HeaderParam("If-Match") String ifMatch,
            Judging judging) {
        EditionPairs.Pair pair = pairs.require(caller.workspaceId(), id, with);
        KeptRun run = run(impacts.standing(caller.workspaceId(), pair), id);
        JudgementForm form =
                JudgementForm.read(judging == null ? "" : judging.verdict(), judging == null ? "" : judging.note());
        // One that was not judged yet has no tag to name.
        int expected = ifMatch == null ? 0 : Tags.required(ifMatch);
        Judgement kept = runs.judge(
                caller.workspaceId(), run.impact(), task, expected, form.verdict(), form.note(), Person.of(caller));
        return Response.ok(kept).tag(Tags.of(kept.version())).build();
    }

    private static KeptRun run(Impacts.Standing standing, UUID id) {
        return standing.kept().orElseThrow(() -> NotFound.of("run of exactly these files for edition", id));
    }

    private static Response goesOn(Work<?> work) {
        return Response.status(ACCEPTED)
                .header("Retry-After", "2")
                .entity(Map.of("done", work.done(), "of", work.all()))
                .build();
    }
}
