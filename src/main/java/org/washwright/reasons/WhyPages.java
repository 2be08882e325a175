package org.washwright.reasons;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.FormParam;
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
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.casework.Answers;
import org.washwright.casework.KeptAnswer;
import org.washwright.explain.why.NothingThere;
import org.washwright.explain.why.Thing;
import org.washwright.explain.why.Why;
import org.washwright.problem.Invalid;
import org.washwright.problem.NotFound;
import org.washwright.problem.ProblemError;

/** Why an answer says something, for people. */
@Path("/tasks/{task}/assessments/{id}/why")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class WhyPages {
    private final Caller caller;
    private final Answers answers;
    private final Marks marks;

    WhyPages(Caller caller, Answers answers, Marks marks) {
        this.caller = caller;
        this.answers = answers;
        this.marks = marks;
    }

    /** The reasons of one thing; without one, everything that can be asked. */
    @GET
    public TemplateInstance why(@PathParam("task") UUID task, @PathParam("id") UUID id, @QueryParam("of") String of) {
        KeptAnswer kept = answers.open(caller.workspaceId(), task, id);
        Why why = new Why(kept.answer());
        String url = kept.url() + "/why";
        if (of == null || of.isEmpty()) {
            List<Statement> statements = why.statements().stream()
                    .map(t -> new Statement(t, WhyView.href(t, url)))
                    .toList();
            return Templates.whyList(kept, statements);
        }
        return shown(kept, of, "", List.of());
    }

    /** Says that what is explained is wrong. */
    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT, Roles.REVIEWER})
    public Response mark(
            @PathParam("task") UUID task,
            @PathParam("id") UUID id,
            @FormParam("of") String of,
            @FormParam("because") @DefaultValue("") String because) {
        KeptAnswer kept = answers.open(caller.workspaceId(), task, id);
        try {
            MarkView made = marks.add(
                    caller.workspaceId(), kept, MarkForm.objection(kept.answer(), of, because), Person.of(caller));
            return Response.seeOther(URI.create(made.whyUrl() + "#marks")).build();
        } catch (Invalid refusal) {
            return Response.status(422)
                    .entity(shown(kept, of == null ? "" : of, because, refusal.errors()))
                    .build();
        }
    }

    private TemplateInstance shown(KeptAnswer kept, String of, String because, List<ProblemError> errors) {
        String url = kept.url() + "/why";
        try {
            WhyView view = WhyView.of(new Why(kept.answer()).of(of), url);
            List<MarkView> made = marks.of(caller.workspaceId(), kept.view().id()).stream()
                    .filter(m -> m.at().equals(of))
                    .toList();
            boolean mayMark = caller.mayWrite() || caller.has(Roles.REVIEWER);
            return Templates.why(kept, of, view, made, mayMark, because, errors);
        } catch (NothingThere e) {
            throw new NotFound(e.getMessage() + " The list of what can be asked stands at " + url + ".");
        }
    }

    /** Something the answer says, and where its reasons stand. */
    record Statement(Thing thing, String href) {}

    @CheckedTemplate(basePath = "reasons")
    static class Templates {
        static native TemplateInstance why(
                KeptAnswer kept,
                String of,
                WhyView view,
                List<MarkView> marks,
                boolean mayMark,
                String because,
                List<ProblemError> errors);

        static native TemplateInstance whyList(KeptAnswer kept, List<Statement> statements);
    }
}
