package org.washwright.rulebook;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
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
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;
import org.washwright.problem.ProblemException;

/** Where a draft is looked at by a second pair of eyes, released, and taken out of use again. */
@Path("/rulebooks")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class ReviewPages {
    private static final long A_MOMENT = 1500;

    private final Caller caller;
    private final Editions editions;
    private final Reviews reviews;
    private final Releases releases;
    private final Remarks remarks;
    private final Gate gate;

    ReviewPages(Caller caller, Editions editions, Reviews reviews, Releases releases, Remarks remarks, Gate gate) {
        this.caller = caller;
        this.editions = editions;
        this.reviews = reviews;
        this.releases = releases;
        this.remarks = remarks;
        this.gate = gate;
    }

    @GET
    @Path("{id}/review")
    public TemplateInstance review(@PathParam("id") UUID id, @QueryParam("rule") @DefaultValue("") String rule) {
        return page(id, ReviewSheet.Refusal.NONE, Map.of("rule", rule));
    }

    private TemplateInstance page(UUID id, ReviewSheet.Refusal refused, Map<String, String> typed) {
        UUID workspace = caller.workspaceId();
        EditionView edition = editions.view(workspace, id);
        return Templates.review(
                edition,
                new ReviewSheet(
                        edition.isKept() ? List.of() : gate.of(workspace, id),
                        remarks.of(workspace, id),
                        part(edition),
                        releases.work(workspace, id),
                        refused,
                        typed));
    }

    private ReviewSheet.Part part(EditionView edition) {
        boolean draft = !edition.isKept();
        boolean asked = edition.asked().isPresent() && draft;
        boolean reviewer = caller.has(Roles.REVIEWER);
        boolean mine = reviews.wrote(caller.workspaceId(), edition.id(), caller.accountId());
        return new ReviewSheet.Part(
                caller.has(Roles.CONSULTANT) && draft,
                (caller.has(Roles.CONSULTANT) || reviewer) && draft,
                reviewer && asked && !mine,
                reviewer && asked && mine,
                reviewer && edition.isReleased());
    }

    @POST
    @Path("{id}/review")
    @RolesAllowed(Roles.CONSULTANT)
    public Response ask(
            @PathParam("id") UUID id,
            @FormParam("version") int version,
            @FormParam("note") @DefaultValue("") String note) {
        return step(
                id,
                Map.of("asked", note),
                () -> reviews.ask(caller.workspaceId(), Person.of(caller), id, version, note));
    }

    @POST
    @Path("{id}/approval")
    @RolesAllowed(Roles.REVIEWER)
    public Response approve(
            @PathParam("id") UUID id,
            @FormParam("version") int version,
            @FormParam("note") @DefaultValue("") String note) {
        return step(
                id,
                Map.of("note", note),
                () -> reviews.approve(caller.workspaceId(), Person.of(caller), id, version, note));
    }

    @POST
    @Path("{id}/return")
    @RolesAllowed({Roles.REVIEWER, Roles.CONSULTANT})
    public Response giveBack(@PathParam("id") UUID id, @FormParam("version") int version) {
        return step(id, Map.of(), () -> reviews.giveBack(caller.workspaceId(), id, version));
    }

    /** Begins the release; a short one is over when the page comes, a long one goes on and the page tells how far it is. */
    @POST
    @Path("{id}/release")
    @RolesAllowed(Roles.REVIEWER)
    public Response release(
            @PathParam("id") UUID id,
            @FormParam("version") int version,
            @FormParam("note") @DefaultValue("") String note,
            @FormParam("despite") @DefaultValue("") String despite,
            @FormParam("sure") @DefaultValue("") String sure) {
        return step(id, Map.of("note", note, "despite", despite), () -> {
            checkSaid(note, sure);
            wait(releases.release(
                    caller.workspaceId(), Person.of(caller), id, version, new Releases.Word(note, despite)));
        });
    }

    private static void wait(CompletableFuture<EditionView> release) {
        try {
            release.get(A_MOMENT, TimeUnit.MILLISECONDS);
        } catch (TimeoutException goesOn) {
            return;
        } catch (ExecutionException ended) {
            if (ended.getCause() instanceof ProblemException refusal) {
                throw refusal;
            }
            throw new IllegalStateException("the release failed", ended.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    @POST
    @Path("{id}/withdrawal")
    @RolesAllowed(Roles.REVIEWER)
    public Response withdraw(
            @PathParam("id") UUID id,
            @FormParam("version") int version,
            @FormParam("note") @DefaultValue("") String note) {
        return step(
                id,
                Map.of("reason", note),
                () -> reviews.withdraw(caller.workspaceId(), Person.of(caller), id, version, note));
    }

    @POST
    @Path("{id}/remarks")
    @RolesAllowed({Roles.REVIEWER, Roles.CONSULTANT})
    public Response remark(
            @PathParam("id") UUID id,
            @FormParam("rule") @DefaultValue("") String rule,
            @FormParam("text") @DefaultValue("") String text) {
        return step(
                id,
                Map.of("rule", rule, "text", text),
                () -> remarks.add(caller.workspaceId(), id, rule.strip(), text, Person.of(caller)));
    }

    @POST
    @Path("{id}/remarks/{remark}/settlement")
    @RolesAllowed({Roles.REVIEWER, Roles.CONSULTANT})
    public Response settle(
            @PathParam("id") UUID id,
            @PathParam("remark") UUID remark,
            @FormParam("version") int version,
            @FormParam("note") @DefaultValue("") String note) {
        return step(
                id, Map.of(), () -> remarks.settle(caller.workspaceId(), id, remark, version, note, Person.of(caller)));
    }

    /** Does a step and shows the review anew, with the reason when it was refused. */
    private Response step(UUID id, Map<String, String> typed, Runnable step) {
        try {
            step.run();
            return Response.seeOther(URI.create("/rulebooks/" + id + "/review")).build();
        } catch (ProblemException refusal) {
            if (refusal.status() == Response.Status.NOT_FOUND.getStatusCode()) {
                throw refusal;
            }
            return Response.status(refusal.status())
                    .entity(page(id, ReviewSheet.Refusal.of(refusal), typed))
                    .build();
        }
    }

    /** A release is for good: whoever gives it says what was checked and that this is meant. */
    private static void checkSaid(String note, String sure) {
        List<ProblemError> missing = new ArrayList<>();
        if (note.isBlank()) {
            missing.add(ProblemError.at(
                    "note",
                    "",
                    "Nothing is said of what was checked.",
                    "Write in a sentence or two what you looked at.",
                    "missing-field"));
        }
        if (!sure.equals("yes")) {
            missing.add(ProblemError.at(
                    "sure",
                    "",
                    "It was not confirmed that the edition is released for good.",
                    "Tick the box above the button.",
                    "missing-field"));
        }
        if (!missing.isEmpty()) {
            throw new Invalid(missing);
        }
    }

    @CheckedTemplate(basePath = "rulebook")
    static class Templates {
        static native TemplateInstance review(EditionView edition, ReviewSheet sheet);
    }
}
