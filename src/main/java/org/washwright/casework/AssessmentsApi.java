package org.washwright.casework;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
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
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.assessment.Wishes;
import org.washwright.document.Diagnostics;
import org.washwright.document.DocumentReader;
import org.washwright.document.MapReader;
import org.washwright.document.Message;
import org.washwright.document.Node;
import org.washwright.document.Place;
import org.washwright.http.Tags;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemErrors;
import org.washwright.rule.Edition;
import org.washwright.rulebook.EditionView;
import org.washwright.rulebook.Editions;
import org.washwright.task.CleaningTask;
import org.washwright.task.TaskReader;

/** Answers, for programs: exact bytes and what stands around them. */
@Path("/api/assessments")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Assessments", description = "Answers to cleaning tasks, byte for byte.")
class AssessmentsApi {
    static final String HASH = "Washwright-Answer-Hash";

    private final Caller caller;
    private final Assessments assessments;
    private final Editions editions;
    private final AssessmentReports reports;

    AssessmentsApi(Caller caller, Assessments assessments, Editions editions, AssessmentReports reports) {
        this.caller = caller;
        this.assessments = assessments;
        this.editions = editions;
        this.reports = reports;
    }

    @GET
    @Path("{id}")
    @Operation(summary = "The answer: exactly the bytes whose SHA-256 stands in Washwright-Answer-Hash")
    @APIResponse(responseCode = "200", description = "The answer in canonical JSON (RFC 8785).")
    @APIResponse(responseCode = "304", description = "The caller holds it already; an answer never changes.")
    public Response answer(@PathParam("id") UUID id, @Context Request request) {
        AssessmentView view = assessments.view(caller.workspaceId(), id);
        EntityTag tag = new EntityTag(view.answerHash());
        return Optional.ofNullable(request.evaluatePreconditions(tag))
                .orElseGet(() -> Response.ok(assessments.bytes(caller.workspaceId(), id))
                        .tag(tag)
                        .header(HASH, view.answerHash()))
                .build();
    }

    @GET
    @Path("{id}/envelope")
    @Operation(summary = "Who asked, when, of which task and edition")
    public Response envelope(@PathParam("id") UUID id, @Context Request request) {
        return Tags.answer(request, assessments.view(caller.workspaceId(), id)).build();
    }

    @GET
    @Path("{id}/report")
    @Produces(MediaType.WILDCARD)
    @Operation(
            summary = "The report of one line as a file",
            description = "format is pdf, xlsx or html; process names the line, else the one that stands first.")
    @APIResponse(responseCode = "200", description = "The report; its ETag is the hash of the answer.")
    @APIResponse(responseCode = "304", description = "The caller holds it already.")
    @APIResponse(responseCode = "404", description = "No such answer, process or kind of file.")
    public Response report(
            @PathParam("id") UUID id,
            @QueryParam("format") @DefaultValue("pdf") String format,
            @QueryParam("process") String process,
            @Context Request request) {
        return reports.file(caller, id, format, process, request);
    }

    @POST
    @Consumes({MediaType.APPLICATION_JSON, TasksApi.YAML, TasksApi.OLD_YAML, TasksApi.TEXT_YAML})
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
    @Operation(
            summary = "Answer a task that comes along; nothing is stored",
            description = "The body holds task and may hold weights, assumptions, asOf and seed.")
    @APIResponse(responseCode = "200", description = "The answer, byte for byte as a kept one would be.")
    public Response inline(byte[] body) {
        EditionView current = editions.requireCurrent(caller.workspaceId());
        Edition edition = editions.content(caller.workspaceId(), current.id());
        Diagnostics diagnostics = new Diagnostics();
        Optional<Node> node = body.length > TaskReader.MAX_BYTES
                ? Optional.empty()
                : DocumentReader.read(ProblemErrors.BODY, body, diagnostics);
        if (body.length > TaskReader.MAX_BYTES) {
            diagnostics.add(
                    Message.TOO_LARGE,
                    Place.ofFile(ProblemErrors.BODY),
                    body.length + " bytes",
                    TaskReader.MAX_BYTES + " bytes");
        }
        Optional<MapReader> map = node.map(n -> MapReader.of(n, "the request", diagnostics));
        if (map.isPresent()) {
            Optional<Node> given = map.get().get("task");
            if (given.isEmpty()) {
                diagnostics.add(Message.MISSING_FIELD, map.get().place(), "", "the request", "task");
            }
            given.ifPresent(n -> TaskReader.read(n, edition, diagnostics));
        } else {
            throw new Invalid(ProblemErrors.of(diagnostics.all()));
        }
        Wishes wishes = WishesReader.read(map.get(), assessments.today(), diagnostics);
        // Read again by itself, so that the places named in the answer are those of a task that came alone.
        CleaningTask alone = GivenTask.read(GivenTask.json(map.get().get("task").orElseThrow()), edition)
                .task();
        FrozenAnswer frozen = assessments.answer(caller.workspaceId(), current, alone, wishes);
        return Response.ok(frozen.bytes())
                .tag(new EntityTag(frozen.hash()))
                .header(HASH, frozen.hash())
                .build();
    }
}
