package org.washwright.casework;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.http.Tags;
import org.washwright.rulebook.Editions;
import org.washwright.task.TaskSchema;

/** What a task may look like, for programs that write one. */
@Path("/api/task-schema")
@RolesAllowed(Roles.ANYONE)
@Produces("application/schema+json")
@Tag(name = "Cleaning tasks")
class TaskSchemaApi {
    private final Caller caller;
    private final Editions editions;

    TaskSchemaApi(Caller caller, Editions editions) {
        this.caller = caller;
        this.editions = editions;
    }

    @GET
    @Operation(summary = "JSON Schema (2020-12) of a cleaning task by the words of the current edition")
    public Response schema(@Context Request request) {
        var current = editions.requireCurrent(caller.workspaceId());
        return Tags.answer(request, TaskSchema.of(editions.content(caller.workspaceId(), current.id())))
                .build();
    }
}
