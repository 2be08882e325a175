package org.washwright.reasons;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.casework.Answers;
import org.washwright.casework.KeptAnswer;
import org.washwright.explain.whynot.Outlook;
import org.washwright.explain.whynot.ProcessOutlook;
import org.washwright.explain.whynot.WhyNot;
import org.washwright.line.ProcessLine;
import org.washwright.rule.Rule;

/** Why a process does not stand and why a rule did not fire, for people. */
@Path("/tasks/{task}/assessments/{id}/why-not")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class WhyNotPages {
    private final Caller caller;
    private final Answers answers;
    private final Outcomes outcomes;

    WhyNotPages(Caller caller, Answers answers, Outcomes outcomes) {
        this.caller = caller;
        this.answers = answers;
        this.outcomes = outcomes;
    }

    @GET
    public TemplateInstance whyNot(
            @PathParam("task") UUID task,
            @PathParam("id") UUID id,
            @QueryParam("process") @DefaultValue("") String process,
            @QueryParam("rule") @DefaultValue("") String rule) {
        KeptAnswer kept = answers.open(caller.workspaceId(), task, id);
        WhyNot whyNot = outcomes.whyNot(caller.workspaceId(), kept);
        List<Choice> processes = whyNot.outcome().lines().stream()
                .sorted(Comparator.comparing(ProcessLine::status)
                        .reversed()
                        .thenComparing(l -> l.process().term().name()))
                .map(l -> new Choice(
                        l.process().id(),
                        l.process().term().name() + ", " + l.status().word(),
                        l.process().id().equals(process)))
                .toList();
        List<Choice> rules = kept.edition().rules().stream()
                .sorted(Comparator.comparing(Rule::id))
                .map(r -> new Choice(
                        r.id(),
                        r.title() + (r.title().contains(r.id()) ? "" : " (" + r.id() + ")"),
                        r.id().equals(rule)))
                .toList();
        List<ProcessOutlook> shownProcess =
                process.isEmpty() || !rule.isEmpty() ? List.of() : List.of(Outcomes.process(whyNot, process));
        List<Outlook> shownRule = rule.isEmpty() ? List.of() : List.of(Outcomes.rule(whyNot, rule, process));
        return Templates.whyNot(kept, processes, rules, shownProcess, shownRule);
    }

    /** Something to choose from a list. */
    record Choice(String value, String words, boolean chosen) {}

    @CheckedTemplate(basePath = "reasons")
    static class Templates {
        static native TemplateInstance whyNot(
                KeptAnswer kept,
                List<Choice> processes,
                List<Choice> rules,
                List<ProcessOutlook> process,
                List<Outlook> rule);
    }
}
