package org.washwright.casework;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.problem.ProblemErrors;
import org.washwright.taskfile.TaskFormat;

/** Tasks as files, for programs. */
@Path("/api")
@RolesAllowed(Roles.ANYONE)
@Tag(name = "Cleaning tasks")
class TaskFilesApi {
    private static final String XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
    private static final String CSV = "text/csv";

    private final Caller caller;
    private final TaskFiles files;

    TaskFilesApi(Caller caller, TaskFiles files) {
        this.caller = caller;
        this.files = files;
    }

    /** What came of a file. */
    record Imported(List<TaskView> tasks) {}

    @POST
    @Path("tasks/import")
    @Consumes({MediaType.APPLICATION_JSON, TasksApi.YAML, TasksApi.OLD_YAML, TasksApi.TEXT_YAML, CSV, XLSX})
    @Produces(MediaType.APPLICATION_JSON)
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
    @Operation(
            summary = "Keep the tasks of a file: JSON, YAML, a table (CSV) or a workbook (XLSX)",
            description = "A table may hold up to 200 tasks, one a row. All of them are kept, or none.")
    @APIResponse(responseCode = "201", description = "The tasks made, in the order of the file.")
    @APIResponse(
            responseCode = "422",
            description = "Every error with its line, or sheet and cell; nothing was stored.")
    public Response bringIn(@HeaderParam(HttpHeaders.CONTENT_TYPE) String type, byte[] file) {
        String plain = type.replaceFirst(";.*", "").strip();
        TaskFormat format = Arrays.stream(TaskFormat.values())
                .filter(f -> f.mediaType().equals(plain))
                .findFirst()
                .orElse(TaskFormat.YAML);
        return Response.status(201)
                .entity(new Imported(files.bringIn(caller, ProblemErrors.BODY, format, file)))
                .build();
    }

    @GET
    @Path("tasks/{id}/file")
    @Produces(MediaType.WILDCARD)
    @Operation(summary = "A task as a file, with the words and units it was given in")
    public Response file(@PathParam("id") UUID id, @QueryParam("format") @DefaultValue("yaml") String format) {
        return files.file(caller, id, format);
    }

    @GET
    @Path("task-template")
    @Produces(MediaType.WILDCARD)
    @Operation(summary = "A file to describe a task in, by the words of the current edition: yaml, json, csv or xlsx")
    public Response template(@QueryParam("format") @DefaultValue("yaml") String format) {
        return files.template(caller, format);
    }
}
