package org.washwright.reasons;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.washwright.access.Caller;
import org.washwright.access.Person;
import org.washwright.access.Roles;
import org.washwright.assessment.FrozenAnswer;
import org.washwright.casework.Answers;
import org.washwright.casework.ChangeDesk;
import org.washwright.casework.ChangeForm;
import org.washwright.casework.KeptAnswer;
import org.washwright.casework.Variants;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.Place;
import org.washwright.explain.compare.Change;
import org.washwright.explain.compare.Comparing;
import org.washwright.explain.compare.TaskChanges;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;
import org.washwright.problem.ProblemErrors;

/**
 * What other values would give. The address holds the changes, so that it can be handed on: {@code ?set=POINTER=VALUE} once
 * for each. Nothing is kept until somebody asks for it.
 */
@Path("/tasks/{task}/assessments/{id}/what-if")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class WhatIfPages {
    private static final int UNPROCESSABLE = 422;
    private static final int TITLE_MOST = 200;

    /** Longest address of a page with its changes that every server and browser on the way takes. */
    private static final int LONGEST_LINK = 2_000;

    private static final String SUFFIX = ", variant: ";

    private final Caller caller;
    private final Answers answers;
    private final Variants variants;
    private final ChangeDesk desk;

    WhatIfPages(Caller caller, Answers answers, Variants variants, ChangeDesk desk) {
        this.caller = caller;
        this.answers = answers;
        this.variants = variants;
        this.desk = desk;
    }

    /** The form, and what the changes in the address give. */
    @GET
    public Response show(
            @PathParam("task") UUID task, @PathParam("id") UUID id, @QueryParam(ChangeDesk.SET) List<String> set) {
        KeptAnswer kept = answers.open(caller.workspaceId(), task, id);
        if (set.isEmpty()) {
            return form(kept, Map.of(), List.of(), List.of(), 200);
        }
        Diagnostics diagnostics = new Diagnostics();
        List<Change> changes = parsed(set, diagnostics);
        return tried(kept, changes, diagnostics, List.of(), Optional.empty());
    }

    private static List<Change> parsed(List<String> set, Diagnostics diagnostics) {
        List<Change> changes = new ArrayList<>();
        // One more than allowed is enough to say that there are too many.
        set.stream()
                .limit(TaskChanges.MOST + 1L)
                .forEach(s -> Change.parse(s, Place.ofFile(ProblemErrors.BODY), diagnostics)
                        .ifPresent(changes::add));
        return changes;
    }

    /** The answer with these changes; what is wrong comes back beside the fields, with what was typed. */
    private Response tried(
            KeptAnswer kept,
            List<Change> changes,
            Diagnostics diagnostics,
            List<ProblemError> problems,
            Optional<String> title) {
        Map<String, List<String>> typed = desk.typed(kept, changes);
        if (!diagnostics.hasErrors() || !changes.isEmpty()) {
            TaskChanges.apply(kept.asked().task(), changes, kept.edition(), diagnostics);
        }
        if (diagnostics.hasErrors()) {
            return form(kept, typed, diagnostics.all(), List.of(), UNPROCESSABLE);
        }
        try {
            FrozenAnswer other = variants.tried(caller.workspaceId(), kept, changes);
            ComparisonView view = ComparisonView.of(
                    Comparing.of(kept.frozen(), other),
                    ComparisonView.Panel.of("Before", kept),
                    ComparisonView.Panel.tried("With the change", kept),
                    kept.answer(),
                    other.answer());
            Response page = page(kept, typed, List.of(), problems, List.of(view), changes, title);
            return problems.isEmpty()
                    ? page
                    : Response.status(UNPROCESSABLE).entity(page.getEntity()).build();
        } catch (Invalid refusal) {
            return form(kept, typed, List.of(), refusal.errors(), UNPROCESSABLE);
        }
    }

    private Response form(
            KeptAnswer kept,
            Map<String, List<String>> typed,
            List<Diagnostic> wrong,
            List<ProblemError> problems,
            int status) {
        Response page = page(kept, typed, wrong, problems, List.of(), List.of(), Optional.empty());
        return Response.status(status).entity(page.getEntity()).build();
    }

    private Response page(
            KeptAnswer kept,
            Map<String, List<String>> typed,
            List<Diagnostic> wrong,
            List<ProblemError> problems,
            List<ComparisonView> views,
            List<Change> changes,
            Optional<String> title) {
        ChangeForm form = desk.form(caller.workspaceId(), Person.of(caller), kept, typed, wrong);
        List<String> sets = changes.stream().map(Change::text).toList();
        String named = title.orElseGet(() -> views.isEmpty() ? "" : named(kept, views.get(0)));
        return Response.ok(Templates.whatIf(
                        kept, form, problems, views, sets, link(kept, changes), named, caller.mayWrite()))
                .build();
    }

    /** What a variant may be called: the task, and its first change. */
    private static String named(KeptAnswer kept, ComparisonView view) {
        String change =
                view.it().asked().stream().findFirst().map(a -> a.after()).orElse("no change");
        String start = kept.task().title();
        int room = Math.max(0, TITLE_MOST - SUFFIX.length() - change.length());
        String title = (start.length() > room ? start.substring(0, room) : start) + SUFFIX + change;
        return title.length() > TITLE_MOST ? title.substring(0, TITLE_MOST) : title;
    }

    /** The address of these changes; empty when it would be too long. */
    private static String link(KeptAnswer kept, List<Change> changes) {
        String link = kept.url() + "/what-if"
                + changes.stream()
                        .map(c -> ChangeDesk.SET + "=" + URLEncoder.encode(c.text(), StandardCharsets.UTF_8))
                        .collect(Collectors.joining("&", changes.isEmpty() ? "" : "?", ""));
        return link.length() > LONGEST_LINK ? "" : link;
    }

    /** What the pressed button asks for: one more attribute, one less, or to see what moves. */
    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    public Response act(@PathParam("task") UUID task, @PathParam("id") UUID id, MultivaluedMap<String, String> posted) {
        KeptAnswer kept = answers.open(caller.workspaceId(), task, id);
        Map<String, List<String>> fields = new HashMap<>(posted);
        String[] asked = first(posted, "do").split(":", 2);
        List.of("do", "pick", "csrf-token").forEach(fields::remove);
        String about = asked.length > 1 ? asked[1] : "";
        if (asked[0].equals("drop")) {
            return form(kept, desk.dropped(fields, about), List.of(), List.of(), 200);
        }
        String pick = first(posted, "pick");
        if (asked[0].equals("add")) {
            return form(kept, desk.picked(caller.workspaceId(), kept, fields, pick), List.of(), List.of(), 200);
        }
        Diagnostics diagnostics = new Diagnostics();
        List<Change> changes = desk.changes(kept, fields, diagnostics);
        TaskChanges.apply(kept.asked().task(), changes, kept.edition(), diagnostics);
        if (diagnostics.hasErrors()) {
            return form(kept, fields, diagnostics.all(), List.of(), UNPROCESSABLE);
        }
        String link = link(kept, changes);
        return link.isEmpty()
                ? tried(kept, changes, diagnostics, List.of(), Optional.empty())
                : Response.seeOther(URI.create(link)).build();
    }

    private static String first(MultivaluedMap<String, String> posted, String name) {
        return Optional.ofNullable(posted.getFirst(name)).orElse("").strip();
    }

    /** Keeps the changed task and its answer, and lands on the comparison of both. */
    @POST
    @Path("keep")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed({Roles.ENGINEER, Roles.CONSULTANT})
    public Response keep(
            @PathParam("task") UUID task, @PathParam("id") UUID id, MultivaluedMap<String, String> posted) {
        KeptAnswer kept = answers.open(caller.workspaceId(), task, id);
        Diagnostics diagnostics = new Diagnostics();
        List<Change> changes = parsed(posted.getOrDefault(ChangeDesk.SET, List.of()), diagnostics);
        String title = first(posted, "title");
        if (diagnostics.hasErrors()) {
            return form(kept, desk.typed(kept, changes), diagnostics.all(), List.of(), UNPROCESSABLE);
        }
        try {
            KeptAnswer made = variants.keep(caller.workspaceId(), Person.of(caller), kept, title, changes);
            return Response.seeOther(URI.create(
                            kept.url() + "/compare-with/" + made.view().id()))
                    .build();
        } catch (Invalid refusal) {
            // Shown once more with what moves, so that only what is wrong has to be mended.
            return tried(kept, changes, diagnostics, refusal.errors(), Optional.of(title));
        }
    }

    @CheckedTemplate(basePath = "reasons")
    static class Templates {
        static native TemplateInstance whatIf(
                KeptAnswer kept,
                ChangeForm form,
                List<ProblemError> problems,
                List<ComparisonView> views,
                List<String> sets,
                String link,
                String title,
                boolean write);
    }
}
