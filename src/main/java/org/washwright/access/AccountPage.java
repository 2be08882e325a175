package org.washwright.access;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.washwright.problem.ProblemError;

/** Who I am here, and the tokens of my programs. */
@Path("/account")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class AccountPage {
    private final Caller caller;
    private final Tokens tokens;

    AccountPage(Caller caller, Tokens tokens) {
        this.caller = caller;
        this.tokens = tokens;
    }

    @GET
    public TemplateInstance show() {
        return page(Optional.empty());
    }

    /** Answers with the page itself, not with a redirect: the new token is shown in this answer and never again. */
    @POST
    @Path("tokens")
    public Response create(
            @FormParam("label") @DefaultValue("") String label, @FormParam("days") @DefaultValue("") String days) {
        TokenRequest request = TokenRequest.ofForm(label, days);
        if (!request.errors().isEmpty()) {
            View view = new View(
                    mine(), Optional.empty(), label, days, text(request.labelError()), text(request.daysError()));
            return Response.status(422).entity(Templates.account(view)).build();
        }
        Tokens.NewToken made = tokens.create(caller.workspaceId(), caller.accountId(), request.label(), request.days());
        return Response.ok(page(Optional.of(made))).build();
    }

    @POST
    @Path("tokens/{id}/revoke")
    public Response revoke(@PathParam("id") UUID id) {
        tokens.revoke(caller.workspaceId(), caller.accountId(), id);
        return Response.seeOther(URI.create("/account")).build();
    }

    private TemplateInstance page(Optional<Tokens.NewToken> made) {
        String days = Integer.toString(TokenRequest.USUAL_DAYS);
        return Templates.account(new View(mine(), made, "", days, Optional.empty(), Optional.empty()));
    }

    private List<Tokens.KnownToken> mine() {
        return tokens.of(caller.workspaceId(), caller.accountId());
    }

    private static Optional<String> text(Optional<ProblemError> error) {
        return error.map(e -> e.message() + " " + e.advice());
    }

    /** What the page shows. */
    record View(
            List<Tokens.KnownToken> tokens,
            Optional<Tokens.NewToken> made,
            String label,
            String days,
            Optional<String> labelError,
            Optional<String> daysError) {
        public LocalDate day(Instant instant) {
            return LocalDate.ofInstant(instant, ZoneOffset.UTC);
        }
    }

    @CheckedTemplate(basePath = "access")
    static class Templates {
        static native TemplateInstance account(View view);
    }
}
