package org.washwright.casework;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.problem.Invalid;
import org.washwright.problem.NotFound;
import org.washwright.problem.ProblemErrors;
import org.washwright.taskfile.TaskExport;
import org.washwright.taskfile.TaskFile;
import org.washwright.taskfile.TaskFormat;

/** Brings tasks in from files of any kind and takes them out again. */
@ApplicationScoped
class TaskFiles {
    private final Tasks tasks;
    private final FormDesk desk;

    TaskFiles(Tasks tasks, FormDesk desk) {
        this.tasks = tasks;
        this.desk = desk;
    }

    /** Keeps all tasks of a file whose name tells its kind, or none of them. */
    List<TaskView> bringIn(Caller caller, String name, byte[] bytes) {
        TaskFormat format = TaskFormat.byName(name).orElseThrow(() -> refused(Message.TASK_FORMAT, name));
        return bringIn(caller, name, format, bytes);
    }

    /** The same for a kind that is known. */
    List<TaskView> bringIn(Caller caller, String name, TaskFormat format, byte[] bytes) {
        Diagnostics diagnostics = new Diagnostics();
        List<TaskFile.Read> read = TaskFile.read(name, bytes, format, desk.edition(caller.workspaceId()), diagnostics);
        if (diagnostics.hasErrors()) {
            throw new Invalid(ProblemErrors.of(diagnostics.all()));
        }
        List<GivenTask> given =
                read.stream().map(r -> new GivenTask(r.document(), r.task())).toList();
        return tasks.addAll(caller.workspaceId(), Person.of(caller), given);
    }

    private static Invalid refused(Message message, String name) {
        Diagnostics diagnostics = new Diagnostics();
        diagnostics.add(message, Place.ofFile(ProblemErrors.BODY), name);
        return new Invalid(ProblemErrors.of(diagnostics.all()));
    }

    Response file(Caller caller, UUID id, String ending) {
        TaskFormat format = format(ending);
        TaskView task = tasks.view(caller.workspaceId(), id);
        String document = tasks.document(caller.workspaceId(), id);
        byte[] bytes = new TaskExport(desk.edition(caller.workspaceId())).task(GivenTask.nodes(document), format);
        return attachment(bytes, format, fileName(task.title()));
    }

    Response template(Caller caller, String ending) {
        TaskFormat format = format(ending);
        return attachment(new TaskExport(desk.edition(caller.workspaceId())).template(format), format, "cleaning-task");
    }

    private static TaskFormat format(String ending) {
        return TaskFormat.byEnding(ending)
                .orElseThrow(() -> NotFound.of("kind of file (" + TaskFormat.all() + ")", ending));
    }

    private static Response attachment(byte[] bytes, TaskFormat format, String name) {
        MediaType type = MediaType.valueOf(format.mediaType());
        return Response.ok(bytes)
                .type(format == TaskFormat.XLSX ? type : type.withCharset("UTF-8"))
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        "attachment; filename=\"" + name + "." + format.ending() + "\"")
                .build();
    }

    /** A title as every file system takes it. */
    private static String fileName(String title) {
        String plain =
                title.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        return plain.isEmpty() ? "task" : plain.length() > 60 ? plain.substring(0, 60) : plain;
    }
}
