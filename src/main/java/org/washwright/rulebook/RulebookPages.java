package org.washwright.rulebook;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
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
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.http.Paged;
import org.washwright.http.Slice;
import org.washwright.problem.Conflict;
import org.washwright.problem.Invalid;
import org.washwright.problem.PreconditionFailed;
import org.washwright.problem.ProblemError;
import org.washwright.problem.ProblemException;
import org.washwright.problem.Refused;

/** The list of editions and what is done with one, for people; what stands in one is told by {@link ContentPages}. */
@Path("/rulebooks")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class RulebookPages {
    private final Caller caller;
    private final Editions editions;
    private final Drafts drafts;
    private final Reviews reviews;
    private final Releases releases;

    RulebookPages(Caller caller, Editions editions, Drafts drafts, Reviews reviews, Releases releases) {
        this.caller = caller;
        this.editions = editions;
        this.drafts = drafts;
        this.reviews = reviews;
        this.releases = releases;
    }

    @GET
    public TemplateInstance list(
            @QueryParam("page") @DefaultValue("0") String page,
            @QueryParam("size") @DefaultValue(Slice.USUAL_SIZE) String size) {
        return listed(Slice.of(page, size), List.of());
    }

    private TemplateInstance listed(Slice slice, List<ProblemError> errors) {
        return Templates.list(
                editions.list(caller.workspaceId(), slice),
                editions.current(caller.workspaceId()),
                new Part(caller.has(Roles.CONSULTANT), caller.has(Roles.REVIEWER)),
                errors);
    }

    /** The part the reader has in the way of an edition. */
    record Part(boolean consultant, boolean reviewer) {}

    @POST
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    @RolesAllowed(Roles.CONSULTANT)
    public Response upload(@RestForm("bundle") FileUpload bundle) {
        try {
            EditionView made = drafts.upload(caller.workspaceId(), Person.of(caller), Drafts.unpacked(bytes(bundle)));
            return to(made.id(), made.errors() > 0 ? "/diagnostics" : "");
        } catch (Invalid refusal) {
            return Response.status(refusal.status())
                    .entity(listed(Slice.of("0", Slice.USUAL_SIZE), refusal.errors()))
                    .build();
        }
    }

    @GET
    @Path("{id}")
    public TemplateInstance overview(@PathParam("id") UUID id) {
        return overview(id, Refusal.NONE);
    }

    private TemplateInstance overview(UUID id, Refusal refusal) {
        EditionView edition = editions.view(caller.workspaceId(), id);
        return Templates.overview(
                edition,
                EditionSentence.of(edition, editions.current(caller.workspaceId())),
                contents(id),
                steps(edition),
                refusal);
    }

    private Optional<Contents> contents(UUID id) {
        Reading reading = editions.reading(caller.workspaceId(), id);
        return reading.edition()
                .map(e -> Contents.of(e, reading.checks().cases().size()));
    }

    /**
     * What the reader may do with an edition now.
     *
     * @param own true when only the rule of two persons keeps the reader from releasing it
     * @param waits in words, what has to happen next when the reader can't do it
     */
    record Steps(boolean replace, boolean ask, boolean release, boolean own, String waits) {}

    private Steps steps(EditionView edition) {
        boolean author = caller.has(Roles.CONSULTANT) && !edition.isReleased();
        boolean mine = edition.created().by().equals(caller.name())
                || edition.changed().by().equals(caller.name());
        boolean asked = edition.state().equals(EditionState.ASKED.word());
        boolean reviewer = caller.has(Roles.REVIEWER) && asked;
        boolean ask = author && !asked && edition.errors() == 0;
        String waits = "";
        if (asked && !reviewer) {
            waits = "A reviewer who did not write it looks at it and releases it.";
        } else if (!asked && !ask && !edition.isReleased()) {
            waits = edition.errors() > 0
                    ? "A consultant mends the errors and replaces the files; then a review can be asked for."
                    : "A consultant asks for a review.";
        }
        return new Steps(author, ask, reviewer && !mine, reviewer && mine, waits);
    }

    /** Why something was not done. */
    record Refusal(String title, String detail, List<ProblemError> errors, String note) {
        static final Refusal NONE = new Refusal("", "", List.of(), "");

        static Refusal of(ProblemException e, String note) {
            return new Refusal(e.title(), e.errors().isEmpty() ? e.getMessage() : "", e.errors(), note);
        }
    }

    private Response refused(UUID id, ProblemException refusal, String note) {
        return Response.status(refusal.status())
                .entity(overview(id, Refusal.of(refusal, note)))
                .build();
    }

    @GET
    @Path("{id}/bundle")
    @Produces({EditionsApi.ZIP, MediaType.TEXT_HTML})
    public Response bundle(@PathParam("id") UUID id) {
        return EditionsApi.bundle(
                editions.view(caller.workspaceId(), id),
                editions.files(caller.workspaceId(), id).toZip());
    }

    @POST
    @Path("{id}/bundle")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    @RolesAllowed(Roles.CONSULTANT)
    public Response replace(
            @PathParam("id") UUID id, @RestForm("version") int version, @RestForm("bundle") FileUpload bundle) {
        try {
            EditionView changed = drafts.replace(
                    caller.workspaceId(), Person.of(caller), id, version, Drafts.unpacked(bytes(bundle)));
            return to(id, changed.errors() > 0 ? "/diagnostics" : "");
        } catch (Invalid | Conflict | PreconditionFailed refusal) {
            return refused(id, refusal, "");
        }
    }

    @POST
    @Path("{id}/review")
    @RolesAllowed(Roles.CONSULTANT)
    public Response review(
            @PathParam("id") UUID id,
            @FormParam("version") int version,
            @FormParam("note") @DefaultValue("") String note) {
        try {
            reviews.ask(caller.workspaceId(), Person.of(caller), id, version, note);
            return to(id, "");
        } catch (Invalid | Conflict | PreconditionFailed refusal) {
            return refused(id, refusal, note);
        }
    }

    @POST
    @Path("{id}/release")
    @RolesAllowed(Roles.REVIEWER)
    @Blocking
    public CompletionStage<Response> release(
            @PathParam("id") UUID id,
            @FormParam("version") int version,
            @FormParam("note") @DefaultValue("") String note,
            @FormParam("despite") @DefaultValue("") String despite,
            @FormParam("sure") @DefaultValue("") String sure) {
        try {
            checkSaid(note, sure);
            // Made now: on the thread that finishes the release there is no request to read the address from.
            Response done = to(id, "");
            return releases.release(
                            caller.workspaceId(), Person.of(caller), id, version, new Releases.Word(note, despite))
                    .thenApply(released -> done);
        } catch (Invalid | Conflict | PreconditionFailed | Refused refusal) {
            return CompletableFuture.completedFuture(refused(id, refusal, note));
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

    private static byte[] bytes(FileUpload upload) {
        if (upload == null || upload.size() == 0) {
            throw new Invalid(List.of(ProblemError.at(
                    "bundle", "", "No file was chosen.", "Choose the zip of an edition.", "missing-field")));
        }
        try {
            return Files.readAllBytes(upload.uploadedFile());
        } catch (IOException e) {
            throw new UncheckedIOException("an upload that was just written", e);
        }
    }

    private static Response to(UUID id, String rest) {
        return Response.seeOther(URI.create("/rulebooks/" + id + rest)).build();
    }

    @CheckedTemplate(basePath = "rulebook")
    static class Templates {
        static native TemplateInstance list(
                Paged<EditionView> editions, Optional<EditionView> current, Part part, List<ProblemError> errors);

        static native TemplateInstance overview(
                EditionView edition, String sentence, Optional<Contents> contents, Steps steps, Refusal refusal);
    }
}
