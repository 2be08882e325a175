package org.washwright.judging;

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
import java.util.Optional;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.impact.meaning.MeaningComparison;
import org.washwright.rulebook.EditionView;
import org.washwright.rulebook.Editions;
import org.washwright.rulebook.RuleMarks;

/** Two editions compared by meaning, for people. */
@Path("/rulebooks/{id}/compare")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class CompareEditionsPages {
    private final Caller caller;
    private final Editions editions;
    private final EditionPairs pairs;
    private final RuleMarks marks;

    CompareEditionsPages(Caller caller, Editions editions, EditionPairs pairs, RuleMarks marks) {
        this.caller = caller;
        this.editions = editions;
        this.pairs = pairs;
        this.marks = marks;
    }

    @GET
    public TemplateInstance compare(@PathParam("id") UUID id, @QueryParam("with") Optional<UUID> with) {
        UUID workspace = caller.workspaceId();
        EditionView edition = editions.view(workspace, id);
        Optional<EditionPairs.Pair> pair = pairs.find(workspace, id, with);
        return Templates.compare(
                edition,
                pairs.choices(workspace, edition),
                pair.map(EditionPairs.Pair::before),
                pair.map(p -> MeaningView.of(
                        MeaningComparison.of(pairs.state(workspace, p.before()), pairs.state(workspace, p.after())),
                        p,
                        marks.openByRule(workspace))));
    }

    @CheckedTemplate(basePath = "judging")
    static class Templates {
        static native TemplateInstance compare(
                EditionView edition,
                List<EditionView> choices,
                Optional<EditionView> before,
                Optional<MeaningView> view);
    }
}
