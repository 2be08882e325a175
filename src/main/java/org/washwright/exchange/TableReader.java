package org.washwright.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.washwright.document.Diagnostics;
import org.washwright.document.HiddenCharacters;
import org.washwright.document.Message;
import org.washwright.document.Place;
import org.washwright.document.Similar;
import org.washwright.rule.Sign;
import org.washwright.rule.check.Terms;
import org.washwright.rule.syntax.SyntaxCall;
import org.washwright.rule.syntax.SyntaxConstraint;
import org.washwright.rule.syntax.SyntaxPattern;
import org.washwright.rule.syntax.SyntaxRule;

/** Reads a decision table: a row becomes a rule as data, cell by cell; no cell ever becomes rule text. */
final class TableReader {

    private static final int MAX_ROWS = 2000;
    private static final int MAX_COLUMNS = 60;
    private static final Set<String> HEAD = Set.of("title", "basis", "source", "then", "since", "note");
    static final List<String> ROW_KEYS = List.of("id", "basis", "source", "note");

    private final String file;
    private final Diagnostics diagnostics;
    private final TableTests tests;
    private final Map<String, String> head = new HashMap<>();

    TableReader(String file, Terms terms, Diagnostics diagnostics) {
        this.file = file;
        this.diagnostics = diagnostics;
        this.tests = new TableTests(terms, diagnostics);
    }

    List<SyntaxRule> read(String text) {
        if (!HiddenCharacters.none(file, text, diagnostics)) {
            return List.of();
        }
        List<Csv.Row> rows = Csv.rows(text);
        if (!shaped(rows)) {
            return List.of();
        }
        int at = 0;
        int verbLine = 1;
        while (at < rows.size() && !rows.get(at).isBlank()) {
            verbLine =
                    rows.get(at).cell(0).strip().equals("then") ? rows.get(at).line() : verbLine;
            head(rows.get(at++));
        }
        while (at < rows.size() && rows.get(at).isBlank()) {
            at++;
        }
        String verb = head.getOrDefault("then", "");
        if (!TableCalls.ARGUMENTS.containsKey(verb)) {
            diagnostics.add(
                    Message.UNKNOWN_VERB, place(verbLine), verb, Similar.advice(verb, TableCalls.ARGUMENTS.keySet()));
            return List.of();
        }
        if (at >= rows.size()) {
            diagnostics.add(
                    Message.TABLE_SHAPE,
                    place(1),
                    head.getOrDefault("title", verb),
                    "no header line behind the empty line");
            return List.of();
        }
        Csv.Row header = rows.get(at++);
        if (rows.size() - at > MAX_ROWS) {
            diagnostics.add(Message.TOO_LARGE, place(header.line()), (rows.size() - at) + " rows", MAX_ROWS + " rows");
            return List.of();
        }
        if (!columns(header, verb)) {
            return List.of();
        }
        List<SyntaxRule> rules = new ArrayList<>();
        for (Csv.Row row : rows.subList(at, rows.size())) {
            if (!row.isBlank()) {
                row(header, row, verb).ifPresent(rules::add);
            }
        }
        return rules;
    }

    private boolean shaped(List<Csv.Row> rows) {
        boolean sound = true;
        for (Csv.Row row : rows) {
            if (!row.fault().isEmpty()) {
                sound = false;
                diagnostics.add(Message.TABLE_SHAPE, place(row.line()), String.join(",", row.cells()), row.fault());
            } else if (row.cells().size() > MAX_COLUMNS) {
                sound = false;
                diagnostics.add(
                        Message.TOO_LARGE,
                        place(row.line()),
                        row.cells().size() + " columns",
                        MAX_COLUMNS + " columns");
            }
        }
        return sound;
    }

    private void head(Csv.Row row) {
        String key = row.cell(0).strip();
        if (!HEAD.contains(key)) {
            diagnostics.add(
                    Message.UNKNOWN_FIELD, place(row.line()), key, "a table's first lines", Similar.advice(key, HEAD));
        } else {
            head.put(key, row.cell(1).strip());
        }
    }

    private boolean columns(Csv.Row header, String verb) {
        boolean sound = true;
        Set<String> seen = new HashSet<>();
        List<String> known = new ArrayList<>(ROW_KEYS);
        known.addAll(TableCalls.ARGUMENTS.get(verb));
        for (String column : header.cells()) {
            String name = column.strip();
            boolean condition = name.indexOf('.') > 0;
            if (condition && tests.field(name).isEmpty()) {
                sound = false;
                tests.unknownField(name, place(header.line()));
            }
            if (!seen.add(name)) {
                sound = false;
                diagnostics.add(Message.TABLE_SHAPE, place(header.line()), name, "a column is there twice");
            }
            if (!condition && !known.contains(name)) {
                sound = false;
                diagnostics.add(
                        Message.UNKNOWN_FIELD,
                        place(header.line()),
                        name,
                        "a table that says " + verb,
                        Similar.advice(name, known));
            }
        }
        for (String needed : List.of("id", "reason")) {
            if (header.cells().stream().noneMatch(c -> c.strip().equals(needed))) {
                sound = false;
                diagnostics.add(Message.MISSING_FIELD, place(header.line()), "", "the header", needed);
            }
        }
        return sound;
    }

    private Optional<SyntaxRule> row(Csv.Row header, Csv.Row row, String verb) {
        Place place = place(row.line());
        if (row.cells().size() > header.cells().size()) {
            diagnostics.add(
                    Message.TABLE_SHAPE,
                    place,
                    row.cell(header.cells().size()),
                    "the row has more cells than the header");
            return Optional.empty();
        }
        Map<String, List<SyntaxConstraint>> byType = new LinkedHashMap<>();
        Map<String, String> cells = new HashMap<>();
        Map<String, Place> places = new HashMap<>();
        boolean sound = true;
        for (int i = 0; i < header.cells().size(); i++) {
            String column = header.cell(i).strip();
            String cell = row.cell(i).strip();
            if (column.indexOf('.') > 0) {
                String type = column.substring(0, column.indexOf('.'));
                if (!cell.isEmpty()) {
                    Optional<SyntaxConstraint> c =
                            tests.constraint(type, column.substring(column.indexOf('.') + 1), cell, place(row, i));
                    sound &= c.isPresent();
                    c.ifPresent(x ->
                            byType.computeIfAbsent(type, k -> new ArrayList<>()).add(x));
                }
            } else {
                cells.put(column, cell);
                places.put(column, place(row, i));
            }
        }
        List<SyntaxPattern> patterns = new ArrayList<>();
        byType.forEach((type, constraints) ->
                patterns.add(new SyntaxPattern(Sign.POSITIVE, TableCalls.variable(type), type, constraints, place)));
        Map<String, SyntaxRule.Text> annotations = new HashMap<>();
        annotations.put("id", new SyntaxRule.Text(cells.getOrDefault("id", ""), places.getOrDefault("id", place)));
        for (String key : List.of("basis", "source", "note", "since")) {
            String value = cells.getOrDefault(key, "").isEmpty() ? head.getOrDefault(key, "") : cells.get(key);
            if (!value.isEmpty()) {
                annotations.put(key, new SyntaxRule.Text(value, places.getOrDefault(key, place)));
            }
        }
        Place said = TableCalls.ARGUMENTS.get(verb).stream()
                .filter(places::containsKey)
                .map(places::get)
                .findFirst()
                .orElse(place);
        List<SyntaxCall> calls = TableCalls.call(verb, cells, said, byType.keySet());
        return sound
                ? Optional.of(new SyntaxRule(
                        head.getOrDefault("title", file) + ": " + cells.get("id"), annotations, patterns, calls, place))
                : Optional.empty();
    }

    private Place place(Csv.Row row, int cell) {
        return new Place(file, row.line(), row.column(cell), "");
    }

    private Place place(int line) {
        return new Place(file, line, 1, "");
    }
}
