package org.washwright.rulebook;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import org.washwright.access.Caller;
import org.washwright.access.Roles;

/** The words of the current edition. */
@Path("/glossary")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class GlossaryPage {
    private final Caller caller;
    private final Editions editions;

    GlossaryPage(Caller caller, Editions editions) {
        this.caller = caller;
        this.editions = editions;
    }

    @GET
    public TemplateInstance show(@QueryParam("q") @DefaultValue("") String q) {
        EditionView current = editions.requireCurrent(caller.workspaceId());
        return page(current, Glossary.of(editions.content(caller.workspaceId(), current.id()), q), q, true);
    }

    static TemplateInstance page(EditionView edition, Glossary glossary, String q, boolean current) {
        return Templates.glossary(
                edition, glossary, q, current ? "/glossary" : "/rulebooks/" + edition.id() + "/glossary", current);
    }

    @CheckedTemplate(basePath = "rulebook")
    static class Templates {
        static native TemplateInstance glossary(
                EditionView edition, Glossary glossary, String q, String address, boolean current);
    }
}
