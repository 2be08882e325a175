package org.washwright.casework;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.washwright.access.Caller;
import org.washwright.access.Roles;

/** Files to describe a task in, for programs. */
@Path("/api/task-template")
@RolesAllowed(Roles.ANYONE)
@Tag(name = "Cleaning tasks")
class TaskTemplateApi {
    private final Caller caller;
    private final TaskFiles files;

    TaskTemplateApi(Caller caller, TaskFiles files) {
        this.caller = caller;
        this.files = files;
    }

    @GET
    @Produces(MediaType.WILDCARD)
    @Operation(summary = "A file to describe a task in, by the words of the current edition: yaml, json, csv or xlsx")
    public Response template(@QueryParam("format") @DefaultValue("yaml") String format) {
        return files.template(caller, format);
    }
}
