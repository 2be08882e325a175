package org.washwright.casework;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.assessment.Answer;
import org.washwright.problem.NotFound;
import org.washwright.rule.Edition;
import org.washwright.rulebook.Editions;

/** An answer and its reasons, for people. */
@Path("/tasks/{task}/assessments/{id}")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class AssessmentPages {
    private static final int MOST_COMPARED = 4;

    private final Caller caller;
    private final Tasks tasks;
    private final Assessments assessments;
    private final Editions editions;
    private final ObjectMapper json;

    AssessmentPages(Caller caller, Tasks tasks, Assessments assessments, Editions editions, ObjectMapper json) {
        this.caller = caller;
        this.tasks = tasks;
        this.assessments = assessments;
        this.editions = editions;
        this.json = json;
    }

    @GET
    public TemplateInstance show(@PathParam("task") UUID task, @PathParam("id") UUID id) {
        Sight sight = sight(task, id);
        return shown(sight, "");
    }

    private TemplateInstance shown(Sight sight, String compareError) {
        List<Answer.Candidate> candidates = sight.answer.candidates();
        return Templates.assessment(
                sight.answer,
                sight.title,
                sight.crumb,
                sight.chips,
                sight.url + "/trace",
                sight.taskUrl(),
                sight.url + "/processes",
                candidates.isEmpty()
                        ? ""
                        : sight.url + "/processes/" + candidates.get(0).process(),
                sight.url + "/compare",
                sight.taskUrl() + "/ask?from=" + sight.view.id(),
                compareError,
                sight.url);
    }

    /** Two to four processes side by side. */
    @GET
    @Path("compare")
    public Response compare(
            @PathParam("task") UUID task, @PathParam("id") UUID id, @QueryParam("process") List<String> wanted) {
        Sight sight = sight(task, id);
        List<Answer.Candidate> chosen = sight.answer.candidates().stream()
                .filter(c -> wanted.contains(c.process()))
                .toList();
        if (chosen.size() < 2 || chosen.size() > MOST_COMPARED) {
            String error = chosen.size() + (chosen.size() == 1 ? " process is" : " processes are")
                    + " ticked. Tick two to four to compare them.";
            return Response.status(422).entity(shown(sight, error)).build();
        }
        return Response.ok(Templates.compare(
                        sight.answer, chosen, sight.title, sight.crumb, sight.url, sight.url + "/processes"))
                .build();
    }

    @GET
    @Path("trace")
    public TemplateInstance trace(@PathParam("task") UUID task, @PathParam("id") UUID id) {
        Sight sight = sight(task, id);
        return Templates.trace(
                sight.answer,
                sight.title,
                sight.crumb,
                sight.url,
                "/tasks/" + task,
                "/rulebooks/" + sight.view.editionId() + "/rules");
    }

    @GET
    @Path("processes/{process}")
    public TemplateInstance candidate(
            @PathParam("task") UUID task, @PathParam("id") UUID id, @PathParam("process") String process) {
        Sight sight = sight(task, id);
        Answer.Candidate candidate = sight.answer.candidates().stream()
                .filter(c -> c.process().equals(process))
                .findFirst()
                .orElseThrow(() -> new NotFound("This assessment holds no process of that name that may clean the task;"
                        + " those ruled out stand on its page."));
        return Templates.candidate(
                sight.answer,
                candidate,
                sight.title,
                sight.crumb,
                sight.url,
                sight.url + "/trace",
                "/tasks/" + task,
                id.toString());
    }

    /** What all three pages show. */
    private record Sight(
            AssessmentView view, Answer answer, String title, String crumb, List<String> chips, String url) {

        String taskUrl() {
            return "/tasks/" + view.taskId();
        }
    }

    private Sight sight(UUID taskId, UUID id) {
        AssessmentView view = assessments.view(caller.workspaceId(), id);
        if (!view.taskId().equals(taskId)) {
            throw NotFound.of("assessment", id);
        }
        TaskView task = tasks.view(caller.workspaceId(), taskId);
        Answer answer = read(assessments.bytes(caller.workspaceId(), id));
        return new Sight(
                view,
                answer,
                task.title(),
                "assessed " + view.created().minute() + " UTC by "
                        + view.created().by(),
                chips(view, task),
                "/tasks/" + taskId + "/assessments/" + id);
    }

    /** What is known of the task in a few words; when it was changed since, that is what is said. */
    private List<String> chips(AssessmentView view, TaskView task) {
        if (task.version() != view.taskVersion()) {
            return List.of("the task was changed since");
        }
        Edition edition = editions.content(caller.workspaceId(), view.editionId());
        String document = tasks.document(caller.workspaceId(), task.id());
        Optional<GivenTask> given = GivenTask.tried(document.getBytes(java.nio.charset.StandardCharsets.UTF_8), edition)
                .task();
        return given.map(g -> TaskSummary.of(g.task(), document, edition).chips())
                .orElse(List.of());
    }

    private Answer read(byte[] bytes) {
        try {
            return json.readValue(bytes, Answer.class);
        } catch (IOException e) {
            throw new UncheckedIOException("an answer that was stored", e);
        }
    }

    @CheckedTemplate(basePath = "casework")
    static class Templates {
        static native TemplateInstance assessment(
                Answer answer,
                String title,
                String crumb,
                List<String> chips,
                String traceUrl,
                String taskUrl,
                String candidatesUrl,
                String firstUrl,
                String compareUrl,
                String askUrl,
                String compareError,
                String assessmentUrl);

        static native TemplateInstance compare(
                Answer answer,
                List<Answer.Candidate> chosen,
                String title,
                String crumb,
                String assessmentUrl,
                String candidatesUrl);

        static native TemplateInstance trace(
                Answer answer, String title, String crumb, String assessmentUrl, String taskUrl, String rulesUrl);

        static native TemplateInstance candidate(
                Answer answer,
                Answer.Candidate candidate,
                String title,
                String crumb,
                String assessmentUrl,
                String traceUrl,
                String taskUrl,
                String assessmentId);
    }
}
