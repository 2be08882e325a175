package org.washwright.casework;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.assessment.Wishes;
import org.washwright.http.Paged;
import org.washwright.http.Slice;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;
import org.washwright.problem.ProblemErrors;
import org.washwright.rule.Edition;
import org.washwright.rulebook.EditionView;
import org.washwright.rulebook.Editions;

/** Cleaning tasks, for people: the list and the task. */
@Path("/tasks")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class TaskPages {
    private final Caller caller;
    private final Tasks tasks;
    private final Drafts drafts;
    private final Assessments assessments;
    private final Editions editions;

    TaskPages(Caller caller, Tasks tasks, Drafts drafts, Assessments assessments, Editions editions) {
        this.caller = caller;
        this.tasks = tasks;
        this.drafts = drafts;
        this.assessments = assessments;
        this.editions = editions;
    }

    @GET
    public TemplateInstance list(
            @QueryParam("page") @DefaultValue("0") String page,
            @QueryParam("size") @DefaultValue(Slice.USUAL_SIZE) String size) {
        return listed(Slice.of(page, size), List.of());
    }

    private TemplateInstance listed(Slice slice, List<ProblemError> errors) {
        List<DraftView> own = caller.mayWrite() ? drafts.of(caller.workspaceId(), Person.of(caller)) : List.of();
        return Templates.list(tasks.list(caller.workspaceId(), slice), own, caller.mayWrite(), errors);
    }

    /** The list with what is wrong with a file that was not taken. */
    Response refused(List<ProblemError> errors) {
        return Response.status(422)
                .entity(listed(Slice.of("0", Slice.USUAL_SIZE), errors))
                .build();
    }

    @GET
    @Path("{id}")
    public TemplateInstance show(@PathParam("id") UUID id) {
        return shown(id, List.of());
    }

    private TemplateInstance shown(UUID id, List<ProblemError> errors) {
        TaskView task = tasks.view(caller.workspaceId(), id);
        String document = tasks.document(caller.workspaceId(), id);
        EditionView current = editions.requireCurrent(caller.workspaceId());
        Edition edition = editions.content(caller.workspaceId(), current.id());
        GivenTask.Result read = GivenTask.tried(document.getBytes(java.nio.charset.StandardCharsets.UTF_8), edition);
        return Templates.task(
                task,
                read.task().map(t -> TaskSummary.of(t.task(), document, edition)),
                errors.isEmpty() ? ProblemErrors.of(read.diagnostics()) : errors,
                assessments.of(caller.workspaceId(), id),
                current,
                tasks.variants(caller.workspaceId(), id),
                task.variantOf().map(original -> tasks.view(caller.workspaceId(), original)),
                caller.mayWrite());
    }

    @POST
    @Path("{id}/assessments")
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
    public Response assess(@PathParam("id") UUID id) {
        try {
            AssessmentView made =
                    assessments.assess(caller.workspaceId(), Person.of(caller), id, Wishes.on(assessments.today()));
            return Response.seeOther(URI.create("/tasks/" + id + "/assessments/" + made.id()))
                    .build();
        } catch (Invalid refusal) {
            return Response.status(422).entity(shown(id, refusal.errors())).build();
        }
    }

    @CheckedTemplate(basePath = "casework")
    static class Templates {
        static native TemplateInstance list(
                Paged<TaskView> tasks, List<DraftView> drafts, boolean write, List<ProblemError> errors);

        static native TemplateInstance task(
                TaskView task,
                Optional<TaskSummary> summary,
                List<ProblemError> errors,
                List<AssessmentView> assessments,
                EditionView current,
                List<TaskView> variants,
                Optional<TaskView> original,
                boolean write);
    }
}
