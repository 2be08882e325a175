package org.washwright.access;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.UUID;

/** Tells a program who it is here. */
@Path("/api/me")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.APPLICATION_JSON)
class MeApi {
    private final Caller caller;

    MeApi(Caller caller) {
        this.caller = caller;
    }

    @GET
    public Me me() {
        return new Me(caller.accountId(), caller.name(), caller.roles(), caller.workspaceId());
    }

    /** The caller, as told to programs. */
    record Me(UUID accountId, String name, List<String> roles, UUID workspaceId) {}
}
