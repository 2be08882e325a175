package org.washwright.rulebook;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.rule.Basis;
import org.washwright.rule.Edition;

/** What stands in an edition, for people: rules, words, question trees, and what was found in its files. */
@Path("/rulebooks")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class ContentPages {
    private final Caller caller;
    private final Editions editions;
    private final RuleMarks marks;
    private final Remarks remarks;

    ContentPages(Caller caller, Editions editions, RuleMarks marks, Remarks remarks) {
        this.caller = caller;
        this.editions = editions;
        this.marks = marks;
        this.remarks = remarks;
    }

    @GET
    @Path("{id}/rules")
    public TemplateInstance rules(
            @PathParam("id") UUID id,
            @QueryParam("q") @DefaultValue("") String q,
            @QueryParam("basis") @DefaultValue("") String basis) {
        List<RuleFile> files = RuleFile.all(content(id), editions.files(caller.workspaceId(), id), q, basis);
        return Templates.rules(
                view(id),
                files,
                new Looked(
                        q,
                        basis,
                        Arrays.stream(Basis.values()).map(Basis::word).toList(),
                        files.stream().mapToInt(f -> f.rules().size()).sum()),
                new Objected(
                        marks.openByRule(caller.workspaceId()),
                        ReviewSheet.openByRule(remarks.of(caller.workspaceId(), id))));
    }

    /** What readers hold against rules, and reviewers. */
    record Objected(Map<String, Integer> open, Map<String, Long> said) {

        /** How many open marks stand at a rule. */
        public int at(String rule) {
            return open.getOrDefault(rule, 0);
        }

        /** How many open remarks of the review stand at a rule. */
        public long remarks(String rule) {
            return said.getOrDefault(rule, 0L);
        }
    }

    /** What rules are looked for, and how many there are. */
    record Looked(String q, String basis, List<String> bases, int found) {

        /** Whether anything is looked for at all. */
        public boolean any() {
            return !q.isBlank() || !basis.isEmpty();
        }
    }

    @GET
    @Path("{id}/glossary")
    public TemplateInstance glossary(@PathParam("id") UUID id, @QueryParam("q") @DefaultValue("") String q) {
        return GlossaryPage.page(view(id), Glossary.of(content(id), q), q, false);
    }

    @GET
    @Path("{id}/trees")
    public TemplateInstance trees(@PathParam("id") UUID id) {
        return Templates.trees(view(id), TreeView.all(content(id)));
    }

    @GET
    @Path("{id}/trees/{treeId}")
    public TemplateInstance tree(@PathParam("id") UUID id, @PathParam("treeId") String treeId) {
        return Templates.tree(view(id), TreeView.of(content(id), treeId), "/rulebooks/" + id + "/glossary");
    }

    @GET
    @Path("{id}/diagnostics")
    public TemplateInstance diagnostics(@PathParam("id") UUID id) {
        return Templates.diagnostics(
                view(id),
                Finding.byFile(
                        editions.reading(caller.workspaceId(), id).diagnostics(),
                        editions.files(caller.workspaceId(), id)));
    }

    private EditionView view(UUID id) {
        return editions.view(caller.workspaceId(), id);
    }

    private Edition content(UUID id) {
        return editions.content(caller.workspaceId(), id);
    }

    @CheckedTemplate(basePath = "rulebook")
    static class Templates {
        static native TemplateInstance rules(
                EditionView edition, List<RuleFile> files, Looked looked, Objected objected);

        static native TemplateInstance trees(EditionView edition, List<TreeView> trees);

        static native TemplateInstance tree(EditionView edition, TreeView tree, String words);

        static native TemplateInstance diagnostics(EditionView edition, List<Finding.File> files);
    }
}
