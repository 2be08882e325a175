package org.washwright.casework;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
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
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.http.Slice;
import org.washwright.http.Tags;
import org.washwright.plant.PlantWeek;

/** Plants, for programs, and what they make of a set of tasks. */
@Path("/api/plants")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Plants", description = "Plants that stand there or are planned, and the tasks they can serve.")
class PlantsApi {
    private final Caller caller;
    private final Plants plants;
    private final PlantLoads loads;

    PlantsApi(Caller caller, Plants plants, PlantLoads loads) {
        this.caller = caller;
        this.plants = plants;
        this.loads = loads;
    }

    /** A plant with its document in plain JSON. */
    record PlantEnvelope(UUID id, String name, TaskView.Act created, TaskView.Act changed, int version, Object plant) {}

    @GET
    @Operation(summary = "Plants of the workspace, changed last first")
    @APIResponse(responseCode = "200", description = "A page of plants; Link leads to its neighbours.")
    public Response list(
            @QueryParam("page") @DefaultValue("0") String page,
            @QueryParam("size") @DefaultValue(Slice.USUAL_SIZE) String size,
            @Context Request request,
            @Context UriInfo uri) {
        return plants.list(caller.workspaceId(), Slice.of(page, size)).answer(request, uri);
    }

    @POST
    @Consumes({MediaType.APPLICATION_JSON, TasksApi.YAML, TasksApi.OLD_YAML, TasksApi.TEXT_YAML})
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
    @Operation(summary = "Keep a plant, given as JSON or YAML")
    @APIResponse(responseCode = "201", description = "The plant with its ETag.")
    @APIResponse(responseCode = "422", description = "Every error with its place; nothing was stored.")
    public Response add(byte[] document) {
        GivenPlant given = GivenPlant.read(document, loads.words(caller.workspaceId()));
        PlantView made = plants.add(caller.workspaceId(), Person.of(caller), given);
        return Response.created(URI.create("/api/plants/" + made.id()))
                .entity(envelope(made))
                .tag(Tags.of(made.version()))
                .build();
    }

    @GET
    @Path("{id}")
    @Operation(summary = "One plant")
    @APIResponse(responseCode = "200", description = "The plant with its document and ETag.")
    @APIResponse(responseCode = "404", description = "Not in this workspace.")
    public Response get(@PathParam("id") UUID id, @Context Request request) {
        PlantView plant = plants.view(caller.workspaceId(), id);
        return Tags.answer(request, envelope(plant), plant.version()).build();
    }

    @GET
    @Path("{id}/document")
    @Produces({MediaType.TEXT_PLAIN, MediaType.APPLICATION_JSON})
    @Operation(summary = "The document as it was given, JSON or YAML")
    public Response document(@PathParam("id") UUID id) {
        return Response.ok(plants.document(caller.workspaceId(), id))
                .type(MediaType.TEXT_PLAIN_TYPE.withCharset("UTF-8"))
                .build();
    }

    @PUT
    @Path("{id}")
    @Consumes({MediaType.APPLICATION_JSON, TasksApi.YAML, TasksApi.OLD_YAML, TasksApi.TEXT_YAML})
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
    @Operation(summary = "Change a plant")
    @APIResponse(responseCode = "200", description = "The plant with its new ETag.")
    @APIResponse(responseCode = "412", description = "Changed since it was read.")
    @APIResponse(responseCode = "428", description = "If-Match is missing.")
    public Response change(@PathParam("id") UUID id, @HeaderParam("If-Match") String ifMatch, byte[] document) {
        int version = Tags.required(ifMatch);
        plants.view(caller.workspaceId(), id);
        GivenPlant given = GivenPlant.read(document, loads.words(caller.workspaceId()));
        PlantView changed = plants.change(caller.workspaceId(), Person.of(caller), id, version, given);
        return Response.ok(envelope(changed)).tag(Tags.of(changed.version())).build();
    }

    @DELETE
    @Path("{id}")
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
    @Operation(summary = "Delete a plant")
    @APIResponse(responseCode = "204", description = "It is gone.")
    @APIResponse(responseCode = "412", description = "Changed since it was read.")
    @APIResponse(responseCode = "428", description = "If-Match is missing.")
    public void delete(@PathParam("id") UUID id, @HeaderParam("If-Match") String ifMatch) {
        plants.delete(caller.workspaceId(), id, Tags.required(ifMatch));
    }

    @POST
    @Path("{id}/load")
    @Consumes({MediaType.APPLICATION_JSON, TasksApi.YAML, TasksApi.OLD_YAML, TasksApi.TEXT_YAML})
    @Operation(
            summary = "Which of these tasks the plant can serve, and how full its week is; nothing is stored",
            description =
                    "The body holds tasks, each with id or task and perhaps partsPerWeek, and may hold assumptions and asOf.")
    @APIResponse(responseCode = "200", description = "A verdict on each task, and the week.")
    @APIResponse(responseCode = "422", description = "Every error with its place.")
    public PlantWeek load(@PathParam("id") UUID id, byte[] body) {
        return loads.ofRequest(caller.workspaceId(), id, body);
    }

    @POST
    @Path("load")
    @Consumes({MediaType.APPLICATION_JSON, TasksApi.YAML, TasksApi.OLD_YAML, TasksApi.TEXT_YAML})
    @Operation(summary = "The same for a plant that comes along under plant; nothing is stored")
    @APIResponse(responseCode = "200", description = "A verdict on each task, and the week.")
    @APIResponse(responseCode = "422", description = "Every error with its place.")
    public PlantWeek loadInline(byte[] body) {
        return loads.ofRequest(caller.workspaceId(), body);
    }

    private PlantEnvelope envelope(PlantView plant) {
        Object document = GivenTask.plain(GivenTask.nodes(plants.document(caller.workspaceId(), plant.id())));
        return new PlantEnvelope(plant.id(), plant.name(), plant.created(), plant.changed(), plant.version(), document);
    }
}
