package org.washwright.reasons;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.problem.Invalid;
import org.washwright.problem.PreconditionFailed;
import org.washwright.problem.ProblemError;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;
import org.washwright.rulebook.EditionView;
import org.washwright.rulebook.Editions;

/** Marks by the rule they stand at, for the consultant. */
@Path("/marks")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class MarkPages {
    private static final String NO_RULE = "";

    private final Caller caller;
    private final Marks marks;
    private final Editions editions;

    MarkPages(Caller caller, Marks marks, Editions editions) {
        this.caller = caller;
        this.marks = marks;
        this.editions = editions;
    }

    @GET
    public TemplateInstance list(@QueryParam("rule") @DefaultValue("") String rule) {
        return list(rule, new Failed("", "", List.of()));
    }

    @POST
    @Path("{id}")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Roles.CONSULTANT, Roles.REVIEWER})
    public Response settle(
            @PathParam("id") UUID id,
            @FormParam("version") @DefaultValue("-1") int version,
            @FormParam("state") String state,
            @FormParam("reply") String reply,
            @FormParam("rule") @DefaultValue("") String rule) {
        try {
            MarkForm.Settled settled = MarkForm.settled(state, reply);
            marks.settle(caller.workspaceId(), id, version, settled.state(), settled.reply(), Person.of(caller));
            String query = rule.matches("[A-Za-z0-9_-]{1,80}") ? "?rule=" + rule : "";
            return Response.seeOther(URI.create("/marks" + query + "#mark-" + id))
                    .build();
        } catch (Invalid refusal) {
            return Response.status(422)
                    .entity(list(rule, new Failed(id.toString(), reply, refusal.errors())))
                    .build();
        } catch (PreconditionFailed changed) {
            ProblemError error = ProblemError.at(
                    "/reply",
                    "",
                    "Somebody settled this mark in the meantime.",
                    "Read what stands there now, then send yours again.",
                    "changed");
            return Response.status(412)
                    .entity(list(rule, new Failed(id.toString(), reply, List.of(error))))
                    .build();
        }
    }

    /**
     * A reply that could not be kept.
     *
     * @param mark id of its mark; empty when there is none
     */
    record Failed(String mark, String reply, List<ProblemError> errors) {}

    /** A rule with the marks that stand at it; marks on what no rule says stand together. */
    record AtRule(String rule, String title, String url, List<MarkView> marks) {}

    private TemplateInstance list(String rule, Failed failed) {
        Map<String, List<MarkView>> byRule = new TreeMap<>();
        List<MarkView> all = marks.list(caller.workspaceId());
        for (MarkView mark : all) {
            List<String> rules = mark.rules().isEmpty() ? List.of(NO_RULE) : mark.rules();
            // A mark on what several rules say together stands at the first; its others are named with it.
            rules.stream()
                    .filter(r -> rule.isEmpty() || r.equals(rule))
                    .limit(1)
                    .forEach(r ->
                            byRule.computeIfAbsent(r, k -> new ArrayList<>()).add(mark));
        }
        Optional<EditionView> current = editions.current(caller.workspaceId());
        Optional<Edition> edition = current.map(c -> editions.content(caller.workspaceId(), c.id()));
        List<AtRule> rules = new ArrayList<>();
        byRule.forEach((id, at) -> rules.add(new AtRule(
                id,
                title(id, edition),
                current.filter(c -> !id.isEmpty())
                        .map(c -> "/rulebooks/" + c.id() + "/rules?q=" + id + "#" + id)
                        .orElse(""),
                at)));
        long open = all.stream().filter(MarkView::isOpen).count();
        boolean mayAnswer = caller.has(Roles.CONSULTANT) || caller.has(Roles.REVIEWER);
        return Templates.marks(rules, (int) open, rule, mayAnswer, failed);
    }

    private static String title(String rule, Optional<Edition> edition) {
        if (rule.isEmpty()) {
            return "Figures and catalogue: no rule says these";
        }
        return edition.flatMap(
                        e -> e.rules().stream().filter(r -> r.id().equals(rule)).findFirst())
                .map(Rule::title)
                .orElse("A rule that the current edition no longer has");
    }

    @CheckedTemplate(basePath = "reasons")
    static class Templates {
        static native TemplateInstance marks(
                List<AtRule> rules, int open, String rule, boolean mayAnswer, Failed failed);
    }
}
