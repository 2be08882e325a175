package org.washwright.rulebook;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.cases.Case;
import org.washwright.cases.CaseResult;
import org.washwright.coverage.Coverage;
import org.washwright.document.Diagnostics;
import org.washwright.grid.Grid;
import org.washwright.grid.GridPlan;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemErrors;
import org.washwright.rule.Edition;
import org.washwright.task.TaskWriter;

/** Reference cases, coverage, examination and grid of an edition, for programs. */
@Path("/api/editions/{id}")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Editions", description = "Versioned rulebooks: drafts, review, release.")
class ChecksApi {
    private static final int ACCEPTED = 202;

    private final Caller caller;
    private final Editions editions;
    private final Checkings checkings;

    ChecksApi(Caller caller, Editions editions, Checkings checkings) {
        this.caller = caller;
        this.editions = editions;
        this.checkings = checkings;
    }

    @GET
    @Path("cases")
    @Operation(summary = "Reference cases, with the results of the last run of today if there was one")
    @APIResponse(responseCode = "200", description = "The cases in the order written.")
    public Map<String, Object> cases(@PathParam("id") UUID id) {
        return checkings
                .results(caller.workspaceId(), id)
                .map(results -> ran(id, results))
                .orElseGet(() -> Map.of(
                        "ran",
                        false,
                        "cases",
                        checkings.cases(caller.workspaceId(), id).stream()
                                .map(c -> plain(c, edition(id)))
                                .toList()));
    }

    @POST
    @Path("cases")
    @Operation(summary = "Run the reference cases")
    @APIResponse(responseCode = "200", description = "Each case with its expectations and what was found.")
    public Map<String, Object> run(@PathParam("id") UUID id) {
        return ran(id, checkings.run(caller.workspaceId(), id));
    }

    private Map<String, Object> ran(UUID id, List<CaseResult> results) {
        Edition edition = edition(id);
        Map<String, Object> out = new TreeMap<>();
        out.put("ran", true);
        out.put("asOf", checkings.today());
        out.put("hold", results.stream().filter(CaseResult::holds).count());
        out.put("fail", results.stream().filter(r -> !r.holds()).count());
        out.put(
                "cases",
                results.stream()
                        .map(r -> {
                            Map<String, Object> one = new TreeMap<>(r.asData());
                            one.put("task", TaskWriter.data(r.reference().task(), edition));
                            return one;
                        })
                        .toList());
        return out;
    }

    private static Map<String, Object> plain(Case c, Edition edition) {
        return Map.of(
                "id",
                c.id(),
                "title",
                c.title(),
                "basis",
                c.basis().word(),
                "place",
                c.place().toString(),
                "task",
                TaskWriter.data(c.task(), edition));
    }

    @GET
    @Path("coverage")
    @Operation(summary = "How often each rule fired and each condition was true, false and undecided, over the cases")
    @APIResponse(responseCode = "200", description = "Counts by rule and condition.")
    @APIResponse(responseCode = "202", description = "It is being counted; ask again.")
    public Response coverage(@PathParam("id") UUID id) {
        Work<Coverage> work = checkings.coverage(caller.workspaceId(), id);
        return work.result()
                .map(c -> Response.ok(c.asData(edition(id))).build())
                .orElseGet(() -> goesOn(work));
    }

    @POST
    @Path("examination")
    @Operation(summary = "Begin to examine the rules; it takes seconds to minutes")
    @APIResponse(responseCode = "202", description = "Begun, or going on already.")
    @APIResponse(responseCode = "200", description = "Done before; the findings.")
    public Response examine(@PathParam("id") UUID id) {
        return examined(id, checkings.examine(caller.workspaceId(), id));
    }

    @GET
    @Path("examination")
    @Operation(summary = "Findings about the rules and a task for each edge of each condition")
    @APIResponse(responseCode = "200", description = "The findings, each with a proof or a task that shows it.")
    @APIResponse(responseCode = "202", description = "It goes on; ask again.")
    @APIResponse(responseCode = "404", description = "Nobody has asked for it today.")
    public Response examination(@PathParam("id") UUID id) {
        return checkings
                .examination(caller.workspaceId(), id)
                .map(work -> examined(id, work))
                .orElseThrow(() -> org.washwright.problem.NotFound.of("examination of today", id));
    }

    private Response examined(UUID id, Work<org.washwright.analysis.Examination> work) {
        return work.result()
                .map(found -> Response.ok(found.asData(edition(id))).build())
                .orElseGet(() -> goesOn(work));
    }

    @GET
    @Path("grid")
    @Operation(summary = "Number of processes of each status for each kind of work that grid.yaml names")
    @APIResponse(
            responseCode = "200",
            description =
                    "The cells asked for, the last axis running fastest, and under \"all\" every stop of every axis.")
    @APIResponse(responseCode = "202", description = "It is being computed; ask again.")
    @APIResponse(responseCode = "422", description = "A parameter names no axis or no stop.")
    @APIResponse(responseCode = "409", description = "The edition has no grid.yaml.")
    public Response grid(
            @PathParam("id") UUID id,
            @Parameter(
                            description = "Only this stop of an axis, such as Feature.kind=blind-hole; may be given for"
                                    + " several axes. Of the third and fourth axis the first stop is taken otherwise.")
                    @QueryParam("at")
                    List<String> at) {
        Edition edition = edition(id);
        GridPlan plan = checkings.gridPlan(caller.workspaceId(), id);
        Diagnostics diagnostics = new Diagnostics();
        List<List<GridPlan.Stop>> named = plan.stops(edition, at, diagnostics);
        if (diagnostics.hasErrors()) {
            throw new Invalid(ProblemErrors.of(diagnostics.all()));
        }
        List<List<GridPlan.Stop>> stops = new ArrayList<>(named);
        for (int i = GridPlan.TABLE; i < stops.size(); i++) {
            stops.set(i, List.of(stops.get(i).get(0)));
        }
        Work<Grid> work = checkings.grid(caller.workspaceId(), id, stops);
        return work.result()
                .map(grid -> Response.ok(data(grid, plan, edition)).build())
                .orElseGet(() -> goesOn(work));
    }

    private static Map<String, Object> data(Grid grid, GridPlan plan, Edition edition) {
        Map<String, Object> out = new TreeMap<>(grid.asData());
        out.put(
                "all",
                plan.stops(edition).stream()
                        .map(stops -> stops.stream().map(GridPlan.Stop::id).toList())
                        .toList());
        return out;
    }

    private static Response goesOn(Work<?> work) {
        return Response.status(ACCEPTED)
                .header("Retry-After", "2")
                .entity(Map.of("done", work.done(), "of", work.all()))
                .build();
    }

    private Edition edition(UUID id) {
        return editions.content(caller.workspaceId(), id);
    }
}
