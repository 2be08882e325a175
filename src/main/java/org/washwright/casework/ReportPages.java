package org.washwright.casework;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Roles;

/** The report of an answer, for people: to print, and as files. */
@Path("/tasks/{task}/assessments/{id}")
@RolesAllowed(Roles.ANYONE)
class ReportPages {
    private final Caller caller;
    private final AssessmentReports reports;

    ReportPages(Caller caller, AssessmentReports reports) {
        this.caller = caller;
        this.reports = reports;
    }

    @GET
    @Path("report")
    @Produces(MediaType.TEXT_HTML)
    public Response print(
            @PathParam("task") UUID task, @PathParam("id") UUID id, @QueryParam("process") String process) {
        return Response.ok(reports.page(caller, task, id, process))
                .type(MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"))
                .build();
    }

    @GET
    @Path("report.{ending}")
    public Response file(
            @PathParam("id") UUID id,
            @PathParam("ending") String ending,
            @QueryParam("process") String process,
            @Context Request request) {
        return reports.file(caller, id, ending, process, request);
    }
}
