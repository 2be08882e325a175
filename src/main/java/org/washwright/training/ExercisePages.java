package org.washwright.training;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.casework.KeptAnswer;
import org.washwright.explain.exercise.ExerciseMaker;
import org.washwright.explain.exercise.TaskInWords;
import org.washwright.http.Paged;
import org.washwright.http.Slice;
import org.washwright.problem.Invalid;
import org.washwright.problem.NotFound;
import org.washwright.problem.ProblemError;

/** Exercises, for people: set one, work on it, see how it went. */
@Path("/exercises")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class ExercisePages {
    private final Caller caller;
    private final Exercises exercises;
    private final ExerciseDesk desk;

    ExercisePages(Caller caller, Exercises exercises, ExerciseDesk desk) {
        this.caller = caller;
        this.exercises = exercises;
        this.desk = desk;
    }

    @GET
    public TemplateInstance list(
            @QueryParam("page") @DefaultValue("0") String page,
            @QueryParam("size") @DefaultValue(Slice.USUAL_SIZE) String size) {
        Paged<SetExercise> found = exercises.list(caller.workspaceId(), Slice.of(page, size));
        return Templates.list(
                found,
                found.items().stream().map(e -> desk.own(caller, e.id()).size()).toList(),
                caller.mayTrain());
    }

    @GET
    @Path("new")
    @RolesAllowed({Roles.CONSULTANT, Roles.REVIEWER, Roles.ENGINEER})
    public TemplateInstance blank(@QueryParam("assessment") Optional<UUID> assessment) {
        KeptAnswer kept = desk.answer(
                caller.workspaceId(),
                assessment.orElseThrow(() -> new NotFound(
                        "An exercise is made from an assessment; open one and choose “Set as an exercise”.")));
        ExerciseWish usual = new ExerciseWish(
                kept.task().title(), "", new ExerciseMaker(kept.answer(), kept.edition()).mix(), "", 0);
        return Templates.set(kept, SetForm.of(kept.answer(), usual, List.of()));
    }

    @POST
    @Path("new")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Roles.CONSULTANT, Roles.REVIEWER, Roles.ENGINEER})
    public Response set(@QueryParam("assessment") Optional<UUID> assessment, MultivaluedMap<String, String> posted) {
        UUID id = assessment.orElseThrow(() -> new NotFound("The form does not say which assessment it is made from."));
        ExerciseWish wish = new ExerciseWish(
                text(posted, "/title"),
                text(posted, "/instruction"),
                posted.getOrDefault("/processes", List.of()),
                text(posted, "/due"),
                0);
        try {
            SetExercise made = desk.set(caller.workspaceId(), Person.of(caller), id, wish);
            return Response.seeOther(URI.create("/exercises/" + made.id())).build();
        } catch (Invalid refusal) {
            KeptAnswer kept = desk.answer(caller.workspaceId(), id);
            return Response.status(422)
                    .entity(Templates.set(kept, SetForm.of(kept.answer(), wish, refusal.errors())))
                    .build();
        }
    }

    @GET
    @Path("{id}")
    public TemplateInstance work(@PathParam("id") UUID id) {
        SetExercise set = exercises.view(caller.workspaceId(), id);
        return work(set, WorkForm.blank(set.exercise()), List.of());
    }

    @POST
    @Path("{id}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response submit(@PathParam("id") UUID id, MultivaluedMap<String, String> posted) {
        SetExercise set = exercises.view(caller.workspaceId(), id);
        List<ProblemError> errors = WorkForm.open(set.exercise(), posted);
        if (errors.isEmpty()) {
            try {
                TryView made = desk.submit(
                        caller.workspaceId(), Person.of(caller), id, WorkForm.document(set.exercise(), posted));
                return Response.seeOther(URI.create("/exercises/" + id + "/tries/" + made.id()))
                        .build();
            } catch (Invalid refusal) {
                errors = WorkForm.placed(set.exercise(), refusal.errors());
            }
        }
        return Response.status(422)
                .entity(work(set, WorkForm.of(set.exercise(), posted, errors), errors))
                .build();
    }

    private TemplateInstance work(SetExercise set, WorkForm form, List<ProblemError> errors) {
        KeptAnswer kept = desk.answer(caller.workspaceId(), set.assessment());
        boolean trainer = caller.mayTrain();
        return Templates.work(
                set,
                kept.task().title(),
                TaskInWords.of(kept.answer()),
                form,
                errors,
                desk.own(caller, set.id()),
                trainer,
                trainer ? kept.url() : "");
    }

    @GET
    @Path("{id}/tries/{try}")
    public TemplateInstance feedback(@PathParam("id") UUID id, @PathParam("try") UUID tryId) {
        SetExercise set = exercises.view(caller.workspaceId(), id);
        TryView made = desk.one(caller, id, tryId);
        return Templates.feedback(
                set, made, desk.answer(caller.workspaceId(), set.assessment()).url(), caller.mayTrain());
    }

    @GET
    @Path("{id}/results")
    @RolesAllowed({Roles.CONSULTANT, Roles.REVIEWER, Roles.ENGINEER})
    public TemplateInstance results(@PathParam("id") UUID id) {
        SetExercise set = exercises.view(caller.workspaceId(), id);
        List<TryView> tries = desk.tries(caller, id);
        return Templates.results(
                set,
                Results.of(tries),
                tries,
                desk.answer(caller.workspaceId(), set.assessment()).url());
    }

    private static String text(MultivaluedMap<String, String> posted, String name) {
        return Optional.ofNullable(posted.getFirst(name)).orElse("").strip();
    }

    @CheckedTemplate(basePath = "training")
    static class Templates {
        static native TemplateInstance list(Paged<SetExercise> exercises, List<Integer> tries, boolean trainer);

        static native TemplateInstance set(KeptAnswer kept, SetForm form);

        static native TemplateInstance work(
                SetExercise set,
                String taskTitle,
                TaskInWords task,
                WorkForm form,
                List<ProblemError> errors,
                List<TryView> tries,
                boolean trainer,
                String answerUrl);

        static native TemplateInstance feedback(SetExercise set, TryView made, String answerUrl, boolean trainer);

        static native TemplateInstance results(SetExercise set, Results results, List<TryView> tries, String answerUrl);
    }
}
