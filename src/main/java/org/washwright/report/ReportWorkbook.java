package org.washwright.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.washwright.assessment.Answer;
import org.washwright.assessment.Design;
import org.washwright.assessment.Design.Figure;
import org.washwright.assessment.Design.Flow;
import org.washwright.assessment.Design.Kind;

/** The report as a workbook: numbers are numbers, with their unit beside them, so that one can go on calculating. */
final class ReportWorkbook {

    private final Report report;
    private final Answer answer;
    private final Lookup lookup;

    ReportWorkbook(Report report) {
        this.report = report;
        this.answer = report.answer();
        this.lookup = new Lookup(answer);
    }

    byte[] write() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(out, "Washwright", "1.0")) {
            task(sheet(book, "task", 26, 34, 34, 50));
            stages(sheet(book, "stages", 8, 34, 18, 40, 14, 14, 12, 24));
            figures(sheet(book, "figures", 20, 34, 30, 14, 14, 12, 26, 50, 40, 40, 60, 50));
            balances(sheet(book, "balances", 20, 8, 36, 30, 14, 12));
            control(sheet(book, "control", 30, 30, 30, 24, 60));
            proof(sheet(book, "proof", 34, 40, 40, 34, 30, 24, 40, 10));
            candidates(sheet(book, "candidates", 46, 16, 12, 12, 40, 20, 12, 12, 12));
            assumptions(sheet(book, "assumptions", 40, 24, 50, 12, 40));
            book.finish();
        } catch (IOException e) {
            throw new UncheckedIOException("a workbook in memory", e);
        }
        return out.toByteArray();
    }

    private void task(Rows rows) {
        rows.head("group", "of", "attribute", "value", "from");
        rows.row("report", "", "title", report.title(), "");
        rows.row("report", "", "notes", report.notes(), "");
        rows.row("report", "", "answer", answer.headline().sentence(), "");
        rows.row("report", "", "answer hash", report.hash(), "");
        rows.row("report", "", "request hash", answer.requestHash(), "");
        rows.row("report", "", "edition", answer.request().edition(), "");
        rows.row("report", "", "edition hash", answer.request().meaningHash(), "");
        rows.row("report", "", "as of", answer.request().asOf(), "");
        rows.row(
                "report",
                "",
                "line",
                report.chosen().map(Answer.Candidate::name).orElse("none stands"),
                "");
        rows.row(
                "report",
                "",
                "status",
                report.chosen().map(Answer.Candidate::status).orElse(""),
                "");
        List<Answer.Sentence> cautions = new ArrayList<>();
        report.chosen().ifPresent(c -> cautions.addAll(c.cautions()));
        answer.cautions().stream().filter(c -> !cautions.contains(c)).forEach(cautions::add);
        cautions.forEach(c -> rows.row("take care", "", "", c.text(), lookup.ruleIds(c.firings())));
        rows.row("take care", "", "", LinePart.ALWAYS, "");
        for (Answer.Fact fact : answer.facts()) {
            if (TaskPart.isOfTask(fact)) {
                String group = Lookup.group(fact.id().replaceFirst("/.*", ""));
                fact.attributes()
                        .forEach(a -> rows.row(
                                group,
                                fact.name(),
                                a.label(),
                                a.knowledge().equals("unknown") ? "not known" : a.value(),
                                Lookup.origin(a)));
            }
        }
    }

    private void stages(Rows rows) {
        rows.head("stage", "name", "what", "setting", "low", "high", "unit", "rules");
        List<Answer.Stage> stages =
                report.chosen().map(Answer.Candidate::stages).orElse(List.of());
        for (int i = 0; i < stages.size(); i++) {
            Answer.Stage stage = stages.get(i);
            double place = i + 1;
            String name = stage.name() + (stage.certain() ? "" : " (if needed)");
            String placed = lookup.ruleIds(stage.firings());
            for (Answer.Factor f : stage.factors()) {
                rows.row(place, name, f.factor(), f.words(), "", "", "", placed);
            }
            for (Answer.Window w : stage.windows()) {
                rows.row(
                        place,
                        name,
                        "window: " + w.name(),
                        w.text(),
                        w.low(),
                        w.high(),
                        w.unit(),
                        lookup.ruleIds(w.firings()));
            }
        }
    }

    private void figures(Rows rows) {
        rows.head(
                "group",
                "figure",
                "where",
                "low",
                "high",
                "unit",
                "as text",
                "formula",
                "source",
                "holds for",
                "computed from",
                "warnings");
        for (Figure figure : design(Design::figures)) {
            Kind kind = lookup.kind(figure.figure());
            rows.row(
                    kind.group(),
                    kind.label(),
                    Lookup.stage(report.chosen(), figure.stage()),
                    figure.low(),
                    figure.high(),
                    kind.unit(),
                    figure.text(),
                    kind.formula(),
                    kind.source(),
                    kind.holds(),
                    figure.inputs().stream()
                            .map(ref -> lookup.input(ref, report.chosen()))
                            .collect(Collectors.joining("; ")),
                    String.join("; ", figure.warnings()));
        }
        if (report.design().isEmpty()) {
            rows.row("", FiguresPart.NOTHING_TO_SIZE_BY);
        }
    }

    private void balances(Rows rows) {
        rows.head("balance", "side", "flow", "where", "amount", "unit");
        for (Design.Balance balance : design(Design::balances)) {
            side(rows, balance, "in", balance.in());
            side(rows, balance, "out", balance.out());
        }
    }

    private void side(Rows rows, Design.Balance balance, String side, List<Flow> flows) {
        for (Flow flow : flows) {
            rows.row(
                    balance.name(),
                    side,
                    flow.name(),
                    Lookup.stage(report.chosen(), flow.stage()),
                    flow.amount(),
                    balance.unit());
        }
        rows.row(
                balance.name(),
                side,
                "sum",
                "",
                flows.stream().mapToDouble(Flow::amount).sum(),
                balance.unit());
    }

    private void control(Rows rows) {
        rows.head("bath", "measure", "within", "how often", "how, and what to do");
        design(Design::control)
                .forEach(c -> rows.row(
                        Lookup.stage(report.chosen(), c.stage()), c.measure(), c.limits(), c.every(), c.how()));
    }

    private void proof(Rows rows) {
        rows.head(
                "method",
                "proves",
                "accepted when",
                "parts to test",
                "how often",
                "detection limit",
                "can't see",
                "enough");
        design(Design::proofs)
                .forEach(p -> rows.row(
                        p.name(),
                        p.sees(),
                        p.acceptance(),
                        p.sampling(),
                        p.frequency(),
                        p.limit(),
                        p.blindTo(),
                        p.enough() ? "yes" : "no"));
        answer.verifications().forEach(v -> rows.row("rule " + lookup.ruleIds(v.firings()), v.text()));
    }

    private void candidates(Rows rows) {
        List<Object> head = new ArrayList<>(List.of("process", "status", "points, low", "points, high"));
        answer.candidates().stream().findFirst().stream()
                .flatMap(c -> c.areas().stream())
                .forEach(a -> {
                    head.add(a.name() + ", low");
                    head.add(a.name() + ", high");
                });
        head.add("reasons");
        rows.head(head.toArray());
        for (Answer.Candidate c : answer.candidates()) {
            List<Object> cells = new ArrayList<>(List.of(c.name(), c.status(), c.low(), c.high()));
            c.areas().forEach(a -> {
                cells.add(a.low());
                cells.add(a.high());
            });
            cells.add(text(c.conditions()));
            rows.row(cells.toArray());
        }
        int areas = (head.size() - 5) / 2;
        for (Answer.RuledOut out : answer.ruledOut()) {
            List<Object> cells = new ArrayList<>(List.of(out.name(), "ruled out", "", ""));
            for (int i = 0; i < 2 * areas; i++) {
                cells.add("");
            }
            cells.add(text(out.reasons()));
            rows.row(cells.toArray());
        }
    }

    private void assumptions(Rows rows) {
        rows.head("what", "value", "source", "changed", "reference");
        answer.inputs().forEach(i -> rows.row(i.label(), i.value(), i.source(), i.changed() ? "yes" : "", i.ref()));
        answer.request().assumptions().stream()
                .filter(a -> answer.inputs().stream().noneMatch(i -> i.ref().equals("assumption/" + a.id())))
                .forEach(a -> rows.row(a.id(), a.value(), "", "yes", "assumption/" + a.id()));
    }

    private static String text(List<Answer.Sentence> sentences) {
        return sentences.stream().map(Answer.Sentence::text).collect(Collectors.joining(" "));
    }

    private <T> List<T> design(java.util.function.Function<Design, List<T>> part) {
        Optional<Design> design = report.design();
        return design.map(part).orElse(List.of());
    }

    private static Rows sheet(Workbook book, String name, int... widths) {
        Worksheet sheet = book.newWorksheet(name);
        for (int i = 0; i < widths.length; i++) {
            sheet.width(i, widths[i]);
        }
        return new Rows(sheet);
    }

    /** Writes a sheet row by row. */
    private static final class Rows {
        private static final String SHADE = "E3F0F2";

        /** What makes a spreadsheet take a text for a formula, at once or after a way through a table of plain text. */
        private static final String FORMULA = "=+-@\t\r";

        /** A cell holds no more; the rest stands in the PDF. */
        private static final int LONGEST = 32_000;

        private final Worksheet sheet;
        private int next;

        private Rows(Worksheet sheet) {
            this.sheet = sheet;
        }

        void head(Object... names) {
            for (int i = 0; i < names.length; i++) {
                sheet.value(0, i, names[i].toString());
                sheet.style(0, i).bold().fillColor(SHADE).wrapText(true).set();
            }
            sheet.freezePane(0, 1);
            next = 1;
        }

        void row(Object... cells) {
            for (int i = 0; i < cells.length; i++) {
                if (cells[i] instanceof Number number) {
                    sheet.value(next, i, number);
                } else if (cells[i] != null && !cells[i].equals("")) {
                    sheet.value(next, i, harmless(cells[i].toString()));
                    sheet.style(next, i).wrapText(true).verticalAlignment("top").set();
                }
            }
            next++;
        }

        private static String harmless(String text) {
            String safe = SafeText.of(text);
            String whole = safe.length() > LONGEST ? safe.substring(0, LONGEST) + " \u2026 (the PDF holds all)" : safe;
            return FORMULA.indexOf(whole.charAt(0)) >= 0 || whole.startsWith("'") ? "'" + whole : whole;
        }
    }
}
