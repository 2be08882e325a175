package org.washwright.rulebook;

import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.washwright.exchange.EditionFiles;
import org.washwright.exchange.TableSheet;
import org.washwright.rule.Edition;
import org.washwright.rule.RuleSentence;

/**
 * One file of rules for display: rule text as rules, a decision table as a table.
 *
 * @param name name of the file
 * @param title what a reader calls it
 * @param table true for a decision table
 * @param rules its rules in the order of the file
 */
record RuleFile(String name, String title, boolean table, List<RuleCard> rules) {

    /** More condition columns than this make a table too wide to read; then a row lists its conditions in one cell. */
    private static final int MOST_COLUMNS = 4;

    private static final String TABLE = ".csv";

    /** The files that hold rules, each with those of its rules that are looked for. */
    static List<RuleFile> all(Edition edition, EditionFiles files, String text, String basis) {
        Map<String, List<RuleCard>> byFile = edition.rules().stream()
                .map(rule -> RuleCard.of(edition, rule))
                .filter(card -> card.isFor(text, basis))
                .sorted(Comparator.comparingInt(card -> card.rule().line()))
                .collect(Collectors.groupingBy(card -> card.rule().file(), TreeMap::new, Collectors.toList()));
        return byFile.entrySet().stream()
                .map(e -> new RuleFile(
                        e.getKey(), title(e.getKey(), files), e.getKey().endsWith(TABLE), List.copyOf(e.getValue())))
                .toList();
    }

    /** The condition columns in use; empty when they would be too many. */
    public List<String> columns() {
        List<String> columns = rules.stream()
                .flatMap(card -> card.cells().stream())
                .map(RuleSentence.Cell::column)
                .distinct()
                .toList();
        return columns.size() <= MOST_COLUMNS ? columns : List.of();
    }

    /** Where the file starts on the page. */
    public String anchor() {
        return "file-" + name.replace('/', '-');
    }

    private static String title(String name, EditionFiles files) {
        String last =
                name.substring(name.lastIndexOf('/') + 1, name.lastIndexOf('.')).replace('-', ' ');
        String plain = last.substring(0, 1).toUpperCase(Locale.ROOT) + last.substring(1);
        if (!name.endsWith(TABLE)) {
            return plain;
        }
        return TableSheet.of(new String(files.files().get(name), StandardCharsets.UTF_8))
                .map(sheet -> sheet.head().getOrDefault("title", plain))
                .orElse(plain);
    }
}
