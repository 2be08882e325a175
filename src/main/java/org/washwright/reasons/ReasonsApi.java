package org.washwright.reasons;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
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
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.casework.Answers;
import org.washwright.casework.KeptAnswer;
import org.washwright.explain.proof.ProofCheck;
import org.washwright.explain.proof.Verdict;
import org.washwright.explain.why.NothingThere;
import org.washwright.explain.why.Why;
import org.washwright.explain.whynot.WhyNot;
import org.washwright.http.Tags;
import org.washwright.line.ProcessLine;
import org.washwright.problem.NotFound;

/** Reasons of answers, for programs. */
@Path("/api/assessments/{id}")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "Reasons", description = "Why answers say what they say, and why not something else.")
class ReasonsApi {
    private final Caller caller;
    private final Answers answers;
    private final Outcomes outcomes;

    ReasonsApi(Caller caller, Answers answers, Outcomes outcomes) {
        this.caller = caller;
        this.answers = answers;
        this.outcomes = outcomes;
    }

    @GET
    @Path("why")
    @Operation(
            summary = "Why the answer says something",
            description =
                    "of is a JSON pointer into the answer such as /cautions/0 or /candidates/0/stages/2; process is the"
                            + " id or name of a process instead. With neither, everything that can be asked.")
    @APIResponse(responseCode = "200", description = "Things that rest on one another, what was asked first.")
    @APIResponse(responseCode = "404", description = "The answer holds no such thing.")
    public Response why(
            @PathParam("id") UUID id,
            @QueryParam("of") @DefaultValue("") String of,
            @QueryParam("process") @DefaultValue("") String process,
            @Context Request request) {
        Why why = new Why(answers.open(caller.workspaceId(), id).answer());
        try {
            if (of.isEmpty() && process.isEmpty()) {
                return Tags.answer(request, why.statements()).build();
            }
            return Tags.answer(request, why.of(of.isEmpty() ? why.process(process) : of))
                    .build();
        } catch (NothingThere e) {
            throw new NotFound(e.getMessage() + " Ask without \"of\" for what can be asked.");
        }
    }

    @GET
    @Path("why-not")
    @Operation(
            summary = "Why a process does not stand, or why a rule did not fire",
            description =
                    "process or rule by id, or a rule as far as a process is concerned; with neither, every process that"
                            + " is not recommended.")
    @APIResponse(responseCode = "200", description = "Conditions that failed or are open, with their values.")
    @APIResponse(responseCode = "404", description = "The edition has no such process or rule.")
    public Response whyNot(
            @PathParam("id") UUID id,
            @QueryParam("process") @DefaultValue("") String process,
            @QueryParam("rule") @DefaultValue("") String rule,
            @Context Request request) {
        KeptAnswer kept = answers.open(caller.workspaceId(), id);
        WhyNot whyNot = outcomes.whyNot(caller.workspaceId(), kept);
        if (!rule.isEmpty()) {
            return Tags.answer(request, Outcomes.rule(whyNot, rule, process)).build();
        }
        if (!process.isEmpty()) {
            return Tags.answer(request, Outcomes.process(whyNot, process)).build();
        }
        return Tags.answer(
                        request,
                        whyNot.outcome().lines().stream()
                                .filter(l -> l.status() != ProcessLine.Status.RECOMMENDED)
                                .map(whyNot::brief)
                                .toList())
                .build();
    }

    @GET
    @Path("proof")
    @Operation(summary = "Derives the answer anew from its request and names what does not follow")
    @APIResponse(responseCode = "200", description = "Whether it holds, and every statement that does not.")
    public Verdict proof(@PathParam("id") UUID id) {
        KeptAnswer kept = answers.open(caller.workspaceId(), id);
        return ProofApi.check(new ProofCheck(kept.edition()), kept.frozen().bytes());
    }
}
