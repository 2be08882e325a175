package org.washwright.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.washwright.rule.Rule;

/** A row of a decision table as text, with the header of its columns. */
record TableRow(String[] lines, int at, List<String> header, List<String> cells) {

    static Optional<TableRow> of(Rule rule, Map<String, String> texts) {
        if (!rule.place().file().startsWith("tables/")) {
            return Optional.empty();
        }
        String[] lines = texts.get(rule.place().file()).split("\n", -1);
        int at = rule.place().line() - 1;
        int head = 0;
        while (!lines[head].startsWith("id,")) {
            head++;
        }
        return Optional.of(new TableRow(lines, at, cells(lines[head]), cells(lines[at])));
    }

    /** The whole table with one more row that asks for one thing less and says the same. */
    Optional<String> widened(String id, Random random) {
        List<Integer> conditions = new ArrayList<>();
        for (int i = 0; i < header.size(); i++) {
            if (Character.isUpperCase(header.get(i).charAt(0)) && !cells.get(i).isEmpty()) {
                conditions.add(i);
            }
        }
        if (conditions.size() < 2) {
            return Optional.empty();
        }
        List<String> wide = new ArrayList<>(cells);
        wide.set(0, id);
        wide.set(conditions.get(random.nextInt(conditions.size())), "");
        List<String> all = new ArrayList<>(List.of(lines));
        all.add(at, String.join(",", wide));
        return Optional.of(String.join("\n", all));
    }

    /** Cells of a line, quotes kept. */
    private static List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (char c : line.toCharArray()) {
            quoted ^= c == '"';
            if (c == ',' && !quoted) {
                cells.add(cell.toString());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString());
        return cells;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof TableRow r && r.at == at && r.cells.equals(cells);
    }

    @Override
    public int hashCode() {
        return cells.hashCode();
    }

    @Override
    public String toString() {
        return new TreeMap<>(Map.of("line", at + 1, "cells", cells)).toString();
    }
}
