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
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CompletionStage;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.http.Paged;
import org.washwright.http.Slice;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;
import org.washwright.problem.ProblemErrors;

/** Rulebook editions, for people. */
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
                editions.current(caller.workspaceId()).map(EditionView::id),
                caller.has(Roles.CONSULTANT),
                errors);
    }

    @POST
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    @RolesAllowed(Roles.CONSULTANT)
    public Response upload(@RestForm("bundle") FileUpload bundle) {
        try {
            EditionView made = drafts.upload(caller.workspaceId(), Person.of(caller), Drafts.unpacked(bytes(bundle)));
            return to(made.id(), made.errors() > 0 ? "/diagnostics" : "");
        } catch (Invalid refusal) {
            return Response.status(422)
                    .entity(listed(Slice.of("0", Slice.USUAL_SIZE), refusal.errors()))
                    .build();
        }
    }

    @GET
    @Path("{id}")
    public TemplateInstance overview(@PathParam("id") UUID id) {
        return overview(id, List.of());
    }

    private TemplateInstance overview(UUID id, List<ProblemError> errors) {
        EditionView edition = editions.view(caller.workspaceId(), id);
        boolean author = caller.has(Roles.CONSULTANT);
        boolean mine = edition.created().by().equals(caller.name())
                || edition.changed().by().equals(caller.name());
        boolean asked = edition.state().equals(EditionState.ASKED.word());
        return Templates.overview(
                edition,
                editions.reading(caller.workspaceId(), id).edition(),
                new Steps(
                        author && !edition.isReleased(),
                        author && !asked && !edition.isReleased() && edition.errors() == 0,
                        caller.has(Roles.REVIEWER) && asked && !mine,
                        caller.has(Roles.REVIEWER) && asked && mine),
                errors);
    }

    /** What the reader may do with an edition now. */
    record Steps(boolean replace, boolean ask, boolean release, boolean own) {}

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
        } catch (Invalid refusal) {
            return Response.status(422).entity(overview(id, refusal.errors())).build();
        }
    }

    @POST
    @Path("{id}/review")
    @RolesAllowed(Roles.CONSULTANT)
    public Response review(
            @PathParam("id") UUID id,
            @FormParam("version") int version,
            @FormParam("note") @DefaultValue("") String note) {
        drafts.ask(caller.workspaceId(), Person.of(caller), id, version, note);
        return to(id, "");
    }

    @POST
    @Path("{id}/release")
    @RolesAllowed(Roles.REVIEWER)
    @Blocking
    public CompletionStage<Response> release(
            @PathParam("id") UUID id,
            @FormParam("version") int version,
            @FormParam("note") @DefaultValue("") String note) {
        return drafts.release(caller.workspaceId(), Person.of(caller), id, version, note)
                .thenApply(released -> to(id, ""));
    }

    @GET
    @Path("{id}/rules")
    public TemplateInstance rules(@PathParam("id") UUID id) {
        return Templates.rules(
                editions.view(caller.workspaceId(), id),
                RuleFile.all(
                        editions.content(caller.workspaceId(), id),
                        editions.files(caller.workspaceId(), id)));
    }

    @GET
    @Path("{id}/trees")
    public TemplateInstance trees(@PathParam("id") UUID id) {
        return Templates.trees(
                editions.view(caller.workspaceId(), id),
                TreeView.all(editions.content(caller.workspaceId(), id)));
    }

    @GET
    @Path("{id}/diagnostics")
    public TemplateInstance diagnostics(@PathParam("id") UUID id) {
        Reading reading = editions.reading(caller.workspaceId(), id);
        return Templates.diagnostics(
                editions.view(caller.workspaceId(), id), DiagnosticFile.all(reading.diagnostics()));
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

    /** What was found in one file. */
    record DiagnosticFile(String file, List<ProblemError> errors) {
        static List<DiagnosticFile> all(List<org.washwright.document.Diagnostic> found) {
            return found.stream()
                    .collect(java.util.stream.Collectors.groupingBy(
                            d -> d.place().file(), java.util.TreeMap::new, java.util.stream.Collectors.toList()))
                    .entrySet()
                    .stream()
                    .map(e -> new DiagnosticFile(e.getKey(), ProblemErrors.of(e.getValue())))
                    .toList();
        }
    }

    @CheckedTemplate(basePath = "rulebook")
    static class Templates {
        static native TemplateInstance list(
                Paged<EditionView> editions, java.util.Optional<UUID> current, boolean upload, List<ProblemError> errors);

        static native TemplateInstance overview(
                EditionView edition,
                java.util.Optional<org.washwright.rule.Edition> content,
                Steps steps,
                List<ProblemError> errors);

        static native TemplateInstance rules(EditionView edition, List<RuleFile> files);

        static native TemplateInstance trees(EditionView edition, List<TreeView> trees);

        static native TemplateInstance diagnostics(EditionView edition, List<DiagnosticFile> files);
    }
}
