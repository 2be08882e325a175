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
import java.util.List;
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
        List<Glossary.Section> sections =
                Glossary.of(editions.content(caller.workspaceId(), current.id()), q);
        return Templates.glossary(
                current,
                sections,
                q,
                sections.stream().mapToInt(s -> s.words().size()).sum());
    }

    @CheckedTemplate(basePath = "rulebook")
    static class Templates {
        static native TemplateInstance glossary(
                EditionView edition, List<Glossary.Section> sections, String q, int found);
    }
}
