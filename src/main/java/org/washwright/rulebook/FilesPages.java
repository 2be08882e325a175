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
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;
import org.washwright.problem.ProblemException;

/** The files of an edition as a list, each leading to its editor, and the texts that were kept aside. */
@Path("/rulebooks/{id}/files")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class FilesPages {
    private final Caller caller;
    private final Editions editions;
    private final DraftFiles files;

    FilesPages(Caller caller, Editions editions, DraftFiles files) {
        this.caller = caller;
        this.editions = editions;
        this.files = files;
    }

    /**
     * The list as shown to one reader.
     *
     * @param groups the files by kind
     * @param asides texts kept aside
     * @param kinds the kinds a new file can be of
     * @param mayWrite whether the reader may change the files
     * @param refused why something was not done
     * @param name the name that was typed then
     */
    record Sheet(
            List<FileGroup> groups,
            List<KeptAside> asides,
            List<FileGroup.Kind> kinds,
            boolean mayWrite,
            ReviewSheet.Refusal refused,
            String name) {

        /** How many files there are. */
        public int count() {
            return groups.stream().mapToInt(g -> g.entries().size()).sum();
        }
    }

    @GET
    public TemplateInstance list(@PathParam("id") UUID id) {
        return page(id, ReviewSheet.Refusal.NONE, "");
    }

    private TemplateInstance page(UUID id, ReviewSheet.Refusal refused, String name) {
        UUID workspace = caller.workspaceId();
        EditionView edition = editions.view(workspace, id);
        return Templates.files(
                edition,
                new Sheet(
                        FileGroup.of(
                                files.list(workspace, id),
                                editions.reading(workspace, id).diagnostics()),
                        edition.isKept() ? List.of() : files.aside(workspace, id),
                        Arrays.stream(FileGroup.Kind.values())
                                .filter(FileGroup.Kind::mayBegin)
                                .toList(),
                        caller.has(Roles.CONSULTANT) && !edition.isKept(),
                        refused,
                        name));
    }

    @POST
    @RolesAllowed(Roles.CONSULTANT)
    public Response begin(
            @PathParam("id") UUID id,
            @FormParam("kind") @DefaultValue("RULES") FileGroup.Kind kind,
            @FormParam("name") @DefaultValue("") String name) {
        return step(id, name, () -> {
            String path = kind.folder() + plain(name, kind.ending()) + kind.ending();
            files.save(
                    caller.workspaceId(),
                    Person.of(caller),
                    id,
                    path,
                    "",
                    kind.start().getBytes(StandardCharsets.UTF_8));
            return new FileGroup.Entry(path, "", 0, 0, 0).editor();
        });
    }

    private static String plain(String name, String ending) {
        String plain = name.strip();
        if (plain.endsWith(ending)) {
            plain = plain.substring(0, plain.length() - ending.length());
        }
        if (plain.isEmpty()) {
            throw new Invalid(List.of(ProblemError.at(
                    "name", "", "The file has no name.", "Use letters, digits and hyphens.", "missing-field")));
        }
        return plain;
    }

    @POST
    @Path("deletion")
    @RolesAllowed(Roles.CONSULTANT)
    public Response delete(@PathParam("id") UUID id, @FormParam("file") String file, @FormParam("tag") String tag) {
        return step(id, "", () -> {
            files.delete(caller.workspaceId(), Person.of(caller), id, file, tag);
            return "/files";
        });
    }

    @GET
    @Path("aside/{aside}")
    public TemplateInstance aside(@PathParam("id") UUID id, @PathParam("aside") UUID aside) {
        return Templates.aside(editions.view(caller.workspaceId(), id), files.aside(caller.workspaceId(), id, aside));
    }

    @POST
    @Path("aside/{aside}/deletion")
    @RolesAllowed(Roles.CONSULTANT)
    public Response drop(@PathParam("id") UUID id, @PathParam("aside") UUID aside) {
        return step(id, "", () -> {
            files.dropAside(caller.workspaceId(), id, aside);
            return "/files";
        });
    }

    /** A change that leads to a page. */
    private interface Change {
        String leadsTo();
    }

    private Response step(UUID id, String name, Change change) {
        try {
            return Response.seeOther(URI.create("/rulebooks/" + id + change.leadsTo()))
                    .build();
        } catch (ProblemException refusal) {
            if (refusal.status() == Response.Status.NOT_FOUND.getStatusCode()) {
                throw refusal;
            }
            return Response.status(refusal.status())
                    .entity(page(id, ReviewSheet.Refusal.of(refusal), name))
                    .build();
        }
    }

    @CheckedTemplate(basePath = "rulebook")
    static class Templates {
        static native TemplateInstance files(EditionView edition, Sheet sheet);

        static native TemplateInstance aside(EditionView edition, KeptAside aside);
    }
}
