package org.washwright.editing.text;

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
import jakarta.ws.rs.core.UriBuilder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.assist.SaidRule;
import org.washwright.problem.Conflict;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;
import org.washwright.problem.ProblemException;
import org.washwright.rulebook.DraftFiles;
import org.washwright.rulebook.EditionView;
import org.washwright.rulebook.Editions;
import org.washwright.rulebook.FileChanged;
import org.washwright.rulebook.KeptFile;

/** One file of an edition as text: written by consultants while it is a draft, read by everybody. */
@Path("/rulebooks/{id}/text")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class TextPages {
    private final Caller caller;
    private final Editions editions;
    private final DraftFiles files;
    private final Desk desk;

    TextPages(Caller caller, Editions editions, DraftFiles files, Desk desk) {
        this.caller = caller;
        this.editions = editions;
        this.files = files;
        this.desk = desk;
    }

    /**
     * What a page shows.
     *
     * @param text as it stands in the field
     * @param tag of the state that the next change is made against
     * @param editable whether the reader may change it
     * @param saved whether it was saved just now
     */
    record Sheet(String file, String text, String tag, boolean editable, boolean saved) {
        /** The last step of the name, for the heading. */
        public String name() {
            return file.substring(file.lastIndexOf('/') + 1);
        }

        /** The name within an address. */
        public String fileQuery() {
            return URLEncoder.encode(file, StandardCharsets.UTF_8);
        }

        /** Whether it holds rules, which are said beside it. */
        public boolean holdsRules() {
            return file.startsWith("rules/") || file.startsWith("tables/");
        }
    }

    /** Why a text was not saved. */
    record Refused(String detail, List<ProblemError> errors, Optional<Differences> differences) {
        static final Refused NOT = new Refused("", List.of(), Optional.empty());
    }

    @GET
    public TemplateInstance text(
            @PathParam("id") UUID id,
            @QueryParam("file") @DefaultValue("") String file,
            @QueryParam("saved") @DefaultValue("") String saved) {
        KeptFile kept = files.get(caller.workspaceId(), id, file);
        EditionView edition = editions.view(caller.workspaceId(), id);
        boolean editable = caller.has(Roles.CONSULTANT) && !edition.isKept();
        return page(id, new Sheet(file, kept.text(), kept.tag(), editable, saved.equals("yes")), Refused.NOT);
    }

    private TemplateInstance page(UUID id, Sheet sheet, Refused refused) {
        WrittenText written = new WrittenText(sheet.file(), sheet.text());
        return Templates.text(
                editions.view(caller.workspaceId(), id),
                sheet,
                desk.found(caller.workspaceId(), id, written),
                sheet.holdsRules() ? desk.said(caller.workspaceId(), id, written) : List.of(),
                refused);
    }

    /** Without scripts a text is saved by its form. A field that is sent ends lines in its own way; the file keeps its. */
    @POST
    @RolesAllowed(Roles.CONSULTANT)
    public Response save(
            @PathParam("id") UUID id,
            @QueryParam("file") @DefaultValue("") String file,
            @FormParam("tag") @DefaultValue("") String tag,
            @FormParam("text") @DefaultValue("") String sent) {
        KeptFile present = files.get(caller.workspaceId(), id, file);
        String plain = sent.replace("\r\n", "\n");
        String text = present.text().contains("\r\n") ? plain.replace("\n", "\r\n") : plain;
        try {
            files.save(caller.workspaceId(), Person.of(caller), id, file, tag, text.getBytes(StandardCharsets.UTF_8));
            return Response.seeOther(UriBuilder.fromPath("/rulebooks/" + id + "/text")
                            .queryParam("file", file)
                            .queryParam("saved", "yes")
                            .build())
                    .build();
        } catch (FileChanged changed) {
            String theirs = changed.now().map(KeptFile::text).orElse("");
            String now = changed.now().map(KeptFile::tag).orElse("");
            // What both began with is not known here, so nothing is merged: lines that differ are shown.
            Differences differences = Differences.of(theirs, theirs, text);
            return refused(id, new Sheet(file, text, now, true, false), changed, Optional.of(differences));
        } catch (Invalid | Conflict refusal) {
            return refused(id, new Sheet(file, text, tag, true, false), refusal, Optional.empty());
        }
    }

    private Response refused(UUID id, Sheet sheet, ProblemException why, Optional<Differences> differences) {
        return Response.status(why.status())
                .entity(page(
                        id,
                        sheet,
                        new Refused(why.errors().isEmpty() ? why.getMessage() : "", why.errors(), differences)))
                .build();
    }

    /** Three texts: what both began with, what stands there now, and the caller's. */
    record Three(String base, String theirs, String mine) {}

    @POST
    @Path("differences")
    @Consumes(MediaType.APPLICATION_JSON)
    public TemplateInstance differences(@PathParam("id") UUID id, Three three) {
        editions.view(caller.workspaceId(), id);
        return Templates.differences(Differences.of(three.base(), three.theirs(), three.mine()), true);
    }

    @CheckedTemplate(basePath = "editing")
    static class Templates {
        static native TemplateInstance text(
                EditionView edition, Sheet sheet, Desk.Found found, List<SaidRule> said, Refused refused);

        static native TemplateInstance differences(Differences differences, boolean choose);
    }
}
