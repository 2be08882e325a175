package org.washwright.editing.tree;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.document.edit.Data;
import org.washwright.document.edit.RefusedEdit;
import org.washwright.document.edit.YamlEdits;
import org.washwright.editing.Clash;
import org.washwright.editing.EditorDesk;
import org.washwright.editing.OpenFile;
import org.washwright.editing.Posted;
import org.washwright.exchange.TreeCheck;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;
import org.washwright.problem.ProblemErrors;
import org.washwright.rule.Edition;
import org.washwright.rulebook.FileChanged;

/** A question tree: its picture, a form for each question, and the tree played answer by answer. */
@Path("/rulebooks/{id}/tree")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class TreePages {
    private static final String TREES = "trees/[A-Za-z0-9._-]{1,80}\\.yaml";

    private final Caller caller;
    private final EditorDesk desk;

    TreePages(Caller caller, EditorDesk desk) {
        this.caller = caller;
        this.desk = desk;
    }

    @GET
    public TemplateInstance tree(
            @PathParam("id") UUID id,
            @QueryParam("file") @DefaultValue("") String path,
            @QueryParam("play") @DefaultValue("") String play,
            @QueryParam("at") @DefaultValue("") String at) {
        return page(desk.open(caller, id, path, TREES), play, at, Optional.empty(), List.of());
    }

    private TemplateInstance page(
            OpenFile open, String play, String at, Optional<Clash> clash, List<ProblemError> errors) {
        Optional<Edition> words =
                desk.words(caller.workspaceId(), open.edition().id()).edition();
        try {
            TreeData tree = new TreeData(YamlEdits.read(open.path(), open.text()));
            TreeCheck check = words.map(w -> TreeCheck.of(w, open.path(), open.text()))
                    .orElse(new TreeCheck(Optional.empty(), List.of()));
            return Templates.tree(open, Optional.of(TreeSight.of(tree, check, words, play)), at, clash, errors);
        } catch (RefusedEdit unreadable) {
            return Templates.tree(open, Optional.empty(), at, clash, ProblemErrors.of(unreadable.found()));
        }
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed(Roles.CONSULTANT)
    public Response change(
            @PathParam("id") UUID id,
            @QueryParam("file") @DefaultValue("") String path,
            MultivaluedMap<String, String> fields) {
        Posted posted = new Posted(fields);
        OpenFile open = desk.open(caller, id, path, TREES);
        try {
            Data data = YamlEdits.read(open.path(), open.text());
            TreeForm.Asked asked = TreeForm.of(new TreeData(data), posted);
            String text = YamlEdits.apply(open.path(), open.text(), asked.changes());
            try {
                desk.save(caller, open, posted.word("tag"), text);
            } catch (FileChanged refusal) {
                return Response.status(refusal.status())
                        .entity(page(open, "", asked.focus(), Optional.of(Clash.of(refusal, text)), List.of()))
                        .build();
            }
            String at = asked.focus().isEmpty() ? "" : "&at=" + asked.focus() + "#q-" + asked.focus();
            return Response.seeOther(URI.create(open.at("tree") + at)).build();
        } catch (RefusedEdit refused) {
            return refused(open, posted, EditorDesk.invalid(refused));
        } catch (Invalid refused) {
            return refused(open, posted, refused);
        }
    }

    private Response refused(OpenFile open, Posted posted, Invalid refusal) {
        return Response.status(refusal.status())
                .entity(page(open, "", posted.word("question"), Optional.empty(), refusal.errors()))
                .build();
    }

    @CheckedTemplate(basePath = "editing")
    static class Templates {
        static native TemplateInstance tree(
                OpenFile open, Optional<TreeSight> sight, String at, Optional<Clash> clash, List<ProblemError> errors);
    }
}
