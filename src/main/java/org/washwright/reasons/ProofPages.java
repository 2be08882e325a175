package org.washwright.reasons;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.io.IOException;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.casework.Answers;
import org.washwright.casework.KeptAnswer;
import org.washwright.explain.proof.ProofCheck;
import org.washwright.explain.proof.Verdict;

/** Whether a kept answer follows from its request, for people. */
@Path("/tasks/{task}/assessments/{id}/proof")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class ProofPages {
    private static final int SHOWN = 100;

    private final Caller caller;
    private final Answers answers;

    ProofPages(Caller caller, Answers answers) {
        this.caller = caller;
        this.answers = answers;
    }

    @GET
    public TemplateInstance proof(@PathParam("task") UUID task, @PathParam("id") UUID id) throws IOException {
        KeptAnswer kept = answers.open(caller.workspaceId(), task, id);
        return Templates.proof(
                kept, new ProofCheck(kept.edition()).check(kept.frozen().bytes(), SHOWN));
    }

    @CheckedTemplate(basePath = "reasons")
    static class Templates {
        static native TemplateInstance proof(KeptAnswer kept, Verdict verdict);
    }
}
