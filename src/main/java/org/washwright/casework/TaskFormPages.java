package org.washwright.casework;

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
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.document.Diagnostic;
import org.washwright.problem.PreconditionFailed;
import org.washwright.rule.Edition;
import org.washwright.task.Group;

/** The form in which a task is described, changed, copied, and kept as a draft. Everything works without a script. */
@Path("/tasks")
@RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
@Produces(MediaType.TEXT_HTML)
class TaskFormPages {
    private final Caller caller;
    private final Tasks tasks;
    private final Drafts drafts;
    private final UnitChoices units;
    private final FormDesk desk;

    TaskFormPages(Caller caller, Tasks tasks, Drafts drafts, UnitChoices units, FormDesk desk) {
        this.caller = caller;
        this.tasks = tasks;
        this.drafts = drafts;
        this.units = units;
        this.desk = desk;
    }

    /** An empty form, or one that holds what another task says. */
    @GET
    @Path("new")
    public TemplateInstance blank(@QueryParam("from") Optional<UUID> from) {
        FormFields fields = from.map(id -> {
                    FormFields other = typed(id);
                    return other.with("title", List.of(copied(other.first("title"))));
                })
                .orElseGet(FormFields::fresh);
        return form(fields, List.of(), FormOf.NEW, false);
    }

    private static String copied(String title) {
        String copy = "Copy of " + title;
        return copy.length() > Tasks.TITLE_MOST ? copy.substring(0, Tasks.TITLE_MOST) : copy;
    }

    @POST
    @Path("new")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response create(MultivaluedMap<String, String> posted) {
        return act(FormFields.of(posted), FormOf.NEW);
    }

    @GET
    @Path("{id}/edit")
    public TemplateInstance edit(@PathParam("id") UUID id) {
        TaskView task = tasks.view(caller.workspaceId(), id);
        return form(typed(id), List.of(), FormOf.task(id, task.version()), false);
    }

    @POST
    @Path("{id}/edit")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response change(@PathParam("id") UUID id, MultivaluedMap<String, String> posted) {
        tasks.view(caller.workspaceId(), id);
        FormFields fields = FormFields.of(posted);
        String version = fields.first("version");
        if (!version.matches("[0-9]{1,9}")) {
            throw new PreconditionFailed("The form does not say which version it changes; open it again.");
        }
        return act(fields, FormOf.task(id, Integer.parseInt(version)));
    }

    @GET
    @Path("drafts/{id}")
    public TemplateInstance draft(
            @PathParam("id") UUID id, @QueryParam("kept") @DefaultValue("false") boolean justKept) {
        DraftView draft = drafts.view(caller.workspaceId(), me(), id);
        FormFields fields = drafts.fields(caller.workspaceId(), me(), id);
        return form(fields, List.of(), FormOf.draft(draft), justKept);
    }

    @POST
    @Path("drafts/{id}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response goOn(@PathParam("id") UUID id, MultivaluedMap<String, String> posted) {
        DraftView draft = drafts.view(caller.workspaceId(), me(), id);
        return act(FormFields.of(posted), FormOf.draft(draft));
    }

    /** What the pressed button asks for: a row more or less, a question tree, to keep, to save. */
    private Response act(FormFields fields, FormOf of) {
        String[] asked = fields.first("do").split(":", 2);
        String about = asked.length > 1 ? asked[1] : "";
        FormFields clean = fields.without("do", "csrf-token", "version");
        Edition edition = desk.edition(caller.workspaceId());
        return switch (asked[0]) {
            case "look" -> shown(clean, of);
            case "add" -> shown(Group.byKey(about).map(clean::withRow).orElse(clean), of);
            case "remove" -> shown(removed(clean, about), of);
            case "forget" -> shown(clean.without(about + ".tree", about + ".answers"), of);
            case "play" -> walked(TreeWalk.start(edition, clean, about), of);
            case "answer" -> walked(TreeWalk.answer(edition, clean, about), of);
            case "back" -> walked(TreeWalk.back(edition, clean, about), of);
            case "draft" -> keep(clean, of, edition);
            case "discard" -> discard(of);
            default -> save(clean, of, edition);
        };
    }

    private Response shown(FormFields fields, FormOf of) {
        return Response.ok(form(fields, List.of(), of, false)).build();
    }

    private static FormFields removed(FormFields fields, String row) {
        String[] parts = row.split("\\.");
        Optional<Group> group = Group.byKey(parts[0]);
        return group.isPresent() && parts.length == 2 && parts[1].matches("[0-9]{1,3}")
                ? fields.withoutRow(group.get(), Integer.parseInt(parts[1]))
                : fields;
    }

    /** A step of a question tree: on to a question, or back to the form. */
    private Response walked(TreeWalk.Step step, FormOf of) {
        return step.walk().isEmpty()
                ? shown(step.fields(), of)
                : Response.ok(Templates.question(step.walk().get(), of.action(), of.version()))
                        .build();
    }

    private Response keep(FormFields fields, FormOf of, Edition edition) {
        DraftView kept = drafts.keep(caller.workspaceId(), me(), of, fields);
        units.remember(caller.workspaceId(), me(), FormUnits.typed(fields, edition));
        return Response.seeOther(URI.create("/tasks/drafts/" + kept.id() + "?kept=true"))
                .build();
    }

    private Response discard(FormOf of) {
        of.draft().ifPresent(id -> drafts.drop(caller.workspaceId(), me(), id));
        return Response.seeOther(URI.create("/tasks")).build();
    }

    private Response save(FormFields fields, FormOf of, Edition edition) {
        GivenTask.Result result = GivenTask.tried(FormDocument.write(fields, edition), edition);
        if (result.task().isEmpty()) {
            return Response.status(422)
                    .entity(form(fields, result.diagnostics(), of, false))
                    .build();
        }
        GivenTask given = result.task().get();
        TaskView saved = of.task().isPresent()
                ? tasks.change(caller.workspaceId(), me(), of.task().get(), of.version(), given)
                : tasks.add(caller.workspaceId(), me(), given);
        of.draft().ifPresent(id -> drafts.drop(caller.workspaceId(), me(), id));
        units.remember(caller.workspaceId(), me(), FormUnits.typed(fields, edition));
        return Response.seeOther(URI.create("/tasks/" + saved.id())).build();
    }

    private TemplateInstance form(FormFields fields, List<Diagnostic> wrong, FormOf of, boolean justKept) {
        return Templates.form(desk.view(caller.workspaceId(), me(), fields, wrong), of, justKept);
    }

    /** A kept task as it would be typed. */
    private FormFields typed(UUID id) {
        String document = tasks.document(caller.workspaceId(), id);
        return FormReader.read(GivenTask.nodes(document), desk.edition(caller.workspaceId()));
    }

    private Person me() {
        return Person.of(caller);
    }

    @CheckedTemplate(basePath = "casework")
    static class Templates {
        static native TemplateInstance form(FormView form, FormOf of, boolean justKept);

        static native TemplateInstance question(TreeWalk walk, String action, int version);
    }
}
