package org.washwright.training;

import com.fasterxml.jackson.annotation.JsonInclude;
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
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
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
import org.washwright.casework.KeptAnswer;
import org.washwright.casework.TaskView;
import org.washwright.explain.exercise.Exercise;
import org.washwright.explain.exercise.TaskInWords;
import org.washwright.http.Paged;
import org.washwright.http.Slice;
import org.washwright.http.Tags;

/** Exercises, for programs. Nothing here tells a trainee the answer before a prediction is in. */
@Path("/api/exercises")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Exercises", description = "Tasks whose answer is predicted and then compared, reason by reason.")
class ExercisesApi {
    private static final String YAML = "application/yaml";

    private final Caller caller;
    private final Exercises exercises;
    private final ExerciseDesk desk;

    ExercisesApi(Caller caller, Exercises exercises, ExerciseDesk desk) {
        this.caller = caller;
        this.exercises = exercises;
        this.desk = desk;
    }

    /** An exercise in a list. */
    record Summary(UUID id, String title, Optional<String> due, TaskView.Act created, int processes) {
        static Summary of(SetExercise set) {
            return new Summary(
                    set.id(),
                    set.exercise().title(),
                    set.due(),
                    set.created(),
                    set.exercise().processes().size());
        }
    }

    /** The task of an exercise: its title, and what was said of it. */
    record Task(String title, List<TaskInWords.Part> parts) {}

    /**
     * An exercise to work on.
     *
     * @param processes what to judge, with reasons to pick from
     * @param tries how often the caller has tried
     * @param assessment the answer it was made from; left out for those who may not set exercises
     */
    record ToWorkOn(
            UUID id,
            String title,
            String instruction,
            Optional<String> due,
            TaskView.Act created,
            Task task,
            List<Exercise.Asked> processes,
            int tries,
            @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<UUID> assessment) {}

    /** Tries in a list. */
    record Tries(List<TryView> items) {}

    @GET
    @Operation(summary = "Exercises of the workspace, the latest first")
    @APIResponse(responseCode = "200", description = "A page of exercises; Link leads to its neighbours.")
    public Response list(
            @QueryParam("page") @DefaultValue("0") String page,
            @QueryParam("size") @DefaultValue(Slice.USUAL_SIZE) String size,
            @Context Request request,
            @Context UriInfo uri) {
        Slice slice = Slice.of(page, size);
        Paged<SetExercise> found = exercises.list(caller.workspaceId(), slice);
        return Paged.of(found.items().stream().map(Summary::of).toList(), slice, found.total())
                .answer(request, uri);
    }

    @POST
    @Consumes({MediaType.APPLICATION_JSON, YAML})
    @RolesAllowed({Roles.CONSULTANT, Roles.REVIEWER, Roles.ENGINEER})
    @Operation(
            summary = "Set an exercise from a kept answer",
            description =
                    "The body holds assessment and title, and may hold instruction, processes (at most 8; a mix when"
                            + " left out), due and seed.")
    @APIResponse(responseCode = "201", description = "The exercise.")
    @APIResponse(responseCode = "422", description = "Every error with its place; nothing was stored.")
    public Response set(byte[] body) {
        ExerciseWish.OfRequest wanted = ExerciseWish.read(body);
        SetExercise made = desk.set(caller.workspaceId(), Person.of(caller), wanted.assessment(), wanted.wish());
        return Response.created(URI.create("/api/exercises/" + made.id()))
                .entity(toWorkOn(made))
                .build();
    }

    @GET
    @Path("{id}")
    @Operation(summary = "One exercise: the task in words, and what to judge")
    @APIResponse(responseCode = "200", description = "The exercise; nothing of its answer.")
    @APIResponse(responseCode = "404", description = "Not in this workspace.")
    public Response get(@PathParam("id") UUID id, @Context Request request) {
        return Tags.answer(request, toWorkOn(exercises.view(caller.workspaceId(), id)))
                .build();
    }

    @GET
    @Path("{id}/tries")
    @Operation(
            summary =
                    "Tries with their feedback, the latest first: one's own, or everybody's for those who set exercises")
    @APIResponse(responseCode = "200", description = "The tries.")
    public Response tries(@PathParam("id") UUID id, @Context Request request) {
        exercises.view(caller.workspaceId(), id);
        return Tags.answer(request, new Tries(desk.tries(caller, id))).build();
    }

    @POST
    @Path("{id}/tries")
    @Consumes({MediaType.APPLICATION_JSON, YAML})
    @Operation(
            summary = "Predict, and learn how that compares with the answer",
            description = "The body holds first (a process or \"none\") and predictions, each with process, status and"
                    + " perhaps reasons and words.")
    @APIResponse(responseCode = "201", description = "The try with its feedback.")
    @APIResponse(responseCode = "422", description = "Every error with its place; nothing was stored.")
    public Response predict(@PathParam("id") UUID id, byte[] body) {
        TryView made = desk.submit(caller.workspaceId(), Person.of(caller), id, body == null ? new byte[0] : body);
        return Response.created(URI.create("/api/exercises/" + id + "/tries/" + made.id()))
                .entity(made)
                .build();
    }

    @GET
    @Path("{id}/tries/{try}")
    @Operation(summary = "One try with its feedback")
    @APIResponse(responseCode = "200", description = "The try.")
    @APIResponse(responseCode = "404", description = "No such try, or somebody else's.")
    public Response one(@PathParam("id") UUID id, @PathParam("try") UUID tryId, @Context Request request) {
        return Tags.answer(request, desk.one(caller, id, tryId)).build();
    }

    @GET
    @Path("{id}/results")
    @RolesAllowed({Roles.CONSULTANT, Roles.REVIEWER, Roles.ENGINEER})
    @Operation(summary = "Who tried how often with which counts, and what is missed most")
    @APIResponse(responseCode = "200", description = "The results.")
    public Response results(@PathParam("id") UUID id, @Context Request request) {
        exercises.view(caller.workspaceId(), id);
        return Tags.answer(request, Results.of(desk.tries(caller, id))).build();
    }

    private ToWorkOn toWorkOn(SetExercise set) {
        KeptAnswer kept = desk.answer(caller.workspaceId(), set.assessment());
        return new ToWorkOn(
                set.id(),
                set.exercise().title(),
                set.exercise().instruction(),
                set.due(),
                set.created(),
                new Task(kept.task().title(), TaskInWords.of(kept.answer()).parts()),
                set.exercise().processes(),
                desk.own(caller, set.id()).size(),
                caller.mayTrain() ? Optional.of(set.assessment()) : Optional.empty());
    }
}
