package org.washwright.editing.table;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a check of a table came to, by the numbers of the rows and columns that were sent.
 *
 * @param tag the state that was saved, when it was
 * @param count how many things are wrong
 * @param rows origin of each row in the file that was saved; -1 for one that holds nothing
 * @param wrong what is wrong and where
 * @param sentences what each sound row says
 */
@JsonInclude(JsonInclude.Include.NON_ABSENT)
record TableAnswer(
        Optional<String> tag, int count, List<Integer> rows, List<Wrong> wrong, Map<Integer, String> sentences) {

    /**
     * Something wrong.
     *
     * @param part {@code head}, {@code column}, {@code row} or {@code table}
     * @param row number of the row; -1 for none
     * @param column number of the column; -1 for the row as a whole
     * @param word word of the head; empty for none
     */
    record Wrong(String part, int row, int column, String word, String text) {}

    static TableAnswer of(TableSight sight, Optional<String> tag) {
        List<Wrong> wrong = new ArrayList<>();
        Map<Integer, String> sentences = new TreeMap<>();
        List<Integer> rows = new ArrayList<>();
        int written = 0;
        sight.head().stream()
                .filter(h -> !h.wrong().isEmpty())
                .forEach(h -> wrong.add(new Wrong("head", -1, -1, h.word(), h.wrong())));
        sight.wrong().forEach(w -> wrong.add(new Wrong("table", -1, -1, "", w)));
        sight.columns().stream()
                .filter(c -> !c.wrong().isEmpty())
                .forEach(c -> wrong.add(new Wrong("column", -1, c.number(), "", c.wrong())));
        for (TableSight.Row row : sight.rows()) {
            boolean blank = row.cells().stream().allMatch(c -> c.value().isBlank());
            rows.add(blank ? -1 : written++);
            row.wrong().forEach(w -> wrong.add(new Wrong("row", row.number(), -1, "", w)));
            row.cells()
                    .forEach(c -> c.wrong()
                            .forEach(w -> wrong.add(
                                    new Wrong("row", row.number(), c.column().number(), "", w))));
            if (!row.sentence().isEmpty()) {
                sentences.put(row.number(), row.sentence());
            }
        }
        return new TableAnswer(tag, sight.count(), rows, wrong, sentences);
    }
}
