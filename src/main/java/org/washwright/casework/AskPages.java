package org.washwright.casework;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.assessment.Wishes;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;
import org.washwright.rule.Edition;
import org.washwright.rulebook.Editions;

/** Asks a task again with other weights, prices and assumptions. */
@Path("/tasks/{task}/ask")
@RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
@Produces(MediaType.TEXT_HTML)
class AskPages {
    private final Caller caller;
    private final Tasks tasks;
    private final Assessments assessments;
    private final Editions editions;

    AskPages(Caller caller, Tasks tasks, Assessments assessments, Editions editions) {
        this.caller = caller;
        this.tasks = tasks;
        this.assessments = assessments;
        this.editions = editions;
    }

    @GET
    public TemplateInstance form(@PathParam("task") UUID task) {
        return form(task, Map.of(), List.of());
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response ask(@PathParam("task") UUID task, MultivaluedMap<String, String> posted) {
        Map<String, String> typed = new TreeMap<>();
        posted.forEach((field, values) ->
                typed.put(field, values.isEmpty() ? "" : values.get(0).strip()));
        List<ProblemError> errors = new ArrayList<>();
        Wishes wishes = AskForm.wishes(typed, assessments.today(), errors);
        try {
            if (!errors.isEmpty()) {
                throw new Invalid(errors);
            }
            AssessmentView made = assessments.assess(caller.workspaceId(), Person.of(caller), task, wishes);
            return Response.seeOther(URI.create("/tasks/" + task + "/assessments/" + made.id()))
                    .build();
        } catch (Invalid refusal) {
            return Response.status(422)
                    .entity(form(task, typed, refusal.errors()))
                    .build();
        }
    }

    private TemplateInstance form(UUID task, Map<String, String> typed, List<ProblemError> errors) {
        TaskView view = tasks.view(caller.workspaceId(), task);
        Edition edition = editions.content(
                caller.workspaceId(),
                editions.requireCurrent(caller.workspaceId()).id());
        return Templates.ask(view, AskForm.of(edition, typed, assessments.today()), errors);
    }

    @CheckedTemplate(basePath = "casework")
    static class Templates {
        static native TemplateInstance ask(TaskView task, AskForm form, List<ProblemError> errors);
    }
}
