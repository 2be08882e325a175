package org.washwright.casework;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;

/** Tasks as files, for people: bringing them in, taking them out, and the templates. */
@Path("/tasks")
@RolesAllowed(Roles.ANYONE)
class TaskFilePages {
    private final Caller caller;
    private final TaskFiles files;
    private final TaskPages pages;

    TaskFilePages(Caller caller, TaskFiles files, TaskPages pages) {
        this.caller = caller;
        this.files = files;
        this.pages = pages;
    }

    /** One task leads to its page, several to the list. */
    @POST
    @Path("import")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    @Produces(MediaType.TEXT_HTML)
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
    public Response bringIn(@RestForm("file") FileUpload file) {
        try {
            List<TaskView> made = files.bringIn(caller, file == null ? "" : file.fileName(), bytes(file));
            return Response.seeOther(URI.create(
                            made.size() == 1 ? "/tasks/" + made.get(0).id() : "/tasks"))
                    .build();
        } catch (Invalid refusal) {
            return pages.refused(refusal.errors());
        }
    }

    /** A task as a file, with the words and units it was given in. */
    @GET
    @Path("{id}/file.{ending}")
    public Response takeOut(@PathParam("id") UUID id, @PathParam("ending") String ending) {
        return files.file(caller, id, ending);
    }

    @GET
    @Path("template.{ending}")
    public Response template(@PathParam("ending") String ending) {
        return files.template(caller, ending);
    }

    private static byte[] bytes(FileUpload upload) {
        if (upload == null || upload.size() == 0) {
            throw new Invalid(List.of(ProblemError.at(
                    "file",
                    "",
                    "No file was chosen.",
                    "Choose a task in YAML, JSON, a table or a workbook.",
                    "missing-field")));
        }
        try {
            return Files.readAllBytes(upload.uploadedFile());
        } catch (IOException e) {
            throw new UncheckedIOException("an upload that was just written", e);
        }
    }
}
