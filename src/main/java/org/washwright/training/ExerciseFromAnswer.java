package org.washwright.training;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.UUID;
import org.washwright.access.Roles;

/** The way from an answer to the form that makes an exercise of it. */
@Path("/tasks/{task}/assessments/{id}/exercise")
@RolesAllowed({Roles.CONSULTANT, Roles.REVIEWER, Roles.ENGINEER})
class ExerciseFromAnswer {

    @GET
    public Response form(@PathParam("id") UUID id) {
        return Response.seeOther(URI.create("/exercises/new?assessment=" + id)).build();
    }
}
