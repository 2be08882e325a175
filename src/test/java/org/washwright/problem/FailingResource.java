package org.washwright.problem;

import jakarta.annotation.security.PermitAll;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;

/** Fails in every way a feature may fail; only there in tests. */
@Path("/")
public class FailingResource {
    @GET
    @PermitAll
    @Path("api/failing/unexpected")
    public String unexpected() {
        throw new IllegalStateException("secret inner workings");
    }

    @GET
    @PermitAll
    @Produces(MediaType.TEXT_HTML)
    @Path("failing/page")
    public String page() {
        throw new IllegalStateException("secret inner workings");
    }

    @GET
    @PermitAll
    @Path("api/failing/changed")
    public String changed() {
        throw new PreconditionFailed("The draft was saved by another since you read it; read it again.");
    }

    @GET
    @PermitAll
    @Path("api/failing/conflict")
    public String conflict() {
        throw new Conflict("An edition that is released cannot be edited; start a draft from it.");
    }

    /** Says nothing about roles, and so is closed. */
    @GET
    @Path("api/failing/forgotten")
    public String forgotten() {
        return "open";
    }
}
