package org.washwright.reasons;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.casework.Answers;
import org.washwright.casework.KeptAnswer;
import org.washwright.explain.why.NothingThere;
import org.washwright.explain.why.Thing;
import org.washwright.explain.why.Why;
import org.washwright.problem.NotFound;

/** Why an answer says something, for people. */
@Path("/tasks/{task}/assessments/{id}/why")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class WhyPages {
    private final Caller caller;
    private final Answers answers;

    WhyPages(Caller caller, Answers answers) {
        this.caller = caller;
        this.answers = answers;
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
        try {
            return Templates.why(kept, of, WhyView.of(why.of(of), url));
        } catch (NothingThere e) {
            throw new NotFound(e.getMessage() + " The list of what can be asked stands at " + url + ".");
        }
    }

    /** Something the answer says, and where its reasons stand. */
    record Statement(Thing thing, String href) {}

    @CheckedTemplate(basePath = "reasons")
    static class Templates {
        static native TemplateInstance why(KeptAnswer kept, String of, WhyView view);

        static native TemplateInstance whyList(KeptAnswer kept, List<Statement> statements);
    }
}
