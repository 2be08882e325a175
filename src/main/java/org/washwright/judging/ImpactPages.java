package org.washwright.judging;

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
import java.util.Optional;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.problem.Invalid;
import org.washwright.problem.NotFound;
import org.washwright.problem.PreconditionFailed;
import org.washwright.problem.ProblemError;
import org.washwright.rulebook.EditionView;
import org.washwright.rulebook.Editions;

/** What a change does to past answers, and whether that was meant, for people. */
@Path("/rulebooks/{id}/impact")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class ImpactPages {
    private final Caller caller;
    private final Editions editions;
    private final EditionPairs pairs;
    private final Impacts impacts;
    private final Runs runs;

    ImpactPages(Caller caller, Editions editions, EditionPairs pairs, Impacts impacts, Runs runs) {
        this.caller = caller;
        this.editions = editions;
        this.pairs = pairs;
        this.impacts = impacts;
        this.runs = runs;
    }

    /** What was typed into a form that was refused, and why. */
    record Failed(String task, String note, List<ProblemError> errors) {
        static final Failed NONE = new Failed("", "", List.of());
    }

    /** What the page shows besides the edition. */
    record Sight(Impacts.Standing standing, Optional<KeptRun> run, Optional<ImpactView> view, boolean mayJudge) {}

    @GET
    public TemplateInstance impact(@PathParam("id") UUID id, @QueryParam("with") Optional<UUID> with) {
        return shown(id, with, Failed.NONE);
    }

    private TemplateInstance shown(UUID id, Optional<UUID> with, Failed failed) {
        UUID workspace = caller.workspaceId();
        EditionView edition = editions.view(workspace, id);
        Optional<EditionPairs.Pair> pair = pairs.find(workspace, id, with);
        boolean mayJudge = caller.has(Roles.CONSULTANT) || caller.has(Roles.REVIEWER);
        Impacts.Standing standing = pair.map(p -> impacts.standing(workspace, p))
                .orElse(new Impacts.Standing(Optional.empty(), false, Optional.empty()));
        Optional<ImpactView> view =
                standing.kept().map(run -> ImpactView.of(run, runs.judged(workspace, run.impact())));
        return Templates.impact(
                edition,
                pairs.choices(workspace, edition),
                pair.map(EditionPairs.Pair::before),
                new Sight(standing, standing.kept(), view, mayJudge),
                failed);
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Roles.CONSULTANT, Roles.REVIEWER})
    public Response begin(@PathParam("id") UUID id, @FormParam("with") UUID with) {
        EditionPairs.Pair pair = pairs.require(caller.workspaceId(), id, Optional.ofNullable(with));
        impacts.begin(caller.workspaceId(), pair, Person.of(caller));
        return to(id, pair, "");
    }

    @POST
    @Path("judge")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Roles.CONSULTANT, Roles.REVIEWER})
    public Response judge(
            @PathParam("id") UUID id,
            @FormParam("with") UUID with,
            @FormParam("task") @DefaultValue("") String task,
            @FormParam("version") @DefaultValue("-1") int version,
            @FormParam("verdict") String verdict,
            @FormParam("note") String note) {
        UUID workspace = caller.workspaceId();
        EditionPairs.Pair pair = pairs.require(workspace, id, Optional.ofNullable(with));
        try {
            KeptRun run = impacts.standing(workspace, pair)
                    .kept()
                    .orElseThrow(() -> NotFound.of("run of exactly these files for edition", id));
            JudgementForm form = JudgementForm.read(verdict, note);
            runs.judge(workspace, run.impact(), task, version, form.verdict(), form.note(), Person.of(caller));
            int place = run.impact().sample().indexOf(task);
            return to(id, pair, place < 0 ? "" : "#judge-" + place);
        } catch (Invalid refusal) {
            return Response.status(422)
                    .entity(shown(id, Optional.of(pair.before().id()), new Failed(task, note, refusal.errors())))
                    .build();
        } catch (PreconditionFailed changed) {
            ProblemError error = ProblemError.at(
                    "/note",
                    "",
                    "Somebody judged this answer in the meantime.",
                    "Read what stands there now, then send yours again.",
                    "changed");
            return Response.status(412)
                    .entity(shown(id, Optional.of(pair.before().id()), new Failed(task, note, List.of(error))))
                    .build();
        }
    }

    private static Response to(UUID id, EditionPairs.Pair pair, String anchor) {
        return Response.seeOther(URI.create(
                        "/rulebooks/" + id + "/impact?with=" + pair.before().id() + anchor))
                .build();
    }

    @CheckedTemplate(basePath = "judging")
    static class Templates {
        static native TemplateInstance impact(
                EditionView edition,
                List<EditionView> choices,
                Optional<EditionView> before,
                Sight sight,
                Failed failed);
    }
}
