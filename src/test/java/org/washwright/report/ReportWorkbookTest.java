package org.washwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.junit.jupiter.api.Test;
import org.washwright.assessment.Design;

/** The workbook as an independent reader of it sees it. */
class ReportWorkbookTest {

    private static final Report REPORT = Answers.designed("bearing-rings");

    @Test
    void it_has_a_sheet_for_each_thing_that_is_asked_for() throws IOException {
        assertEquals(
                List.of("task", "stages", "figures", "balances", "control", "proof", "candidates", "assumptions"),
                List.copyOf(read(REPORT).keySet()));
    }

    @Test
    void figures_are_numbers_with_their_unit_beside_them() throws IOException {
        List<Row> rows = read(REPORT).get("figures");
        Design design = REPORT.chosen().orElseThrow().design().orElseThrow();
        assertEquals(design.figures().size(), rows.size() - 1);
        for (int i = 0; i < design.figures().size(); i++) {
            Design.Figure figure = design.figures().get(i);
            Design.Kind kind = new Lookup(REPORT.answer()).kind(figure.figure());
            Row row = rows.get(i + 1);
            number(figure.low(), row, 3);
            number(figure.high(), row, 4);
            assertEquals(kind.label(), row.getCellText(1));
            assertEquals(kind.unit(), row.getCellText(5));
            assertEquals(figure.text(), row.getCellText(6));
            assertEquals(kind.formula(), row.getCellText(7));
            assertEquals(kind.source(), row.getCellText(8));
            figure.warnings().forEach(w -> assertTrue(row.getCellText(11).contains(w)));
        }
    }

    @Test
    void windows_balances_control_proof_candidates_and_assumptions_are_all_there() throws IOException {
        Map<String, List<Row>> book = read(REPORT);
        REPORT.chosen()
                .orElseThrow()
                .stages()
                .forEach(s -> s.windows().forEach(w -> assertTrue(holds(book.get("stages"), 3, w.text()), w.text())));
        Design design = REPORT.chosen().orElseThrow().design().orElseThrow();
        for (Design.Balance balance : design.balances()) {
            List<Row> sums = book.get("balances").stream()
                    .filter(r -> r.getCellText(0).equals(balance.name())
                            && r.getCellText(2).equals("sum"))
                    .toList();
            assertEquals(2, sums.size());
            assertEquals(
                    sums.get(0).getCell(4).asNumber().doubleValue(),
                    sums.get(1).getCell(4).asNumber().doubleValue(),
                    1e-9);
        }
        assertEquals(design.control().size(), book.get("control").size() - 1);
        design.proofs().forEach(p -> assertTrue(holds(book.get("proof"), 0, p.name())));
        REPORT.answer().candidates().forEach(c -> assertTrue(holds(book.get("candidates"), 0, c.name()), c.name()));
        REPORT.answer().ruledOut().forEach(c -> assertTrue(holds(book.get("candidates"), 0, c.name()), c.name()));
        REPORT.answer().inputs().forEach(i -> assertTrue(holds(book.get("assumptions"), 1, i.value()), i.value()));
        REPORT.answer().cautions().forEach(c -> assertTrue(holds(book.get("task"), 3, c.text()), c.text()));
        assertTrue(holds(book.get("task"), 3, REPORT.hash()));
    }

    /** What makes a cell a formula when a table of plain text is opened: OWASP, "CSV Injection". */
    @Test
    void text_that_looks_like_a_formula_stays_text() throws IOException {
        for (String first : List.of("=", "+", "-", "@", "\t")) {
            String title = first + "HYPERLINK(\"http://example.org\") \u0007";
            Map<String, List<Row>> book = read(Answers.of(title, title, REPORT.answer()));
            Cell cell = book.get("task").get(1).getCell(3);
            assertEquals(CellType.STRING, cell.getType());
            assertEquals("'" + title.replace("\u0007", "[U+0007]"), cell.asString());
        }
        read(REPORT)
                .values()
                .forEach(rows -> rows.forEach(
                        row -> row.forEach(cell -> assertFalse(cell != null && cell.getType() == CellType.FORMULA))));
    }

    private static void number(Double expected, Row row, int column) {
        if (expected == null) {
            assertTrue(row.getOptionalCell(column)
                    .filter(c -> c.getType() != CellType.EMPTY)
                    .isEmpty());
        } else {
            assertEquals(CellType.NUMBER, row.getCell(column).getType());
            assertEquals(
                    0,
                    BigDecimal.valueOf(expected).compareTo(row.getCell(column).asNumber()));
        }
    }

    private static boolean holds(List<Row> rows, int column, String text) {
        return rows.stream().anyMatch(r -> r.getCellText(column).equals(text));
    }

    private static Map<String, List<Row>> read(Report report) throws IOException {
        Map<String, List<Row>> sheets = new LinkedHashMap<>();
        try (ReadableWorkbook book = new ReadableWorkbook(new ByteArrayInputStream(ReportFormat.XLSX.write(report)))) {
            for (Sheet sheet : book.getSheets().toList()) {
                sheets.put(sheet.getName(), sheet.read());
            }
        }
        return sheets;
    }
}
