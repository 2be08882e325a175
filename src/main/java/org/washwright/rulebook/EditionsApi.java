package org.washwright.rulebook;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.document.Diagnostic;
import org.washwright.document.Severity;
import org.washwright.http.Paged;
import org.washwright.http.Slice;
import org.washwright.http.Tags;
import org.washwright.problem.ProblemError;
import org.washwright.problem.ProblemErrors;
import org.washwright.rule.Edition;

/** Rulebook editions, for programs. */
@Path("/api/editions")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Editions", description = "Versioned rulebooks: drafts, review, release.")
class EditionsApi {
    static final String ZIP = "application/zip";

    private final Caller caller;
    private final Editions editions;
    private final Drafts drafts;

    EditionsApi(Caller caller, Editions editions, Drafts drafts) {
        this.caller = caller;
        this.editions = editions;
        this.drafts = drafts;
    }

    @GET
    @Operation(summary = "Editions of the workspace, changed last first")
    @APIResponse(responseCode = "200", description = "A page of editions; Link leads to its neighbours.")
    @APIResponse(responseCode = "304", description = "Nothing changed since the given ETag.")
    public Response list(
            @QueryParam("page") @DefaultValue("0") String page,
            @QueryParam("size") @DefaultValue(Slice.USUAL_SIZE) String size,
            @Context Request request,
            @Context UriInfo uri) {
        return editions.list(caller.workspaceId(), Slice.of(page, size)).answer(request, uri);
    }

    @POST
    @Consumes(ZIP)
    @RolesAllowed(Roles.CONSULTANT)
    @Operation(
            summary = "Upload a bundle as a new draft",
            description = "Errors inside the files do not refuse it: they stand under its diagnostics.")
    @APIResponse(responseCode = "201", description = "The draft.")
    @APIResponse(responseCode = "422", description = "No zip of an edition; nothing was stored.")
    public Response upload(byte[] zip) {
        EditionView made = drafts.upload(caller.workspaceId(), Person.of(caller), Drafts.unpacked(zip));
        return Response.created(URI.create("/api/editions/" + made.id()))
                .entity(made)
                .tag(Tags.of(made.version()))
                .build();
    }

    @POST
    @Path("{id}/drafts")
    @Consumes(MediaType.APPLICATION_JSON)
    @RolesAllowed(Roles.CONSULTANT)
    @Operation(
            summary = "Begin a draft from this edition",
            description =
                    "With a name and a title it becomes a rulebook of its own, with the rules or with the words alone.")
    @APIResponse(responseCode = "201", description = "The draft, with the same files byte for byte.")
    public Response begin(@PathParam("id") UUID id, Begun begun) {
        EditionView made = Optional.ofNullable(begun)
                .flatMap(Begun::own)
                .map(own -> drafts.begin(caller.workspaceId(), Person.of(caller), id, own))
                .orElseGet(() -> drafts.begin(caller.workspaceId(), Person.of(caller), id));
        return Response.created(URI.create("/api/editions/" + made.id()))
                .entity(made)
                .tag(Tags.of(made.version()))
                .build();
    }

    /** What a draft is begun as; all may be left out for a draft of the same rulebook. */
    record Begun(Optional<String> name, Optional<String> title, Optional<Boolean> withRules) {
        Optional<OwnRulebook> own() {
            return name.isEmpty() && title.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new OwnRulebook(name.orElse(""), title.orElse(""), withRules.orElse(true)));
        }
    }

    @GET
    @Path("{id}")
    @Operation(summary = "One edition")
    @APIResponse(responseCode = "200", description = "The edition, with its ETag.")
    @APIResponse(responseCode = "404", description = "Not in this workspace.")
    public Response get(@PathParam("id") UUID id, @Context Request request) {
        EditionView edition = editions.view(caller.workspaceId(), id);
        return Tags.answer(request, edition, edition.version()).build();
    }

    @GET
    @Path("{id}/diagnostics")
    @Operation(summary = "Everything found wrong in the files, each with place and advice")
    @APIResponse(responseCode = "200", description = "Errors and warnings in order of file, line and column.")
    public Found diagnostics(@PathParam("id") UUID id) {
        Reading reading = editions.reading(caller.workspaceId(), id);
        return new Found(
                reading.errors(),
                reading.warnings(),
                found(reading.diagnostics(), Severity.ERROR),
                found(reading.diagnostics(), Severity.WARNING));
    }

    private static List<ProblemError> found(List<Diagnostic> all, Severity severity) {
        return ProblemErrors.of(
                all.stream().filter(d -> d.severity() == severity).toList());
    }

    /** What was found in the files. */
    record Found(int errorCount, int warningCount, List<ProblemError> errors, List<ProblemError> warnings) {}

    @GET
    @Path("{id}/bundle")
    @Produces({ZIP, MediaType.APPLICATION_JSON})
    @Operation(summary = "The files as a zip: byte for byte what was uploaded, and the same zip every time")
    @APIResponse(responseCode = "200", description = "The zip.")
    public Response bundle(@PathParam("id") UUID id) {
        EditionView edition = editions.view(caller.workspaceId(), id);
        return bundle(edition, editions.files(caller.workspaceId(), id).toZip());
    }

    static Response bundle(EditionView edition, byte[] zip) {
        String name = edition.rulebook() + edition.number().map(n -> "-" + n).orElse("-draft") + ".zip";
        return Response.ok(zip)
                .type(ZIP)
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + name + "\"")
                .header("Washwright-Text-Hash", edition.textHash())
                .header("Washwright-Meaning-Hash", edition.meaningHash().orElse("none"))
                .build();
    }

    @PUT
    @Path("{id}/bundle")
    @Consumes(ZIP)
    @RolesAllowed(Roles.CONSULTANT)
    @Operation(summary = "Give a draft other files; a review asked for has to be asked for again")
    @APIResponse(responseCode = "200", description = "The draft.")
    @APIResponse(responseCode = "409", description = "It is released and never changes.")
    @APIResponse(responseCode = "412", description = "Changed since it was read.")
    @APIResponse(responseCode = "428", description = "If-Match is missing.")
    public Response replace(@PathParam("id") UUID id, @HeaderParam("If-Match") String ifMatch, byte[] zip) {
        int version = Tags.required(ifMatch);
        return tagged(drafts.replace(caller.workspaceId(), Person.of(caller), id, version, Drafts.unpacked(zip)));
    }

    @GET
    @Path("{id}/rules")
    @Operation(summary = "Rules in order of their ids, readable, with basis, sources and place")
    @APIResponse(responseCode = "200", description = "A page of rules.")
    @APIResponse(responseCode = "409", description = "The files have errors.")
    public Response rules(
            @PathParam("id") UUID id,
            @QueryParam("page") @DefaultValue("0") String page,
            @QueryParam("size") @DefaultValue(Slice.USUAL_SIZE) String size,
            @Context Request request,
            @Context UriInfo uri) {
        Slice slice = Slice.of(page, size);
        Edition edition = editions.content(caller.workspaceId(), id);
        List<RuleView> rules = slice.of(edition.rules()).stream()
                .map(rule -> RuleView.of(edition, rule))
                .toList();
        return Paged.of(rules, slice, edition.rules().size()).answer(request, uri);
    }

    private static Response tagged(EditionView edition) {
        return Response.ok(edition).tag(Tags.of(edition.version())).build();
    }
}
