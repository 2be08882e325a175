package org.washwright.reasons;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.io.IOException;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.explain.proof.ProofCheck;
import org.washwright.explain.proof.Verdict;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;
import org.washwright.rulebook.Editions;

/** The proof check, for programs. */
@Path("/api/editions/{edition}/proof")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Reasons")
class ProofApi {
    private static final int MOST = 1000;

    private final Caller caller;
    private final Editions editions;

    ProofApi(Caller caller, Editions editions) {
        this.caller = caller;
        this.editions = editions;
    }

    @POST
    @Consumes(MediaType.APPLICATION_JSON)
    @Operation(
            summary =
                    "Derives an answer that comes along anew from its request and names what does not follow; nothing is stored")
    @APIResponse(responseCode = "200", description = "Whether it holds, and every statement that does not.")
    @APIResponse(responseCode = "422", description = "The body is no JSON object.")
    public Verdict sent(@PathParam("edition") UUID edition, byte[] answer) {
        return check(new ProofCheck(editions.content(caller.workspaceId(), edition)), answer);
    }

    /** Checks bytes; refused when they hold no JSON object. */
    static Verdict check(ProofCheck check, byte[] answer) {
        try {
            return check.check(answer == null ? new byte[0] : answer, MOST);
        } catch (IOException e) {
            throw new Invalid(List.of(ProblemError.at(
                    "/", "", e.getMessage(), "Send the bytes of an answer as they were fetched.", "no-answer")));
        }
    }
}
