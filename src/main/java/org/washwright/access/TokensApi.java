package org.washwright.access;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import org.washwright.problem.Invalid;
import org.washwright.problem.Refused;

/** The tokens of the caller, for programs. */
@Path("/api/tokens")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.APPLICATION_JSON)
@Consumes(MediaType.APPLICATION_JSON)
class TokensApi {
    private final Caller caller;
    private final Tokens tokens;

    TokensApi(Caller caller, Tokens tokens) {
        this.caller = caller;
        this.tokens = tokens;
    }

    @POST
    public Response create(TokenBody body) {
        if (!caller.bySession()) {
            throw new Refused("A token cannot make further tokens; sign in with your password to make one.");
        }
        TokenRequest request = Optional.ofNullable(body).orElse(TokenBody.EMPTY).request();
        if (!request.errors().isEmpty()) {
            throw new Invalid(request.errors());
        }
        Tokens.NewToken made = tokens.create(caller.workspaceId(), caller.accountId(), request.label(), request.days());
        return Response.created(URI.create("/api/tokens/" + made.id()))
                .entity(made)
                .build();
    }

    @DELETE
    @Path("{id}")
    public void revoke(@PathParam("id") UUID id) {
        tokens.revoke(caller.workspaceId(), caller.accountId(), id);
    }

    /** The body that asks for a token. */
    record TokenBody(Optional<String> label, OptionalInt expiresInDays) {
        static final TokenBody EMPTY = new TokenBody(Optional.empty(), OptionalInt.empty());

        TokenRequest request() {
            return new TokenRequest(label.orElse("").strip(), expiresInDays.orElse(TokenRequest.USUAL_DAYS));
        }
    }
}
