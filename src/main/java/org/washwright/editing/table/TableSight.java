package org.washwright.editing.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.washwright.document.Diagnostic;
import org.washwright.exchange.TableCheck;
import org.washwright.exchange.TableDraft;
import org.washwright.exchange.TableText;
import org.washwright.exchange.TableVerbs;
import org.washwright.problem.ProblemErrors;
import org.washwright.rule.Edition;

/**
 * A table as its page shows it.
 *
 * @param title what it is called
 * @param head words that all rows share
 * @param columns the columns
 * @param rows the rows
 * @param lists words that cells offer
 * @param offers columns that could be added
 * @param wrong what is wrong with the table as a whole
 * @param count how many things are wrong in all
 * @param wordsRead whether the words of the edition could be read, so that cells are checked
 */
record TableSight(
        String title,
        List<HeadField> head,
        List<Column> columns,
        List<Row> rows,
        List<Words> lists,
        List<ColumnWords.Offer> offers,
        List<String> wrong,
        int count,
        boolean wordsRead) {

    /** A line of the head: its word, label, help, value, what may be chosen, and what is wrong. */
    record HeadField(
            String word,
            String label,
            String help,
            String value,
            List<ColumnWords.Word> choices,
            String list,
            String wrong) {}

    /** A column. {@code from} is its number in the file; -1 for none. */
    record Column(int number, int from, String name, String label, String help, String list, String wrong) {
        /** Whether its cells hold sentences. */
        public boolean isLong() {
            return name.equals("reason") || name.equals("note");
        }

        /** Whether every table has it. */
        public boolean isFixed() {
            return name.equals("id") || name.equals("reason");
        }

        /** Whether it says when a row holds. */
        public boolean isCondition() {
            return name.contains(".");
        }
    }

    /** A row: what it is called, its cells, what it says, what is wrong with the whole of it. */
    record Row(int number, int from, String id, List<Cell> cells, String sentence, List<String> wrong) {}

    /** A cell. */
    record Cell(Column column, String value, List<String> wrong) {}

    /** A list of words. */
    record Words(String id, List<ColumnWords.Word> words) {}

    static TableSight of(String path, TableText file, TableDraft draft, Optional<Edition> words) {
        String text = draft.in(file).text();
        Optional<TableCheck> check = words.map(w -> TableCheck.of(w, path, text));
        return new Maker(draft, words.map(ColumnWords::new), check.orElse(new TableCheck(List.of(), Map.of()))).sight();
    }

    /** A diagnostic as one or two sentences. */
    static String told(Diagnostic d) {
        return (ProblemErrors.sentence(d.text()) + " " + ProblemErrors.sentence(d.advice())).strip();
    }

    private record Maker(TableDraft draft, Optional<ColumnWords> words, TableCheck check) {

        TableSight sight() {
            List<Column> columns = columns();
            List<Row> rows = rows(columns);
            TreeSet<String> lists = new TreeSet<>(List.of("source"));
            columns.forEach(c -> lists.add(c.list()));
            lists.remove("");
            String verb = draft.head().getOrDefault("then", "");
            List<String> names = columns.stream().map(Column::name).toList();
            return new TableSight(
                    draft.head().getOrDefault("title", ""),
                    head(),
                    columns,
                    rows,
                    words.map(w -> lists.stream()
                                    .map(l -> new Words(l, w.list(l)))
                                    .toList())
                            .orElse(List.of()),
                    words.map(w -> w.offers(verb, names)).orElse(List.of()),
                    at(TableCheck.Part.HEADER, 0, -1),
                    check.found().size(),
                    words.isPresent());
        }

        private List<String> at(TableCheck.Part part, int row, int column) {
            return check.found().stream()
                    .filter(f -> f.part() == part && f.row() == row && f.column() == column)
                    .map(f -> told(f.diagnostic()))
                    .toList();
        }

        private List<HeadField> head() {
            List<HeadField> out = new ArrayList<>();
            List<String> there = draft.head().entrySet().stream()
                    .filter(e -> !e.getValue().isBlank())
                    .map(Map.Entry::getKey)
                    .toList();
            for (String word : TableForm.HEAD) {
                String wrong = check.found().stream()
                        .filter(f -> f.part() == TableCheck.Part.HEAD && f.row() == there.indexOf(word))
                        .map(f -> told(f.diagnostic()))
                        .findFirst()
                        .orElse("");
                out.add(field(word, draft.head().getOrDefault(word, ""), wrong));
            }
            return out;
        }

        private HeadField field(String word, String value, String wrong) {
            return switch (word) {
                case "title" ->
                    new HeadField(word, "Title", "What the table tells, in a few words", value, List.of(), "", wrong);
                case "then" ->
                    new HeadField(
                            word,
                            "Each row",
                            "",
                            value,
                            TableVerbs.all().entrySet().stream()
                                    .map(e -> new ColumnWords.Word(e.getKey(), e.getValue()))
                                    .toList(),
                            "",
                            wrong);
                case "basis" ->
                    new HeadField(
                            word,
                            "Rests on",
                            "",
                            value,
                            words.map(w -> w.list("basis")).orElse(List.of()),
                            "",
                            wrong);
                case "source" ->
                    new HeadField(
                            word,
                            "Source",
                            "For rows that name none: a source, then a comma and the place in it",
                            value,
                            List.of(),
                            "source",
                            wrong);
                case "since" -> new HeadField(word, "Since", "A date, where it matters", value, List.of(), "", wrong);
                default -> new HeadField(word, "Note", "For whoever reads the table next", value, List.of(), "", wrong);
            };
        }

        private List<Column> columns() {
            List<Column> out = new ArrayList<>();
            for (int i = 0; i < draft.columns().size(); i++) {
                TableDraft.Column c = draft.columns().get(i);
                ColumnWords.Described d =
                        words.map(w -> w.describe(c.name())).orElse(new ColumnWords.Described(c.name(), "", ""));
                String wrong = String.join(" ", at(TableCheck.Part.HEADER, 0, i));
                out.add(new Column(i, c.from(), c.name(), d.label(), d.help(), d.list(), wrong));
            }
            return out;
        }

        private List<Row> rows(List<Column> columns) {
            List<Row> out = new ArrayList<>();
            int written = 0;
            for (int i = 0; i < draft.rows().size(); i++) {
                TableDraft.Row row = draft.rows().get(i);
                // A row without anything is not written, so the check does not count it.
                int at = row.isBlank() ? -1 : written++;
                List<Cell> cells = columns.stream()
                        .map(c -> new Cell(c, row.cell(c.number()), at(TableCheck.Part.ROW, at, c.number())))
                        .toList();
                String id = columns.stream()
                        .filter(c -> c.name().equals("id"))
                        .map(c -> row.cell(c.number()))
                        .findFirst()
                        .orElse("");
                out.add(new Row(
                        i,
                        row.from(),
                        id.isEmpty() ? "row " + (i + 1) : id,
                        cells,
                        check.sentences().getOrDefault(at, ""),
                        at(TableCheck.Part.ROW, at, -1)));
            }
            return out;
        }
    }
}
