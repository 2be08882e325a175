package org.washwright.editing.table;

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
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.editing.Clash;
import org.washwright.editing.OpenFile;
import org.washwright.editing.Posted;
import org.washwright.exchange.TableDraft;
import org.washwright.exchange.TableText;
import org.washwright.exchange.TableWorkbook;
import org.washwright.problem.Invalid;
import org.washwright.problem.ProblemError;
import org.washwright.rulebook.FileChanged;
import org.washwright.rulebook.Saved;

/** A decision table as a grid. Every button works without scripts; with them the same form is checked and saved while one types. */
@Path("/rulebooks/{id}/table")
@RolesAllowed(Roles.ANYONE)
@Produces(MediaType.TEXT_HTML)
class TablePages {
    private static final String XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    private final Caller caller;
    private final TableDesk desk;

    TablePages(Caller caller, TableDesk desk) {
        this.caller = caller;
        this.desk = desk;
    }

    @GET
    public TemplateInstance table(
            @PathParam("id") UUID id,
            @QueryParam("file") @DefaultValue("") String path,
            @QueryParam("row") @DefaultValue("-1") int row) {
        OpenFile open = desk.open(caller, id, path);
        return page(open, TableDraft.of(TableText.of(open.text())), Optional.empty(), List.of(), row);
    }

    private TemplateInstance page(
            OpenFile open, TableDraft draft, Optional<Clash> clash, List<ProblemError> errors, int row) {
        return Templates.table(open, desk.sight(caller, open, draft), clash, errors, row);
    }

    @POST
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @RolesAllowed(Roles.CONSULTANT)
    public Response change(
            @PathParam("id") UUID id,
            @QueryParam("file") @DefaultValue("") String path,
            MultivaluedMap<String, String> fields) {
        Posted posted = new Posted(fields);
        OpenFile open = desk.open(caller, id, path);
        TableForm.Acted acted = TableForm.act(TableForm.draft(posted), posted);
        String text = TableDesk.text(open, posted.word("tag"), acted.draft());
        try {
            desk.save(caller, open, posted.word("tag"), text);
            String row = acted.row() < 0 ? "" : "&row=" + acted.row() + "#row-" + acted.row();
            return Response.seeOther(URI.create(open.at("table") + row)).build();
        } catch (FileChanged refusal) {
            TableDraft mine = TableDraft.of(TableText.of(text)).onto(TableText.of(open.text()));
            return Response.status(refusal.status())
                    .entity(page(open, mine, Optional.of(Clash.of(refusal, text)), List.of(), -1))
                    .build();
        } catch (Invalid refusal) {
            return Response.status(refusal.status())
                    .entity(page(open, acted.draft(), Optional.empty(), refusal.errors(), -1))
                    .build();
        }
    }

    @POST
    @Path("check")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Produces(MediaType.APPLICATION_JSON)
    @RolesAllowed(Roles.CONSULTANT)
    public TableAnswer check(
            @PathParam("id") UUID id,
            @QueryParam("file") @DefaultValue("") String path,
            MultivaluedMap<String, String> fields) {
        OpenFile open = desk.open(caller, id, path);
        return TableAnswer.of(desk.sight(caller, open, TableForm.draft(new Posted(fields))), Optional.empty());
    }

    @POST
    @Path("save")
    @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
    @Produces(MediaType.APPLICATION_JSON)
    @RolesAllowed(Roles.CONSULTANT)
    public TableAnswer save(
            @PathParam("id") UUID id,
            @QueryParam("file") @DefaultValue("") String path,
            MultivaluedMap<String, String> fields) {
        Posted posted = new Posted(fields);
        OpenFile open = desk.open(caller, id, path);
        TableDraft draft = TableForm.draft(posted);
        Saved saved = desk.save(caller, open, posted.word("tag"), TableDesk.text(open, posted.word("tag"), draft));
        return TableAnswer.of(desk.sight(caller, open, draft), Optional.of(saved.tag()));
    }

    @POST
    @Path("upload")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    @RolesAllowed(Roles.CONSULTANT)
    public Response upload(
            @PathParam("id") UUID id,
            @QueryParam("file") @DefaultValue("") String path,
            @RestForm("tag") String tag,
            @RestForm("sheet") FileUpload sheet) {
        OpenFile open = desk.open(caller, id, path);
        TableDraft now = TableDraft.of(TableText.of(open.text()));
        try {
            String text = TableDesk.uploaded(open, name(sheet), bytes(sheet));
            try {
                desk.save(caller, open, String.valueOf(tag), text);
                return Response.seeOther(URI.create(open.at("table"))).build();
            } catch (FileChanged refusal) {
                TableDraft mine = TableDraft.of(TableText.of(text)).onto(TableText.of(open.text()));
                return Response.status(refusal.status())
                        .entity(page(open, mine, Optional.of(Clash.of(refusal, text)), List.of(), -1))
                        .build();
            }
        } catch (Invalid refusal) {
            return Response.status(refusal.status())
                    .entity(page(open, now, Optional.empty(), refusal.errors(), -1))
                    .build();
        }
    }

    private static String name(FileUpload sheet) {
        String name = sheet == null || sheet.fileName() == null ? "" : sheet.fileName();
        return name.replaceAll("^.*[/\\\\]", "").replaceAll("[^A-Za-z0-9._ -]", "_");
    }

    private static byte[] bytes(FileUpload sheet) {
        if (sheet == null || sheet.size() == 0) {
            throw new Invalid(List.of(ProblemError.at(
                    "sheet", "", "No file was chosen.", "Choose a workbook (.xlsx) or a .csv.", "missing-field")));
        }
        try {
            return Files.readAllBytes(sheet.uploadedFile());
        } catch (IOException e) {
            throw new UncheckedIOException("an upload that was just written", e);
        }
    }

    @GET
    @Path("csv")
    @Produces({"text/csv", MediaType.TEXT_HTML})
    public Response csv(@PathParam("id") UUID id, @QueryParam("file") @DefaultValue("") String path) {
        OpenFile open = desk.open(caller, id, path);
        return file(TableDesk.bytes(open), "text/csv; charset=UTF-8", open.name());
    }

    @GET
    @Path("workbook")
    @Produces({XLSX, MediaType.TEXT_HTML})
    public Response workbook(@PathParam("id") UUID id, @QueryParam("file") @DefaultValue("") String path) {
        OpenFile open = desk.open(caller, id, path);
        return file(TableWorkbook.write(open.text()), XLSX, open.name().replaceFirst("\\.csv$", ".xlsx"));
    }

    private static Response file(byte[] bytes, String type, String name) {
        return Response.ok(bytes)
                .type(type)
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + name + "\"")
                .build();
    }

    @CheckedTemplate(basePath = "editing")
    static class Templates {
        static native TemplateInstance table(
                OpenFile open, TableSight table, Optional<Clash> clash, List<ProblemError> errors, int row);
    }
}
