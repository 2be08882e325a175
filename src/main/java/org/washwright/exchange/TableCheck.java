package org.washwright.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.document.Diagnostic;
import org.washwright.document.Diagnostics;
import org.washwright.document.Message;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;
import org.washwright.rule.RuleSentence;
import org.washwright.rule.check.RuleChecker;
import org.washwright.rule.check.Terms;

/**
 * One table read against the words of its edition, while it is written: what is wrong, cell by cell, and what each sound row
 * says. What only the whole edition tells (an id that another file uses too, a circle of conclusions) is not looked at.
 *
 * @param found what is wrong
 * @param sentences what a row says, by the number of the row from 0
 */
public record TableCheck(List<Found> found, Map<Integer, String> sentences) {

    /** Keeps copies. */
    public TableCheck {
        found = List.copyOf(found);
        sentences = java.util.Collections.unmodifiableMap(new TreeMap<>(sentences));
    }

    /** A part of a table. */
    public enum Part {
        HEAD,
        HEADER,
        ROW
    }

    /**
     * Something wrong.
     *
     * @param part which part of the table
     * @param row number of the line within that part, from 0
     * @param column number of the cell, from 0; -1 for the line as a whole
     */
    public record Found(Diagnostic diagnostic, Part part, int row, int column) {}

    /**
     * Reads a table.
     *
     * @param words an edition whose catalogue, criteria and sources hold
     * @param path name of the file
     */
    public static TableCheck of(Edition words, String path, String text) {
        Diagnostics diagnostics = new Diagnostics();
        Terms terms = new Terms(words.catalogue(), words.types(), words.grading(), words.sources());
        List<Rule> rules =
                new RuleChecker(terms, diagnostics).check(new TableReader(path, terms, diagnostics).read(text));
        TableText table = TableText.of(text);
        List<Found> found = new ArrayList<>();
        for (Diagnostic d : diagnostics.all()) {
            // What is concluded elsewhere this table alone can't tell.
            if (d.message() != Message.CONCLUSION_NEVER) {
                found.add(placed(d, table));
            }
        }
        Map<Integer, String> sentences = new TreeMap<>();
        for (Rule rule : rules) {
            int row = line(table.rows(), rule.place().line());
            if (row >= 0) {
                sentences.put(row, RuleSentence.of(words, rule).words());
            }
        }
        return new TableCheck(found, sentences);
    }

    private static Found placed(Diagnostic d, TableText table) {
        int row = line(table.rows(), d.place().line());
        if (row >= 0) {
            return new Found(d, Part.ROW, row, cell(table.rows().get(row), d));
        }
        int head = line(table.head(), d.place().line());
        return head >= 0 && d.place().line() != table.header().line()
                ? new Found(d, Part.HEAD, head, -1)
                : new Found(d, Part.HEADER, 0, cell(table.header(), d));
    }

    private static int line(List<TableText.Line> lines, int number) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).line() == number) {
                return i;
            }
        }
        return -1;
    }

    /** The cell that starts at the place; where its words are not those complained of, the first behind it that has them. */
    private static int cell(TableText.Line line, Diagnostic d) {
        int at = -1;
        for (int i = 0; i < line.cells().size(); i++) {
            at = line.cells().get(i).column() == d.place().column() ? i : at;
        }
        if (d.value().isEmpty()
                || at >= 0 && d.place().column() > 1 && line.text(at).contains(d.value())) {
            return d.place().column() > 1 ? at : -1;
        }
        for (int i = Math.max(at, 0); i < line.cells().size(); i++) {
            if (line.text(i).equals(d.value())) {
                return i;
            }
        }
        for (int i = Math.max(at, 0); i < line.cells().size(); i++) {
            if (line.text(i).contains(d.value())) {
                return i;
            }
        }
        return d.place().column() > 1 ? at : -1;
    }
}
