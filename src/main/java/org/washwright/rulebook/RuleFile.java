package org.washwright.rulebook;

import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.washwright.exchange.EditionFiles;
import org.washwright.exchange.TableSheet;
import org.washwright.rule.Edition;

/**
 * One file of rules for display: rule text as rules, a decision table as a table.
 *
 * @param name name of the file
 * @param rules its rules in the order of the file
 * @param table the table, for a table file
 */
record RuleFile(String name, List<RuleView> rules, Optional<TableSheet> table) {

    static List<RuleFile> all(Edition edition, EditionFiles files) {
        Map<String, List<RuleView>> byFile = new TreeMap<>();
        edition.rules().stream()
                .map(rule -> RuleView.of(edition, rule))
                .sorted(Comparator.comparingInt(RuleView::line))
                .forEach(rule -> byFile.computeIfAbsent(rule.file(), f -> new java.util.ArrayList<>())
                        .add(rule));
        return byFile.entrySet().stream()
                .map(e -> new RuleFile(e.getKey(), List.copyOf(e.getValue()), table(e.getKey(), files)))
                .toList();
    }

    private static Optional<TableSheet> table(String name, EditionFiles files) {
        return name.endsWith(".csv")
                ? TableSheet.of(new String(files.files().get(name), StandardCharsets.UTF_8))
                : Optional.empty();
    }

    /** The rule of a table's row. */
    public Optional<RuleView> rule(String id) {
        return rules.stream().filter(r -> r.id().equals(id)).findFirst();
    }

    /** What all rows of a table share, without its title. */
    public Map<String, String> shared() {
        Map<String, String> shared = new LinkedHashMap<>(table.map(TableSheet::head).orElse(Map.of()));
        shared.remove("title");
        shared.values().removeIf(String::isEmpty);
        return shared;
    }

    /** What a reader calls the file. */
    public String title() {
        return table.map(t -> t.head().getOrDefault("title", name)).orElseGet(() -> {
            String last = name.substring(name.lastIndexOf('/') + 1).replace(".drl", "").replace('-', ' ');
            return last.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + last.substring(1);
        });
    }

    /** Where the file starts on the page. */
    public String anchor() {
        return "file-" + name.replace('/', '-');
    }
}
