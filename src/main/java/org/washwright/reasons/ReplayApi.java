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
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.explain.replay.Chapter;
import org.washwright.explain.replay.Replay;
import org.washwright.explain.replay.Step;
import org.washwright.http.Tags;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;

/** How an answer came about, for programs. */
@Path("/api/assessments/{id}/replay")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Reasons", description = "Why an answer is as it is.")
class ReplayApi {
    private static final int MOST = 1000;

    private final Caller caller;
    private final Replays replays;

    ReplayApi(Caller caller, Replays replays) {
        this.caller = caller;
        this.replays = replays;
    }

    /**
     * A run of steps.
     *
     * @param process process that the walk is about; empty for the whole answer
     * @param name what a reader calls it
     * @param total steps of the whole walk
     * @param from position of the first step here, from 1
     * @param knownBefore facts and attributes known before that step
     * @param knownAfter the same after the last step here
     * @param chapters chapters of the whole walk
     * @param steps the steps
     */
    record ReplayPart(
            String process,
            String name,
            int total,
            int from,
            int knownBefore,
            int knownAfter,
            List<Chapter> chapters,
            List<Step> steps) {}

    @GET
    @Operation(
            summary = "How the answer came about, step by step",
            description = "process keeps only what concerns one process and what that rests on; from is the position of"
                    + " the first step, from 1, size how many follow.")
    @APIResponse(responseCode = "200", description = "Steps with what each read and what it adds.")
    @APIResponse(responseCode = "304", description = "The caller holds it already.")
    @APIResponse(responseCode = "404", description = "No such answer or process.")
    @APIResponse(responseCode = "422", description = "from or size is no number within its bounds.")
    public Response replay(
            @PathParam("id") UUID id,
            @QueryParam("process") @DefaultValue("") String process,
            @QueryParam("from") @DefaultValue("1") String from,
            @QueryParam("size") @DefaultValue("100") String size,
            @Context Request request) {
        List<ProblemError> errors = new ArrayList<>();
        int first = Numbers.within("from", from, 1, 1_000_000, errors);
        int count = Numbers.within("size", size, 1, MOST, errors);
        if (!errors.isEmpty()) {
            throw new Invalid(errors);
        }
        Replay replay = replays.of(caller.workspaceId(), id, process).replay();
        int start = Math.min(first - 1, replay.size());
        int end = Math.min(start + count, replay.size());
        return Tags.answer(
                        request,
                        new ReplayPart(
                                replay.process(),
                                replay.name(),
                                replay.size(),
                                start + 1,
                                replay.known(start).size(),
                                replay.known(end).size(),
                                replay.chapters(),
                                replay.steps().subList(start, end)))
                .build();
    }
}
