package org.washwright.editing.table;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.EntityTag;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.washwright.access.Caller;
import org.washwright.access.Roles;
import org.washwright.editing.OpenFile;
import org.washwright.exchange.TableDraft;
import org.washwright.exchange.TableText;
import org.washwright.exchange.TableWorkbook;
import org.washwright.problem.ProblemException;
import org.washwright.rulebook.Saved;

/** Decision tables as data and as workbooks, for programs. */
@Path("/api/editions/{id}/tables/{name}")
@RolesAllowed(Roles.ANYONE)
@Tag(name = "Tables", description = "Decision tables of an edition as data and as workbooks.")
class TablesApi {
    private static final String XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

    private final Caller caller;
    private final TableDesk desk;

    TablesApi(Caller caller, TableDesk desk) {
        this.caller = caller;
        this.desk = desk;
    }

    /** A table as data. */
    record Table(
            String path,
            String tag,
            Map<String, String> head,
            List<Column> columns,
            List<Row> rows,
            List<TableAnswer.Wrong> wrong) {}

    /** A column: its name in the file, what it is called, what its cells may hold. */
    record Column(String name, String label, String holds) {}

    /** A row: its line in the file, its cells, what it says when it is sound. */
    record Row(int line, List<String> cells, Optional<String> sentence) {}

    @GET
    @Produces(MediaType.APPLICATION_JSON)
    @Operation(summary = "A table as data: head, columns, rows, what each row says, and what is wrong by cell")
    @APIResponse(responseCode = "200", description = "The table; the ETag is that of its file.")
    @APIResponse(responseCode = "404", description = "No such table in this edition.")
    public Response table(@PathParam("id") UUID id, @PathParam("name") String name, @Context Request request) {
        OpenFile open = desk.open(caller, id, "tables/" + name);
        EntityTag tag = new EntityTag(open.tag());
        return Optional.ofNullable(request.evaluatePreconditions(tag))
                .orElseGet(() -> Response.ok(table(open)).tag(tag))
                .build();
    }

    private Table table(OpenFile open) {
        TableText text = TableText.of(open.text());
        TableDraft draft = TableDraft.of(text);
        TableSight sight = desk.sight(caller, open, draft);
        return new Table(
                open.path(),
                open.tag(),
                draft.head(),
                sight.columns().stream()
                        .map(c -> new Column(c.name(), c.label(), c.help()))
                        .toList(),
                sight.rows().stream()
                        .map(r -> new Row(
                                text.rows().get(r.number()).line(),
                                draft.rows().get(r.number()).cells(),
                                Optional.of(r.sentence()).filter(s -> !s.isEmpty())))
                        .toList(),
                TableAnswer.of(sight, Optional.empty()).wrong());
    }

    @GET
    @Path("workbook")
    @Produces({XLSX, MediaType.APPLICATION_JSON})
    @Operation(summary = "A table as a workbook of one sheet, every cell as text")
    @APIResponse(responseCode = "200", description = "The workbook; the ETag is that of the table's file.")
    public Response workbook(@PathParam("id") UUID id, @PathParam("name") String name) {
        OpenFile open = desk.open(caller, id, "tables/" + name);
        return Response.ok(TableWorkbook.write(open.text()))
                .type(XLSX)
                .tag(new EntityTag(open.tag()))
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        "attachment; filename=\"" + open.name().replaceFirst("\\.csv$", ".xlsx") + "\"")
                .build();
    }

    @PUT
    @Path("workbook")
    @Consumes(XLSX)
    @Produces(MediaType.APPLICATION_JSON)
    @RolesAllowed(Roles.CONSULTANT)
    @Operation(
            summary = "Give a table the cells of a workbook",
            description =
                    "Rows that say the same keep their bytes. Formulas, dates, links, macros, merged cells and further"
                            + " sheets are refused with the cell named.")
    @APIResponse(responseCode = "200", description = "Stored; the ETag names this state.")
    @APIResponse(responseCode = "412", description = "The table changed since it was read; the text is kept aside.")
    @APIResponse(responseCode = "422", description = "No workbook of a table; nothing was stored.")
    @APIResponse(responseCode = "428", description = "If-Match is missing.")
    public Response put(
            @PathParam("id") UUID id,
            @PathParam("name") String name,
            @HeaderParam("If-Match") String ifMatch,
            byte[] workbook) {
        if (ifMatch == null || !ifMatch.strip().matches("\"[0-9a-f]{1,64}\"")) {
            throw new ProblemException(
                    428,
                    "Condition missing",
                    "This change needs the header If-Match with the ETag of the table that was read last.",
                    List.of());
        }
        OpenFile open = desk.open(caller, id, "tables/" + name);
        String text = TableDesk.uploaded(open, name.replaceFirst("\\.csv$", ".xlsx"), workbook);
        Saved saved = desk.save(caller, open, ifMatch.strip().replace("\"", ""), text);
        return Response.ok(saved).tag(new EntityTag(saved.tag())).build();
    }
}
