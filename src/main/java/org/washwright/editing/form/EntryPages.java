package org.washwright.editing.form;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
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
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.document.edit.Change;
import org.washwright.document.edit.Data;
import org.washwright.document.edit.Pointers;
import org.washwright.document.edit.RefusedEdit;
import org.washwright.editing.Clash;
import org.washwright.editing.OpenFile;
import org.washwright.editing.Posted;
import org.washwright.editing.form.EntryDesk.Opened;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;
import org.washwright.problem.ProblemErrors;
import org.washwright.rulebook.FileChanged;

/** Words and values of an edition as forms: a list of entries, one of them open. */
@Path("/rulebooks/{id}/entries")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class EntryPages {
    private static final String NEW = "new";

    private final Caller caller;
    private final EntryDesk desk;

    EntryPages(Caller caller, EntryDesk desk) {
        this.caller = caller;
        this.desk = desk;
    }

    /** What a page shows besides the file: what was looked for, which entry is open, what was typed, and what was refused. */
    record Shown(String q, String entry, Optional<Posted> typed, List<ProblemError> errors, Optional<Clash> clash) {
        static Shown entry(String q, String entry) {
            return new Shown(q, entry, Optional.empty(), List.of(), Optional.empty());
        }
    }

    @GET
    public TemplateInstance entries(
            @PathParam("id") UUID id,
            @QueryParam("file") @DefaultValue("") String path,
            @QueryParam("q") @DefaultValue("") String q,
            @QueryParam("entry") @DefaultValue("") String entry) {
        return page(desk.open(caller, id, path), Shown.entry(q, entry));
    }

    private TemplateInstance page(OpenFile file, Shown shown) {
        try {
            Optional<EntrySight> sight = desk.forms(caller, file).map(opened -> sight(opened, shown));
            return Templates.entries(file, sight, shown.errors(), shown.clash());
        } catch (RefusedEdit unreadable) {
            return Templates.entries(file, Optional.empty(), ProblemErrors.of(unreadable.found()), shown.clash());
        }
    }

    private EntrySight sight(Opened opened, Shown shown) {
        FileShape shape = opened.shape();
        List<FileShape.Entry> all = shape.entries(opened.data());
        List<FileShape.Entry> found =
                all.stream().filter(e -> e.holds(shown.q())).toList();
        boolean ofHead = shown.entry().isEmpty();
        Optional<EntrySight.Form> head = shape.head().isEmpty()
                ? Optional.empty()
                : Optional.of(new EntrySight.Form(
                        "",
                        "The file as a whole",
                        "",
                        EntrySight.fields(
                                shape.head(),
                                opened.data(),
                                "",
                                ofHead ? shown.typed() : Optional.empty(),
                                shown.errors()),
                        List.of(),
                        false));
        return new EntrySight(shape.what(), found, all.size(), shown.q(), form(opened, all, shown), head);
    }

    private Optional<EntrySight.Form> form(Opened opened, List<FileShape.Entry> all, Shown shown) {
        FileShape shape = opened.shape();
        if (shown.entry().startsWith(NEW)) {
            String list = list(shape, shown.entry());
            return Optional.of(new EntrySight.Form(
                    "",
                    "New " + shape.what(),
                    list,
                    EntrySight.fields(shape.fields(), opened.data(), "-", shown.typed(), shown.errors()),
                    List.of(),
                    true));
        }
        return all.stream()
                .filter(e -> e.pointer().equals(shown.entry()))
                .findFirst()
                .map(e -> new EntrySight.Form(
                        e.pointer(),
                        e.name(),
                        e.list(),
                        EntrySight.fields(
                                fields(shape, opened.data(), e),
                                opened.data(),
                                e.pointer(),
                                shown.typed(),
                                shown.errors()),
                        desk.uses(caller, opened, e.id()),
                        false));
    }

    /** An area of the grading has no start and no figure. */
    private static List<FieldSpec> fields(FileShape shape, Data data, FileShape.Entry entry) {
        return data.at(entry.pointer() + "/criteria").isPresent()
                ? shape.fields().stream().limit(3).toList()
                : shape.fields();
    }

    private static String list(FileShape shape, String entry) {
        String list = entry.substring(NEW.length());
        return shape.lists().contains(list)
                ? list
                : shape.lists().get(shape.lists().size() - 1);
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed(Roles.CONSULTANT)
    public Response change(
            @PathParam("id") UUID id,
            @QueryParam("file") @DefaultValue("") String path,
            MultivaluedMap<String, String> fields) {
        Posted posted = new Posted(fields);
        OpenFile file = desk.open(caller, id, path);
        String entry = posted.word("entry");
        try {
            String at = save(desk.require(caller, file), entry, posted);
            String query = at.isEmpty() ? "" : "&entry=" + at.replace("/", "%2F") + "#entry";
            return Response.seeOther(URI.create(file.at("entries") + query)).build();
        } catch (FileChanged refusal) {
            Clash clash = Clash.of(refusal, "");
            return answer(
                    refusal.status(), file, new Shown("", entry, Optional.of(posted), List.of(), Optional.of(clash)));
        } catch (RefusedEdit refused) {
            List<ProblemError> errors = ProblemErrors.of(refused.found());
            return answer(422, file, new Shown("", entry, Optional.of(posted), errors, Optional.empty()));
        } catch (Invalid refused) {
            return answer(
                    refused.status(),
                    file,
                    new Shown("", entry, Optional.of(posted), refused.errors(), Optional.empty()));
        }
    }

    private Response answer(int status, OpenFile file, Shown shown) {
        return Response.status(status).entity(page(file, shown)).build();
    }

    /** Saves what the button asks for; the entry that the reader is left at. */
    private String save(Opened opened, String entry, Posted posted) {
        String tag = posted.word("tag");
        FileShape shape = opened.shape();
        Data data = opened.data();
        if (posted.asked().word().equals("remove")) {
            desk.save(caller, opened, tag, List.of(new Change.Remove(entry)), Optional.empty());
            return "";
        }
        if (entry.startsWith(NEW)) {
            String list = list(shape, entry);
            int at = data.at(list).orElse(Data.one("")) instanceof Data.Many many
                    ? many.items().size()
                    : 0;
            String pointer = Pointers.child(list, at);
            desk.save(caller, opened, tag, List.of(EntryForm.added(shape, list, data, posted)), Optional.of(pointer));
            return pointer;
        }
        List<FieldSpec> specs = entry.isEmpty() ? shape.head() : shape.fields();
        desk.save(caller, opened, tag, EntryForm.changed(specs, entry, data, posted), Optional.of(entry));
        return entry;
    }

    @CheckedTemplate(basePath = "editing")
    static class Templates {
        static native TemplateInstance entries(
                OpenFile open, Optional<EntrySight> sight, List<ProblemError> errors, Optional<Clash> clash);
    }
}
