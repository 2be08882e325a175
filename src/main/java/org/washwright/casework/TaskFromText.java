package org.washwright.casework;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.rulebook.Editions;

/** Takes a task that another page shows as text and opens it in the form. */
@Path("/tasks/from-text")
@RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
@Produces(MediaType.TEXT_HTML)
class TaskFromText {
    private final Caller caller;
    private final Editions editions;
    private final Tasks tasks;

    TaskFromText(Caller caller, Editions editions, Tasks tasks) {
        this.caller = caller;
        this.editions = editions;
        this.tasks = tasks;
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response open(@FormParam("document") @DefaultValue("") String document) {
        UUID workspace = caller.workspaceId();
        GivenTask given = GivenTask.read(
                document.getBytes(StandardCharsets.UTF_8),
                editions.content(workspace, editions.requireCurrent(workspace).id()));
        UUID id = tasks.add(workspace, Person.of(caller), given).id();
        return Response.seeOther(URI.create("/tasks/" + id + "/edit")).build();
    }
}
