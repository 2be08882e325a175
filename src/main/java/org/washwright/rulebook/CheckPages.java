package org.washwright.rulebook;

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
import org.washwright.access.Roles;
import org.washwright.analysis.Examination;
import org.washwright.coverage.Coverage;
import org.washwright.grid.Grid;
import org.washwright.grid.GridPlan;
import org.washwright.rule.Edition;

/** How an edition is checked, for people: its cases, what they cover, what is wrong between its rules, and its grid. */
@Path("/rulebooks/{id}")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class CheckPages {
    private final Caller caller;
    private final Editions editions;
    private final Checkings checkings;

    CheckPages(Caller caller, Editions editions, Checkings checkings) {
        this.caller = caller;
        this.editions = editions;
        this.checkings = checkings;
    }

    @GET
    @Path("cases")
    public TemplateInstance cases(@PathParam("id") UUID id) {
        Edition edition = editions.content(caller.workspaceId(), id);
        return Templates.cases(
                view(id),
                checkings
                        .results(caller.workspaceId(), id)
                        .map(results -> CaseCard.ran(results, edition))
                        .orElseGet(() -> CaseCard.notRun(checkings.cases(caller.workspaceId(), id), edition)),
                checkings.today());
    }

    @POST
    @Path("cases")
    public Response run(@PathParam("id") UUID id) {
        checkings.run(caller.workspaceId(), id);
        return Response.seeOther(URI.create("/rulebooks/" + id + "/cases")).build();
    }

    @GET
    @Path("coverage")
    public TemplateInstance coverage(@PathParam("id") UUID id) {
        Work<Coverage> work = checkings.coverage(caller.workspaceId(), id);
        Edition edition = editions.content(caller.workspaceId(), id);
        return Templates.coverage(view(id), work, work.result().map(c -> CoverageCard.of(c, edition)));
    }

    @GET
    @Path("examination")
    public TemplateInstance examination(@PathParam("id") UUID id) {
        Optional<Work<Examination>> work = checkings.examination(caller.workspaceId(), id);
        Optional<ExaminationCard> card = work.flatMap(Work::result)
                .map(found -> ExaminationCard.of(found, editions.content(caller.workspaceId(), id)));
        return Templates.examination(view(id), work, card);
    }

    @POST
    @Path("examination")
    public Response examine(@PathParam("id") UUID id) {
        checkings.examine(caller.workspaceId(), id);
        return Response.seeOther(URI.create("/rulebooks/" + id + "/examination"))
                .build();
    }

    @GET
    @Path("grid")
    public TemplateInstance grid(
            @PathParam("id") UUID id,
            @QueryParam("third") @DefaultValue("0") int third,
            @QueryParam("fourth") @DefaultValue("0") int fourth) {
        UUID workspace = caller.workspaceId();
        Edition edition = editions.content(workspace, id);
        GridPlan plan = checkings.gridPlan(workspace, id);
        List<Integer> picked = List.of(third, fourth);
        Work<Grid> work = checkings.grid(workspace, id, plan.sheet(edition, picked));
        return Templates.grid(view(id), third, fourth, work.result().map(g -> GridSheet.of(g, plan.stops(edition))));
    }

    @GET
    @Path("grid/cell")
    public TemplateInstance cell(@PathParam("id") UUID id, @QueryParam("at") @DefaultValue("") String at) {
        UUID workspace = caller.workspaceId();
        Edition edition = editions.content(workspace, id);
        GridPlan plan = checkings.gridPlan(workspace, id);
        List<GridPlan.Stop> stops = GridCellCard.stops(plan.stops(edition), at);
        return Templates.cell(view(id), GridCellCard.of(checkings.cell(workspace, id, stops), plan, edition));
    }

    private EditionView view(UUID id) {
        return editions.view(caller.workspaceId(), id);
    }

    @CheckedTemplate(basePath = "rulebook")
    static class Templates {
        static native TemplateInstance cases(EditionView edition, CaseCard.All all, String today);

        static native TemplateInstance coverage(
                EditionView edition, Work<Coverage> work, Optional<CoverageCard> counted);

        static native TemplateInstance examination(
                EditionView edition, Optional<Work<Examination>> work, Optional<ExaminationCard> found);

        static native TemplateInstance grid(EditionView edition, int third, int fourth, Optional<GridSheet> sheet);

        static native TemplateInstance cell(EditionView edition, GridCellCard cell);
    }
}
