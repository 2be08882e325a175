package org.washwright.casework;

import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.EntityTag;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.assessment.Answer;
import org.washwright.problem.NotFound;
import org.washwright.report.Report;
import org.washwright.report.ReportFormat;
import org.washwright.report.ReportHtml;
import org.washwright.rule.Edition;
import org.washwright.rulebook.Editions;
import org.washwright.task.CleaningTask;

/** Reports of kept answers, as files and as a page. */
@ApplicationScoped
class AssessmentReports {
    private final Tasks tasks;
    private final Assessments assessments;
    private final Editions editions;
    private final ObjectMapper json;

    AssessmentReports(Tasks tasks, Assessments assessments, Editions editions, ObjectMapper json) {
        this.tasks = tasks;
        this.assessments = assessments;
        this.editions = editions;
        this.json = json;
    }

    /** What a report is made of, and the tag it stands under. */
    private record Kept(AssessmentView view, TaskView task) {
        /** The answer's hash; title and notes come from the task, so a change of the task shows in the tag. */
        EntityTag tag() {
            boolean same = task.version() == view.taskVersion();
            return new EntityTag(same ? view.answerHash() : view.answerHash() + "-v" + task.version());
        }
    }

    /** The report as a file of a kind, unless the caller holds it already. */
    Response file(Caller caller, UUID id, String ending, String process, Request request) {
        ReportFormat format = ReportFormat.byEnding(ending)
                .orElseThrow(() -> NotFound.of("kind of report (" + ReportFormat.all() + ")", ending));
        Kept kept = kept(caller, id);
        Response.ResponseBuilder known = request.evaluatePreconditions(kept.tag());
        if (known != null) {
            return known.build();
        }
        Report report = report(caller, kept, process);
        return Response.ok(format.write(report))
                .type(format.mediaType())
                .tag(kept.tag())
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        "attachment; filename=\"" + report.fileName() + "." + format.ending() + "\"")
                .header(AssessmentsApi.HASH, kept.view().answerHash())
                .build();
    }

    /** The same to look at and to print from the browser. */
    String page(Caller caller, UUID taskId, UUID id, String process) {
        Kept kept = kept(caller, id);
        if (!kept.task().id().equals(taskId)) {
            throw NotFound.of("assessment", id);
        }
        return ReportHtml.page(report(caller, kept, process));
    }

    private Kept kept(Caller caller, UUID id) {
        AssessmentView view = assessments.view(caller.workspaceId(), id);
        return new Kept(view, tasks.view(caller.workspaceId(), view.taskId()));
    }

    private Report report(Caller caller, Kept kept, String process) {
        Answer answer = read(assessments.bytes(caller.workspaceId(), kept.view().id()));
        String title = kept.task().title();
        String hash = kept.view().answerHash();
        String notes = notes(caller, kept);
        if (process == null || process.isEmpty()) {
            return Report.ofFirst(title, notes, hash, answer);
        }
        return Report.of(title, notes, hash, answer, process)
                .orElseThrow(
                        () -> new NotFound(
                                "This assessment holds no process \"" + process
                                        + "\" that may clean the task; its answer lists those that may, and why others are ruled out."));
    }

    /** Notes of the task, which are no part of the answer; when it was changed since, that is what is said. */
    private String notes(Caller caller, Kept kept) {
        if (kept.task().version() != kept.view().taskVersion()) {
            return "The task was changed after this answer; what follows is the task as it was answered.";
        }
        Edition edition = editions.content(caller.workspaceId(), kept.view().editionId());
        byte[] document = tasks.document(caller.workspaceId(), kept.task().id()).getBytes(StandardCharsets.UTF_8);
        Optional<CleaningTask> task = GivenTask.tried(document, edition).task().map(GivenTask::task);
        return task.map(CleaningTask::notes).orElse("");
    }

    private Answer read(byte[] bytes) {
        try {
            return json.readValue(bytes, Answer.class);
        } catch (IOException e) {
            throw new UncheckedIOException("an answer that was stored", e);
        }
    }
}
