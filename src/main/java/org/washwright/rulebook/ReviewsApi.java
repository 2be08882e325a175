package org.washwright.rulebook;

import io.smallrye.common.annotation.Blocking;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletionStage;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.http.Tags;
import org.washwright.problem.NotFound;

/** Review, release and withdrawal of an edition, for programs. */
@Path("/api/editions/{id}")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Editions", description = "Versioned rulebooks: drafts, review, release.")
class ReviewsApi {
    private final Caller caller;
    private final Reviews reviews;
    private final Releases releases;
    private final Remarks remarks;
    private final Gate gate;

    ReviewsApi(Caller caller, Reviews reviews, Releases releases, Remarks remarks, Gate gate) {
        this.caller = caller;
        this.reviews = reviews;
        this.releases = releases;
        this.remarks = remarks;
        this.gate = gate;
    }

    @GET
    @Path("gate")
    @Operation(summary = "What is looked at before a release, and how it stands")
    @APIResponse(responseCode = "200", description = "What is in the way first, then what is open, then what is met.")
    public List<Map<String, String>> gate(@PathParam("id") UUID id) {
        return gate.of(caller.workspaceId(), id).stream()
                .map(item -> Map.of(
                        "id", item.id(),
                        "title", item.title(),
                        "mark", item.mark().word(),
                        "detail", item.detail()))
                .toList();
    }

    @POST
    @Path("review")
    @Consumes(MediaType.APPLICATION_JSON)
    @RolesAllowed(Roles.CONSULTANT)
    @Operation(summary = "Ask for a review of a draft without errors")
    @APIResponse(responseCode = "200", description = "The edition, asked for review.")
    @APIResponse(responseCode = "422", description = "Its files have errors.")
    public Response review(@PathParam("id") UUID id, @HeaderParam("If-Match") String ifMatch, Note note) {
        int version = Tags.required(ifMatch);
        return tagged(reviews.ask(caller.workspaceId(), Person.of(caller), id, version, Note.textOf(note)));
    }

    @POST
    @Path("approval")
    @Consumes(MediaType.APPLICATION_JSON)
    @RolesAllowed(Roles.REVIEWER)
    @Operation(summary = "Approve the files as they are now; a change of any file takes it back")
    @APIResponse(responseCode = "200", description = "The edition with its approval.")
    @APIResponse(responseCode = "403", description = "Nobody approves what they wrote.")
    public Response approve(@PathParam("id") UUID id, @HeaderParam("If-Match") String ifMatch, Note note) {
        int version = Tags.required(ifMatch);
        return tagged(reviews.approve(caller.workspaceId(), Person.of(caller), id, version, Note.textOf(note)));
    }

    @POST
    @Path("return")
    @RolesAllowed({Roles.REVIEWER, Roles.CONSULTANT})
    @Operation(summary = "Give a draft back to its authors; what is missing stands in its remarks")
    @APIResponse(responseCode = "200", description = "The edition, a draft again.")
    public Response giveBack(@PathParam("id") UUID id, @HeaderParam("If-Match") String ifMatch) {
        return tagged(reviews.giveBack(caller.workspaceId(), id, Tags.required(ifMatch)));
    }

    @POST
    @Path("release")
    @Consumes(MediaType.APPLICATION_JSON)
    @RolesAllowed(Roles.REVIEWER)
    @Operation(
            summary = "Release an edition that somebody else wrote; from then on it never changes",
            description = "The answer comes when it is released; meanwhile GET tells how far it is.")
    @APIResponse(responseCode = "200", description = "The released edition with its number.")
    @APIResponse(responseCode = "403", description = "Nobody releases what they wrote.")
    @APIResponse(responseCode = "409", description = "No review was asked for, or it is released already.")
    @APIResponse(responseCode = "422", description = "Something stands in the way, or is open and not answered for.")
    @Blocking
    public CompletionStage<Response> release(
            @PathParam("id") UUID id, @HeaderParam("If-Match") String ifMatch, Note note) {
        int version = Tags.required(ifMatch);
        return releases.release(
                        caller.workspaceId(),
                        Person.of(caller),
                        id,
                        version,
                        new Releases.Word(Note.textOf(note), Note.despiteOf(note)))
                .thenApply(ReviewsApi::tagged);
    }

    @GET
    @Path("release")
    @Operation(summary = "How far the release of an edition is")
    @APIResponse(responseCode = "200", description = "Its steps in order.")
    @APIResponse(responseCode = "404", description = "None was begun since the program started.")
    public List<ReleaseWork.Step> progress(@PathParam("id") UUID id) {
        return releases.work(caller.workspaceId(), id)
                .orElseThrow(() -> NotFound.of("release of edition", id))
                .steps();
    }

    @POST
    @Path("withdrawal")
    @Consumes(MediaType.APPLICATION_JSON)
    @RolesAllowed(Roles.REVIEWER)
    @Operation(summary = "Withdraw a released edition: it answers no new tasks and stays readable")
    @APIResponse(responseCode = "200", description = "The withdrawn edition.")
    @APIResponse(responseCode = "409", description = "It is not released.")
    @APIResponse(responseCode = "422", description = "No reason is given in “note”.")
    public Response withdraw(@PathParam("id") UUID id, @HeaderParam("If-Match") String ifMatch, Note note) {
        int version = Tags.required(ifMatch);
        return tagged(reviews.withdraw(caller.workspaceId(), Person.of(caller), id, version, Note.textOf(note)));
    }

    @GET
    @Path("remarks")
    @Operation(summary = "What authors and reviewers said of it, open remarks first")
    @APIResponse(responseCode = "200", description = "The remarks.")
    public List<RemarkView> remarks(@PathParam("id") UUID id) {
        return remarks.of(caller.workspaceId(), id);
    }

    @POST
    @Path("remarks")
    @Consumes(MediaType.APPLICATION_JSON)
    @RolesAllowed({Roles.REVIEWER, Roles.CONSULTANT})
    @Operation(summary = "Say something of a rule of a draft, or of the whole of it")
    @APIResponse(responseCode = "201", description = "The remark.")
    public Response remark(@PathParam("id") UUID id, Said said) {
        RemarkView made =
                remarks.add(caller.workspaceId(), id, Said.ruleOf(said), Said.textOf(said), Person.of(caller));
        return Response.status(Response.Status.CREATED)
                .entity(made)
                .tag(Tags.of(made.version()))
                .build();
    }

    @POST
    @Path("remarks/{remark}/settlement")
    @Consumes(MediaType.APPLICATION_JSON)
    @RolesAllowed({Roles.REVIEWER, Roles.CONSULTANT})
    @Operation(summary = "Settle a remark")
    @APIResponse(responseCode = "200", description = "The remark, settled.")
    public Response settle(
            @PathParam("id") UUID id,
            @PathParam("remark") UUID remark,
            @HeaderParam("If-Match") String ifMatch,
            Note note) {
        int version = Tags.required(ifMatch);
        RemarkView settled =
                remarks.settle(caller.workspaceId(), id, remark, version, Note.textOf(note), Person.of(caller));
        return Response.ok(settled).tag(Tags.of(settled.version())).build();
    }

    private static Response tagged(EditionView edition) {
        return Response.ok(edition).tag(Tags.of(edition.version())).build();
    }

    /** What a person says with a step, and why it is taken though something is open; each may be left out. */
    record Note(Optional<String> note, Optional<String> despite) {
        static String textOf(Note body) {
            return Optional.ofNullable(body).flatMap(Note::note).orElse("");
        }

        static String despiteOf(Note body) {
            return Optional.ofNullable(body).flatMap(Note::despite).orElse("");
        }
    }

    /** A remark, about a rule by its id or about the whole draft. */
    record Said(Optional<String> rule, Optional<String> text) {
        static String ruleOf(Said body) {
            return Optional.ofNullable(body).flatMap(Said::rule).orElse("");
        }

        static String textOf(Said body) {
            return Optional.ofNullable(body).flatMap(Said::text).orElse("");
        }
    }
}
