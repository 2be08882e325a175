package org.washwright.reasons;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.casework.Answers;
import org.washwright.casework.AssessmentView;
import org.washwright.casework.KeptAnswer;
import org.washwright.casework.TaskView;
import org.washwright.casework.Variants;
import org.washwright.explain.compare.Comparing;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;
import org.washwright.rulebook.EditionView;

/** Two kept answers held against each other, and the choice of what to hold against. */
@Path("/tasks/{task}/assessments/{id}/compare-with")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class ComparePages {
    private final Caller caller;
    private final Answers answers;
    private final Variants variants;

    ComparePages(Caller caller, Answers answers, Variants variants) {
        this.caller = caller;
        this.answers = answers;
        this.variants = variants;
    }

    /** Answers of one task that can be compared with. */
    public record Choice(TaskView task, boolean own, List<AssessmentView> assessments) {}

    @GET
    public TemplateInstance choose(@PathParam("task") UUID task, @PathParam("id") UUID id) {
        return chosen(answers.open(caller.workspaceId(), task, id), List.of());
    }

    private TemplateInstance chosen(KeptAnswer kept, List<ProblemError> errors) {
        List<Choice> choices = new ArrayList<>();
        choices.add(choice(kept.task(), kept));
        variants.family(caller.workspaceId(), kept.task()).forEach(t -> choices.add(choice(t, kept)));
        return Templates.choose(kept, choices, variants.released(caller.workspaceId()), caller.mayWrite(), errors);
    }

    private Choice choice(TaskView task, KeptAnswer kept) {
        List<AssessmentView> others = answers.of(caller.workspaceId(), task.id()).stream()
                .filter(a -> !a.id().equals(kept.view().id()))
                .toList();
        return new Choice(task, task.id().equals(kept.task().id()), others);
    }

    /** Asks the task again by another edition and lands on the comparison. */
    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
    public Response again(@PathParam("task") UUID task, @PathParam("id") UUID id, @FormParam("edition") UUID edition) {
        KeptAnswer kept = answers.open(caller.workspaceId(), task, id);
        try {
            if (edition == null) {
                throw new Invalid(List.of(ProblemError.at(
                        "edition", "", "No edition is chosen.", "Choose one of the list.", "missing-field")));
            }
            KeptAnswer made = variants.again(caller.workspaceId(), Person.of(caller), kept, edition);
            return Response.seeOther(URI.create(
                            kept.url() + "/compare-with/" + made.view().id()))
                    .build();
        } catch (Invalid refusal) {
            return Response.status(422).entity(chosen(kept, refusal.errors())).build();
        }
    }

    @GET
    @Path("{other}")
    public TemplateInstance compare(
            @PathParam("task") UUID task, @PathParam("id") UUID id, @PathParam("other") UUID other) {
        KeptAnswer before = answers.open(caller.workspaceId(), task, id);
        KeptAnswer after = answers.open(caller.workspaceId(), other);
        ComparisonView view = ComparisonView.of(
                Comparing.of(before.frozen(), after.frozen()),
                ComparisonView.Panel.of("Before", before),
                ComparisonView.Panel.of("After", after),
                before.answer(),
                after.answer());
        return Templates.comparison(view, before, after);
    }

    @CheckedTemplate(basePath = "reasons")
    static class Templates {
        static native TemplateInstance choose(
                KeptAnswer kept,
                List<Choice> choices,
                List<EditionView> editions,
                boolean write,
                List<ProblemError> errors);

        static native TemplateInstance comparison(ComparisonView view, KeptAnswer kept, KeptAnswer other);
    }
}
