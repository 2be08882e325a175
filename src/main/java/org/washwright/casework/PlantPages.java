package org.washwright.casework;

import com.fasterxml.jackson.databind.ObjectMapper;
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
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.assessment.Answer;
import org.washwright.document.Node;
import org.washwright.http.Paged;
import org.washwright.http.Slice;
import org.washwright.plant.PlannedPlant;
import org.washwright.plant.PlantWeek;
import org.washwright.problem.NotFound;
import org.washwright.problem.PreconditionFailed;
import org.washwright.problem.ProblemError;
import org.washwright.problem.ProblemErrors;
import org.washwright.rule.Edition;
import org.washwright.rulebook.EditionView;
import org.washwright.taskfile.TaskExport;
import org.washwright.taskfile.TaskFormat;

/** Plants, for people: the list, the form, and what a plant makes of tasks of the workspace. */
@Path("/plants")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class PlantPages {
    private static final String PASTED = "pasted text";

    private final Caller caller;
    private final Plants plants;
    private final PlantLoads loads;
    private final Tasks tasks;
    private final Assessments assessments;
    private final ObjectMapper json;

    PlantPages(
            Caller caller, Plants plants, PlantLoads loads, Tasks tasks, Assessments assessments, ObjectMapper json) {
        this.caller = caller;
        this.plants = plants;
        this.loads = loads;
        this.tasks = tasks;
        this.assessments = assessments;
        this.json = json;
    }

    @GET
    public TemplateInstance list(
            @QueryParam("page") @DefaultValue("0") String page,
            @QueryParam("size") @DefaultValue(Slice.USUAL_SIZE) String size) {
        return Templates.list(plants.list(caller.workspaceId(), Slice.of(page, size)), caller.mayWrite());
    }

    /** An empty form, or one that holds the plant that the line of an answer would be. */
    @GET
    @Path("new")
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
    public TemplateInstance blank(
            @QueryParam("assessment") Optional<UUID> assessment, @QueryParam("process") Optional<String> process) {
        PlantForm form = assessment.map(id -> planned(id, process.orElse(""))).orElseGet(PlantForm::blank);
        String heading = assessment.isPresent() ? "Plan a plant" : "Describe a plant";
        return form(form, new PlantFormView.Of("/plants/new", "", heading, ""), List.of());
    }

    private PlantForm planned(UUID id, String process) {
        AssessmentView view = assessments.view(caller.workspaceId(), id);
        try {
            Answer answer = json.readValue(assessments.bytes(caller.workspaceId(), id), Answer.class);
            String title = tasks.view(caller.workspaceId(), view.taskId()).title();
            return PlannedPlant.of(answer, process, title, words())
                    .map(d -> PlantForm.of(GivenTask.nodes(PlantForm.json(d))))
                    .orElseThrow(() -> new NotFound(
                            "This assessment holds no process of that name that may clean the task; a plant can be"
                                    + " planned for one that does."));
        } catch (IOException e) {
            throw new UncheckedIOException("an answer that was stored", e);
        }
    }

    @POST
    @Path("new")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
    public Response create(MultivaluedMap<String, String> posted) {
        PlantForm form = PlantForm.of(posted);
        PlantFormView.Of of = new PlantFormView.Of("/plants/new", "", "Describe a plant", "");
        if (isRedraw(posted)) {
            return Response.ok(form(form, of, List.of())).build();
        }
        GivenPlant.Result read = read(form);
        return read.plant()
                .map(given -> seen(plants.add(caller.workspaceId(), me(), given)))
                .orElseGet(() -> refused(form, of, ProblemErrors.of(read.diagnostics())));
    }

    /** A plant in a text that was pasted or in a file. */
    @POST
    @Path("import")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
    public Response bringIn(@RestForm("file") FileUpload file, @RestForm("text") String text) {
        boolean uploaded = file != null && file.size() > 0;
        String typed = text == null ? "" : text;
        PlantFormView.Of of = new PlantFormView.Of("/plants/new", "", "Describe a plant", typed);
        if (!uploaded && typed.isBlank()) {
            return refused(
                    PlantForm.blank(),
                    of,
                    List.of(ProblemError.at(
                            "text",
                            "",
                            "There is neither a text nor a file.",
                            "Paste a plant as YAML or JSON, or choose a file.",
                            "missing-field")));
        }
        byte[] bytes = uploaded ? bytes(file) : typed.getBytes(StandardCharsets.UTF_8);
        GivenPlant.Result read = GivenPlant.tried(uploaded ? file.fileName() : PASTED, bytes, words());
        return read.plant()
                .map(given -> seen(plants.add(caller.workspaceId(), me(), given)))
                .orElseGet(() -> refused(PlantForm.blank(), of, ProblemErrors.of(read.diagnostics())));
    }

    @GET
    @Path("{id}/edit")
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
    public TemplateInstance edit(@PathParam("id") UUID id) {
        PlantView plant = plants.view(caller.workspaceId(), id);
        return form(PlantForm.of(document(id)), change(plant, plant.version()), List.of());
    }

    private static PlantFormView.Of change(PlantView plant, int version) {
        return new PlantFormView.Of(
                "/plants/" + plant.id() + "/edit", String.valueOf(version), "Change " + plant.name(), "");
    }

    @POST
    @Path("{id}/edit")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
    public Response change(@PathParam("id") UUID id, MultivaluedMap<String, String> posted) {
        PlantView plant = plants.view(caller.workspaceId(), id);
        int version = version(posted);
        PlantForm form = PlantForm.of(posted);
        if (isRedraw(posted)) {
            return Response.ok(form(form, change(plant, version), List.of())).build();
        }
        GivenPlant.Result read = read(form);
        if (read.plant().isEmpty()) {
            return refused(form, change(plant, version), ProblemErrors.of(read.diagnostics()));
        }
        try {
            return seen(plants.change(
                    caller.workspaceId(), me(), id, version, read.plant().get()));
        } catch (PreconditionFailed outdated) {
            // What was typed is not lost; saving once more is a decision that somebody takes knowingly.
            return refused(
                    form,
                    change(plant, plant.version()),
                    List.of(ProblemError.at(
                            "/name",
                            "",
                            plant.changed().by() + " changed this plant since you opened it.",
                            "Look at it in another window; to put yours in its place, save once more.",
                            "outdated")));
        }
    }

    @POST
    @Path("{id}/delete")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
    public Response delete(@PathParam("id") UUID id, MultivaluedMap<String, String> posted) {
        plants.delete(caller.workspaceId(), id, version(posted));
        return Response.seeOther(URI.create("/plants")).build();
    }

    /** A plant, and what it makes of the tasks that the address names. */
    @GET
    @Path("{id}")
    public TemplateInstance show(@PathParam("id") UUID id, @Context UriInfo uri) {
        PlantView plant = plants.view(caller.workspaceId(), id);
        EditionView current = loads.current(caller.workspaceId());
        Edition words = words();
        GivenPlant.Result read = GivenPlant.tried(
                ProblemErrors.BODY, plants.document(caller.workspaceId(), id).getBytes(StandardCharsets.UTF_8), words);
        Paged<TaskView> all = tasks.list(caller.workspaceId(), new Slice(0, Slice.MAX_SIZE));
        PlantChoice choice = PlantChoice.of(uri.getQueryParameters(), all.items());
        List<ProblemError> errors = new ArrayList<>(ProblemErrors.of(read.diagnostics()));
        Optional<PlantWeek> week = Optional.empty();
        if (read.plant().isPresent() && !choice.asked().isEmpty()) {
            PlantLoads.Result result =
                    loads.of(caller.workspaceId(), read.plant().get().plant(), choice.asked());
            errors.addAll(result.errors());
            week = Optional.of(result.week());
        }
        List<PlantSight.Row> rows = week.map(PlantSight::rows).orElse(List.of());
        return Templates.plant(
                plant,
                read.plant().map(g -> PlantSight.lines(g.plant(), words)).orElse(List.of()),
                choice.picks(all.items(), errors),
                all.total(),
                week,
                rows,
                week.flatMap(w -> PlantSight.bar(w, rows)),
                errors,
                current,
                caller.mayWrite());
    }

    /** The plant as a file, with the words and units it was given in. */
    @GET
    @Path("{id}/file.yaml")
    @Produces(MediaType.TEXT_PLAIN)
    public Response takeOut(@PathParam("id") UUID id) {
        byte[] bytes = new TaskExport(words()).task(document(id), TaskFormat.YAML);
        return Response.ok(bytes)
                .type(MediaType.valueOf(TaskFormat.YAML.mediaType()).withCharset("UTF-8"))
                .header("Content-Disposition", "attachment; filename=\"plant.yaml\"")
                .build();
    }

    private static boolean isRedraw(MultivaluedMap<String, String> posted) {
        return "settings".equals(posted.getFirst("do"));
    }

    private static int version(MultivaluedMap<String, String> posted) {
        String version = Optional.ofNullable(posted.getFirst("version")).orElse("");
        if (!version.matches("[0-9]{1,9}")) {
            throw new PreconditionFailed("The form does not say which version it changes; open it again.");
        }
        return Integer.parseInt(version);
    }

    /** Reads the form by its document, and keeps it as text that people can read. */
    private GivenPlant.Result read(PlantForm form) {
        String document = form.json();
        GivenPlant.Result read =
                GivenPlant.tried(ProblemErrors.BODY, document.getBytes(StandardCharsets.UTF_8), words());
        return new GivenPlant.Result(
                read.plant()
                        .map(g -> new GivenPlant(
                                new String(
                                        new TaskExport(words()).task(GivenTask.nodes(document), TaskFormat.YAML),
                                        StandardCharsets.UTF_8),
                                g.plant())),
                read.diagnostics());
    }

    private TemplateInstance form(PlantForm form, PlantFormView.Of of, List<ProblemError> errors) {
        return Templates.form(PlantFormView.of(form, of, errors, words()));
    }

    private Response refused(PlantForm form, PlantFormView.Of of, List<ProblemError> errors) {
        return Response.status(422).entity(form(form, of, errors)).build();
    }

    private static Response seen(PlantView plant) {
        return Response.seeOther(URI.create("/plants/" + plant.id())).build();
    }

    private Node document(UUID id) {
        return GivenTask.nodes(plants.document(caller.workspaceId(), id));
    }

    private Edition words() {
        return loads.words(caller.workspaceId());
    }

    private Person me() {
        return Person.of(caller);
    }

    private static byte[] bytes(FileUpload upload) {
        try {
            return Files.readAllBytes(upload.uploadedFile());
        } catch (IOException e) {
            throw new UncheckedIOException("an upload that was just written", e);
        }
    }

    @CheckedTemplate(basePath = "plants")
    static class Templates {
        static native TemplateInstance list(Paged<PlantView> plants, boolean write);

        static native TemplateInstance form(PlantFormView form);

        static native TemplateInstance plant(
                PlantView plant,
                List<PlantSight.Line> lines,
                List<PlantSight.Pick> picks,
                long taskCount,
                Optional<PlantWeek> week,
                List<PlantSight.Row> rows,
                Optional<PlantSight.Bar> bar,
                List<ProblemError> errors,
                EditionView current,
                boolean write);
    }
}
