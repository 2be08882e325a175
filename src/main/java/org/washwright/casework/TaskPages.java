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
import org.washwright.assessment.Wishes;
import org.washwright.document.Diagnostic;
import org.washwright.http.Paged;
import org.washwright.http.Slice;
import org.washwright.problem.Invalid;
import org.washwright.problem.PreconditionFailed;
import org.washwright.problem.ProblemError;
import org.washwright.problem.ProblemErrors;
import org.washwright.rule.Edition;
import org.washwright.rulebook.EditionView;
import org.washwright.rulebook.Editions;
import org.washwright.task.Group;

/** Cleaning tasks, for people: the list, the form, the task. Everything works without a script. */
@Path("/tasks")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class TaskPages {
    private final Caller caller;
    private final Tasks tasks;
    private final Assessments assessments;
    private final Editions editions;

    TaskPages(Caller caller, Tasks tasks, Assessments assessments, Editions editions) {
        this.caller = caller;
        this.tasks = tasks;
        this.assessments = assessments;
        this.editions = editions;
    }

    @GET
    public TemplateInstance list(
            @QueryParam("page") @DefaultValue("0") String page,
            @QueryParam("size") @DefaultValue(Slice.USUAL_SIZE) String size) {
        return listed(Slice.of(page, size), List.of());
    }

    private TemplateInstance listed(Slice slice, List<ProblemError> errors) {
        return Templates.list(tasks.list(caller.workspaceId(), slice), mayWrite(), errors);
    }

    @POST
    @Path("import")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
    public Response bringIn(@RestForm("file") FileUpload file) {
        try {
            GivenTask given = GivenTask.read(bytes(file), edition());
            return to(tasks.add(caller.workspaceId(), Person.of(caller), given).id());
        } catch (Invalid refusal) {
            return Response.status(422)
                    .entity(listed(Slice.of("0", Slice.USUAL_SIZE), refusal.errors()))
                    .build();
        }
    }

    @GET
    @Path("new")
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
    public TemplateInstance blank() {
        return form(FormFields.fresh(), List.of(), Optional.empty(), 0);
    }

    @POST
    @Path("new")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
    public Response create(MultivaluedMap<String, String> posted) {
        return act(FormFields.of(posted), Optional.empty(), 0);
    }

    @GET
    @Path("{id}/edit")
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
    public TemplateInstance edit(@PathParam("id") UUID id) {
        TaskView task = tasks.view(caller.workspaceId(), id);
        FormFields fields = FormReader.read(GivenTask.nodes(tasks.document(caller.workspaceId(), id)), edition());
        return form(fields, List.of(), Optional.of(id), task.version());
    }

    @POST
    @Path("{id}/edit")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
    public Response change(@PathParam("id") UUID id, MultivaluedMap<String, String> posted) {
        tasks.view(caller.workspaceId(), id);
        FormFields fields = FormFields.of(posted);
        String version = fields.first("version");
        if (!version.matches("[0-9]{1,9}")) {
            throw new PreconditionFailed("The form does not say which version it changes; open it again.");
        }
        return act(fields, Optional.of(id), Integer.parseInt(version));
    }

    /** What the pressed button asks for: a row more or less, a question tree, or to save. */
    private Response act(FormFields fields, Optional<UUID> id, int version) {
        String[] asked = fields.first("do").split(":", 2);
        String about = asked.length > 1 ? asked[1] : "";
        FormFields clean = fields.without("do", "csrf-token");
        return switch (asked[0]) {
            case "add" -> shown(Group.byKey(about).map(clean::withRow).orElse(clean), id, version);
            case "remove" -> shown(removed(clean, about), id, version);
            case "forget" -> shown(clean.without(about + ".tree", about + ".answers"), id, version);
            case "play" -> walked(TreeWalk.start(edition(), clean, about), id, version);
            case "answer" -> walked(TreeWalk.answer(edition(), clean, about), id, version);
            case "back" -> walked(TreeWalk.back(edition(), clean, about), id, version);
            default -> save(clean, id, version);
        };
    }

    private Response shown(FormFields fields, Optional<UUID> id, int version) {
        return Response.ok(form(fields, List.of(), id, version)).build();
    }

    private static FormFields removed(FormFields fields, String row) {
        String[] parts = row.split("\\.");
        Optional<Group> group = Group.byKey(parts[0]);
        return group.isPresent() && parts.length == 2 && parts[1].matches("[0-9]{1,3}")
                ? fields.withoutRow(group.get(), Integer.parseInt(parts[1]))
                : fields;
    }

    /** A step of a question tree: on to a question, or back to the form. */
    private Response walked(TreeWalk.Step step, Optional<UUID> id, int version) {
        return step.walk().isEmpty()
                ? shown(step.fields(), id, version)
                : Response.ok(Templates.question(step.walk().get(), action(id), version))
                        .build();
    }

    private Response save(FormFields fields, Optional<UUID> id, int version) {
        Edition edition = edition();
        GivenTask.Result result = GivenTask.tried(FormDocument.write(fields, edition), edition);
        if (result.task().isEmpty()) {
            return Response.status(422)
                    .entity(form(fields, result.diagnostics(), id, version))
                    .build();
        }
        Person by = Person.of(caller);
        TaskView saved = id.isPresent()
                ? tasks.change(
                        caller.workspaceId(),
                        by,
                        id.get(),
                        version,
                        result.task().get())
                : tasks.add(caller.workspaceId(), by, result.task().get());
        return to(saved.id());
    }

    private TemplateInstance form(FormFields fields, List<Diagnostic> wrong, Optional<UUID> id, int version) {
        return Templates.form(FormView.of(fields, edition(), wrong), action(id), id.isPresent(), version);
    }

    private static String action(Optional<UUID> id) {
        return id.map(i -> "/tasks/" + i + "/edit").orElse("/tasks/new");
    }

    @GET
    @Path("{id}")
    public TemplateInstance show(@PathParam("id") UUID id) {
        return shown(id, List.of());
    }

    private TemplateInstance shown(UUID id, List<ProblemError> errors) {
        TaskView task = tasks.view(caller.workspaceId(), id);
        String document = tasks.document(caller.workspaceId(), id);
        EditionView current = editions.requireCurrent(caller.workspaceId());
        Edition edition = editions.content(caller.workspaceId(), current.id());
        GivenTask.Result read = GivenTask.tried(document.getBytes(java.nio.charset.StandardCharsets.UTF_8), edition);
        return Templates.task(
                task,
                read.task().map(t -> TaskSummary.of(t.task(), document, edition)),
                errors.isEmpty() ? ProblemErrors.of(read.diagnostics()) : errors,
                assessments.of(caller.workspaceId(), id),
                current,
                mayWrite());
    }

    @POST
    @Path("{id}/assessments")
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
    public Response assess(@PathParam("id") UUID id) {
        try {
            AssessmentView made =
                    assessments.assess(caller.workspaceId(), Person.of(caller), id, Wishes.on(assessments.today()));
            return Response.seeOther(URI.create("/tasks/" + id + "/assessments/" + made.id()))
                    .build();
        } catch (Invalid refusal) {
            return Response.status(422).entity(shown(id, refusal.errors())).build();
        }
    }

    private boolean mayWrite() {
        return caller.has(Roles.ENGINEER) || caller.has(Roles.CONSULTANT);
    }

    private Edition edition() {
        return editions.content(
                caller.workspaceId(),
                editions.requireCurrent(caller.workspaceId()).id());
    }

    private static byte[] bytes(FileUpload upload) {
        if (upload == null || upload.size() == 0) {
            throw new Invalid(List.of(ProblemError.at(
                    "file", "", "No file was chosen.", "Choose a task in YAML or JSON.", "missing-field")));
        }
        try {
            return Files.readAllBytes(upload.uploadedFile());
        } catch (IOException e) {
            throw new UncheckedIOException("an upload that was just written", e);
        }
    }

    private static Response to(UUID id) {
        return Response.seeOther(URI.create("/tasks/" + id)).build();
    }

    @CheckedTemplate(basePath = "casework")
    static class Templates {
        static native TemplateInstance list(Paged<TaskView> tasks, boolean write, List<ProblemError> errors);

        static native TemplateInstance form(FormView form, String action, boolean existing, int version);

        static native TemplateInstance question(TreeWalk walk, String action, int version);

        static native TemplateInstance task(
                TaskView task,
                Optional<TaskSummary> summary,
                List<ProblemError> errors,
                List<AssessmentView> assessments,
                EditionView current,
                boolean write);
    }
}
