package org.washwright.rulebook;

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
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
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

/** The list of editions and what is done with one, for people; what stands in one is told by {@link ContentPages}. */
@Path("/rulebooks")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class RulebookPages {
    private final Caller caller;
    private final Editions editions;
    private final Drafts drafts;

    RulebookPages(Caller caller, Editions editions, Drafts drafts) {
        this.caller = caller;
        this.editions = editions;
        this.drafts = drafts;
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
        return overview(id, ReviewSheet.Refusal.NONE);
    }

    private TemplateInstance overview(UUID id, ReviewSheet.Refusal refusal) {
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
     * @param write change its files
     * @param begin begin a draft from it
     * @param waits in words, what has to happen next when the reader can't do it
     */
    record Steps(boolean write, boolean begin, String waits) {}

    private Steps steps(EditionView edition) {
        boolean author = caller.has(Roles.CONSULTANT);
        boolean asked = edition.asked().isPresent();
        String waits = "";
        if (!edition.isKept() && asked && !caller.has(Roles.REVIEWER)) {
            waits = "A reviewer who did not write it looks at it and releases it.";
        } else if (!edition.isKept() && !asked && !author) {
            waits = edition.errors() > 0
                    ? "A consultant mends the errors; then a review can be asked for."
                    : "A consultant asks for a review.";
        }
        return new Steps(author && !edition.isKept(), author, waits);
    }

    private Response refused(UUID id, ProblemException refusal) {
        return Response.status(refusal.status())
                .entity(overview(id, ReviewSheet.Refusal.of(refusal)))
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
            return refused(id, refusal);
        }
    }

    @POST
    @Path("{id}/drafts")
    @RolesAllowed(Roles.CONSULTANT)
    public Response begin(
            @PathParam("id") UUID id,
            @FormParam("own") @DefaultValue("") String own,
            @FormParam("name") @DefaultValue("") String name,
            @FormParam("title") @DefaultValue("") String title,
            @FormParam("rules") @DefaultValue("") String rules) {
        try {
            EditionView made = own.equals("yes")
                    ? drafts.begin(
                            caller.workspaceId(),
                            Person.of(caller),
                            id,
                            new OwnRulebook(name.strip(), title.strip(), rules.equals("yes")))
                    : drafts.begin(caller.workspaceId(), Person.of(caller), id);
            return to(made.id(), "/files");
        } catch (Invalid refusal) {
            return refused(id, refusal);
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
                EditionView edition,
                String sentence,
                Optional<Contents> contents,
                Steps steps,
                ReviewSheet.Refusal refusal);
    }
}
