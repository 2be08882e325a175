package org.washwright.rulebook;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.EntityTag;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.problem.Problem;
import org.washwright.problem.ProblemException;

/** The files of an edition one by one, for programs and for the editors. */
@Path("/api/editions/{id}/files")
@RolesAllowed(Roles.ANYONE)
@Tag(name = "Files", description = "The files of drafts, one by one.")
class FilesApi {
    private final Caller caller;
    private final DraftFiles files;

    FilesApi(Caller caller, DraftFiles files) {
        this.caller = caller;
        this.files = files;
    }

    /** A file without its content. */
    record Listed(String path, String tag, int bytes) {}

    @GET
    @Produces(MediaType.APPLICATION_JSON)
    @Operation(summary = "The files of an edition, each with its tag")
    @APIResponse(responseCode = "200", description = "Names in order, with tag and size in bytes.")
    public List<Listed> list(@PathParam("id") UUID id) {
        return files.list(caller.workspaceId(), id).stream()
                .map(file -> new Listed(file.path(), file.tag(), file.bytes().length))
                .toList();
    }

    @GET
    @Path("{path: .+}")
    @Produces({MediaType.TEXT_PLAIN, MediaType.APPLICATION_JSON})
    @Operation(summary = "One file, byte for byte")
    @APIResponse(responseCode = "200", description = "The file, with its ETag.")
    @APIResponse(responseCode = "404", description = "No such file in this edition.")
    public Response get(@PathParam("id") UUID id, @PathParam("path") String path, @Context Request request) {
        KeptFile file = files.get(caller.workspaceId(), id, path);
        EntityTag tag = new EntityTag(file.tag());
        return Optional.ofNullable(request.evaluatePreconditions(tag))
                .orElseGet(() ->
                        Response.ok(file.bytes(), "text/plain; charset=UTF-8").tag(tag))
                .build();
    }

    @PUT
    @Path("{path: .+}")
    @Consumes({MediaType.TEXT_PLAIN, MediaType.APPLICATION_OCTET_STREAM})
    @Produces(MediaType.APPLICATION_JSON)
    @RolesAllowed(Roles.CONSULTANT)
    @Operation(
            summary = "Save a file of a draft",
            description =
                    "If-Match holds the ETag of the file that was read, or If-None-Match: * makes a new file. The file"
                            + " is stored with its errors; diagnostics tell them.")
    @APIResponse(responseCode = "200", description = "Stored; the ETag names this state.")
    @APIResponse(responseCode = "409", description = "The edition is released and never changes.")
    @APIResponse(
            responseCode = "412",
            description = "Changed since it was read. “now” is what stands there, “aside” where this text is kept.")
    @APIResponse(responseCode = "422", description = "No name of a file of an edition, not UTF-8, or too large.")
    public Response save(
            @PathParam("id") UUID id,
            @PathParam("path") String path,
            @HeaderParam("If-Match") String ifMatch,
            @HeaderParam("If-None-Match") String ifNoneMatch,
            @Context UriInfo uri,
            byte[] bytes) {
        try {
            Saved saved =
                    files.save(caller.workspaceId(), Person.of(caller), id, path, tag(ifMatch, ifNoneMatch), bytes);
            return Response.ok(saved).tag(new EntityTag(saved.tag())).build();
        } catch (FileChanged refusal) {
            return changed(refusal, uri);
        }
    }

    @DELETE
    @Path("{path: .+}")
    @Produces(MediaType.APPLICATION_JSON)
    @RolesAllowed(Roles.CONSULTANT)
    @Operation(summary = "Take a file out of a draft; its text is kept aside")
    @APIResponse(responseCode = "204", description = "Taken out.")
    @APIResponse(responseCode = "412", description = "Changed since it was read.")
    public Response delete(
            @PathParam("id") UUID id,
            @PathParam("path") String path,
            @HeaderParam("If-Match") String ifMatch,
            @Context UriInfo uri) {
        try {
            files.delete(caller.workspaceId(), Person.of(caller), id, path, tag(ifMatch, null));
            return Response.noContent().build();
        } catch (FileChanged refusal) {
            return changed(refusal, uri);
        }
    }

    /** The tag that a change was made against; empty for a new file. */
    private static String tag(String ifMatch, String ifNoneMatch) {
        if (ifMatch != null && ifMatch.strip().matches("\"[0-9a-f]{1,64}\"")) {
            String tag = ifMatch.strip();
            return tag.substring(1, tag.length() - 1);
        }
        if (ifMatch == null && ifNoneMatch != null && ifNoneMatch.strip().equals("*")) {
            return "";
        }
        throw new ProblemException(
                428,
                "Condition missing",
                "This change needs the header If-Match with the ETag of the file that was read last, or If-None-Match: *"
                        + " for a new file, so that nobody's work is overwritten unseen.",
                List.of());
    }

    private static Response changed(FileChanged refusal, UriInfo uri) {
        Map<String, Object> problem = new TreeMap<>();
        problem.put("type", Problem.UNTYPED);
        problem.put("title", refusal.title());
        problem.put("status", refusal.status());
        problem.put("detail", refusal.getMessage());
        problem.put("instance", uri.getRequestUri().getPath());
        refusal.now().ifPresent(now -> problem.put("now", Map.of("tag", now.tag(), "text", now.text())));
        refusal.aside().ifPresent(aside -> problem.put("aside", aside));
        return Response.status(refusal.status())
                .type(Problem.MEDIA_TYPE)
                .entity(problem)
                .build();
    }
}
