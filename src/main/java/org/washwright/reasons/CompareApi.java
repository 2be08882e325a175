package org.washwright.reasons;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.EntityTag;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.casework.Answers;
import org.washwright.casework.AssessmentView;
import org.washwright.casework.KeptAnswer;
import org.washwright.casework.TaskView;
import org.washwright.casework.Variants;
import org.washwright.document.Hashes;
import org.washwright.explain.compare.Comparing;
import org.washwright.explain.compare.Comparison;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;

/** Answers held against each other, what-ifs and variants, for programs. */
@Path("/api/assessments/{id}")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Comparing", description = "What differs between answers and which rules made the difference.")
class CompareApi {
    static final String HASH = "Washwright-Answer-Hash";
    static final String YAML = "application/yaml";

    private final Caller caller;
    private final Answers answers;
    private final Variants variants;

    CompareApi(Caller caller, Answers answers, Variants variants) {
        this.caller = caller;
        this.answers = answers;
        this.variants = variants;
    }

    /** A variant: the task, its answer, and what differs. */
    record Made(TaskView task, AssessmentView assessment, Comparison comparison) {}

    @GET
    @Path("comparison")
    @Operation(
            summary = "What differs between this answer and another one",
            description = "with names the other answer, any of the workspace; it is the later of the two.")
    @APIResponse(responseCode = "200", description = "The comparison in canonical JSON, with its ETag.")
    @APIResponse(responseCode = "304", description = "The caller holds it already; answers never change.")
    @APIResponse(responseCode = "404", description = "One of the answers is not in this workspace.")
    public Response comparison(
            @PathParam("id") UUID id, @QueryParam("with") Optional<UUID> with, @Context Request request) {
        KeptAnswer before = answers.open(caller.workspaceId(), id);
        KeptAnswer after = answers.open(
                caller.workspaceId(),
                with.orElseThrow(() -> new Invalid(List.of(ProblemError.at(
                        "with", "", "The other answer is missing.", "Name it, ?with=ID.", "missing-field")))));
        return written(Comparing.of(before.frozen(), after.frozen()), request).build();
    }

    @POST
    @Path("what-if")
    @Consumes({MediaType.APPLICATION_JSON, YAML})
    @Operation(
            summary = "What other values would give; nothing is kept",
            description = "The body holds set, a map of JSON pointers in the task to values as in a task file.")
    @APIResponse(
            responseCode = "200",
            description = "The comparison; the hash of the other answer stands in Washwright-Answer-Hash.")
    @APIResponse(responseCode = "422", description = "Every change that can't be made, at once.")
    public Response whatIf(@PathParam("id") UUID id, byte[] body, @Context Request request) {
        KeptAnswer kept = answers.open(caller.workspaceId(), id);
        FrozenAnswer tried = variants.tried(
                caller.workspaceId(), kept, ChangesReader.read(body, false).changes());
        return written(Comparing.of(kept.frozen(), tried), request)
                .header(HASH, tried.hash())
                .build();
    }

    @POST
    @Path("variants")
    @Consumes({MediaType.APPLICATION_JSON, YAML})
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
    @Operation(
            summary = "Keep a what-if as a task of its own, with its answer",
            description = "The body holds title and set. The variant leads back to the task it was made from.")
    @APIResponse(responseCode = "201", description = "Task, answer and comparison; the task stands at Location.")
    @APIResponse(responseCode = "422", description = "Everything that is wrong, at once; nothing is kept.")
    public Response variant(@PathParam("id") UUID id, byte[] body) {
        KeptAnswer kept = answers.open(caller.workspaceId(), id);
        ChangesReader read = ChangesReader.read(body, true);
        KeptAnswer made = variants.keep(caller.workspaceId(), Person.of(caller), kept, read.title(), read.changes());
        return Response.created(URI.create("/api/tasks/" + made.task().id()))
                .entity(new Made(made.task(), made.view(), Comparing.of(kept.frozen(), made.frozen())))
                .header(HASH, made.frozen().hash())
                .build();
    }

    private static Response.ResponseBuilder written(Comparison comparison, Request request) {
        byte[] bytes = Hashes.canonical(comparison);
        EntityTag tag = new EntityTag(Hashes.sha256(bytes).substring(0, 32));
        boolean reading = request.getMethod().equals("GET");
        return Optional.ofNullable(reading ? request.evaluatePreconditions(tag) : null)
                .orElseGet(() -> Response.ok(bytes).tag(tag));
    }
}
