package org.washwright.casework;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.net.URI;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.assessment.Wishes;
import org.washwright.http.Slice;
import org.washwright.http.Tags;
import org.washwright.rule.Edition;
import org.washwright.rulebook.Editions;

/** Cleaning tasks, for programs. */
@Path("/api/tasks")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Cleaning tasks", description = "What has to be cleaned, of what, for what, and where.")
class TasksApi {
    static final String YAML = "application/yaml";
    static final String OLD_YAML = "application/x-yaml";
    static final String TEXT_YAML = "text/yaml";

    private final Caller caller;
    private final Tasks tasks;
    private final Assessments assessments;
    private final Editions editions;

    TasksApi(Caller caller, Tasks tasks, Assessments assessments, Editions editions) {
        this.caller = caller;
        this.tasks = tasks;
        this.assessments = assessments;
        this.editions = editions;
    }

    /** A task with its document in plain JSON. */
    record TaskEnvelope(
            UUID id,
            String title,
            TaskView.Act created,
            TaskView.Act changed,
            int version,
            Optional<UUID> variantOf,
            Object task) {}

    @GET
    @Operation(summary = "Cleaning tasks of the workspace, changed last first")
    @APIResponse(responseCode = "200", description = "A page of tasks; Link leads to its neighbours.")
    public Response list(
            @QueryParam("page") @DefaultValue("0") String page,
            @QueryParam("size") @DefaultValue(Slice.USUAL_SIZE) String size,
            @Context Request request,
            @Context UriInfo uri) {
        return tasks.list(caller.workspaceId(), Slice.of(page, size)).answer(request, uri);
    }

    @POST
    @Consumes({MediaType.APPLICATION_JSON, YAML, OLD_YAML, TEXT_YAML})
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
    @Operation(summary = "Keep a task, given as JSON or YAML; see /api/task-schema")
    @APIResponse(responseCode = "201", description = "The task with its ETag.")
    @APIResponse(responseCode = "422", description = "Every error with its place; nothing was stored.")
    public Response add(byte[] document) {
        TaskView made = tasks.add(caller.workspaceId(), Person.of(caller), GivenTask.read(document, vocabulary()));
        return Response.created(URI.create("/api/tasks/" + made.id()))
                .entity(envelope(made))
                .tag(Tags.of(made.version()))
                .build();
    }

    @GET
    @Path("{id}")
    @Operation(summary = "One task")
    @APIResponse(responseCode = "200", description = "The task with its document and ETag.")
    @APIResponse(responseCode = "404", description = "Not in this workspace.")
    public Response get(@PathParam("id") UUID id, @Context Request request) {
        TaskView task = tasks.view(caller.workspaceId(), id);
        return Tags.answer(request, envelope(task), task.version()).build();
    }

    @GET
    @Path("{id}/document")
    @Produces({MediaType.TEXT_PLAIN, MediaType.APPLICATION_JSON})
    @Operation(summary = "The document as it was given, JSON or YAML")
    public Response document(@PathParam("id") UUID id) {
        return Response.ok(tasks.document(caller.workspaceId(), id))
                .type(MediaType.TEXT_PLAIN_TYPE.withCharset("UTF-8"))
                .build();
    }

    @PUT
    @Path("{id}")
    @Consumes({MediaType.APPLICATION_JSON, YAML, OLD_YAML, TEXT_YAML})
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
    @Operation(summary = "Change a task; earlier assessments keep what they answered")
    @APIResponse(responseCode = "200", description = "The task with its new ETag.")
    @APIResponse(responseCode = "412", description = "Changed since it was read.")
    @APIResponse(responseCode = "428", description = "If-Match is missing.")
    public Response change(@PathParam("id") UUID id, @HeaderParam("If-Match") String ifMatch, byte[] document) {
        int version = Tags.required(ifMatch);
        tasks.view(caller.workspaceId(), id);
        TaskView changed = tasks.change(
                caller.workspaceId(), Person.of(caller), id, version, GivenTask.read(document, vocabulary()));
        return Response.ok(envelope(changed)).tag(Tags.of(changed.version())).build();
    }

    @GET
    @Path("{id}/assessments")
    @Operation(summary = "Assessments of a task, the latest first, at most 100")
    public java.util.List<AssessmentView> assessments(@PathParam("id") UUID id) {
        tasks.view(caller.workspaceId(), id);
        return assessments.of(caller.workspaceId(), id);
    }

    @POST
    @Path("{id}/assessments")
    @Consumes({MediaType.APPLICATION_JSON, YAML, OLD_YAML, TEXT_YAML, MediaType.WILDCARD})
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
    @Operation(
            summary = "Answer a task by the current edition, or by any released one",
            description = "The body may hold weights, assumptions, asOf and seed, or be left out. The parameter"
                    + " edition names another released edition than the current one.")
    @APIResponse(responseCode = "201", description = "The envelope; the answer itself stands at Location.")
    @APIResponse(responseCode = "422", description = "The task or a wish can't be answered; every error at once.")
    public Response assess(@PathParam("id") UUID id, @QueryParam("edition") Optional<UUID> edition, byte[] body) {
        Wishes wishes = WishesReader.read(body, assessments.today());
        AssessmentView made = edition.isPresent()
                ? assessments.assess(caller.workspaceId(), Person.of(caller), id, edition.get(), wishes)
                : assessments.assess(caller.workspaceId(), Person.of(caller), id, wishes);
        return Response.created(URI.create("/api/assessments/" + made.id()))
                .entity(made)
                .header(AssessmentsApi.HASH, made.answerHash())
                .build();
    }

    private TaskEnvelope envelope(TaskView task) {
        Object document = GivenTask.plain(GivenTask.nodes(tasks.document(caller.workspaceId(), task.id())));
        return new TaskEnvelope(
                task.id(), task.title(), task.created(), task.changed(), task.version(), task.variantOf(), document);
    }

    private Edition vocabulary() {
        return editions.content(
                caller.workspaceId(),
                editions.requireCurrent(caller.workspaceId()).id());
    }
}
