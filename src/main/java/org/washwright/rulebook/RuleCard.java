package org.washwright.rulebook;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;
import org.washwright.rule.RuleSentence;

/**
 * A rule for display.
 *
 * @param rule what is told of it anywhere
 * @param sentence the rule as one would say it
 * @param cells its comparisons one by one; empty when it is more than a row of a table can say
 */
record RuleCard(RuleView rule, RuleSentence sentence, List<RuleSentence.Cell> cells) {

    static RuleCard of(Edition edition, Rule rule) {
        return new RuleCard(
                RuleView.of(edition, rule),
                RuleSentence.of(edition, rule),
                RuleSentence.cells(edition, rule).orElse(List.of()));
    }

    /** What a row says in a column; several demands on the same thing stand side by side. */
    public String cell(String column) {
        return cells.stream()
                .filter(c -> c.column().equals(column))
                .map(RuleSentence.Cell::value)
                .collect(Collectors.joining(", "));
    }

    /** Whether every word looked for stands somewhere in the rule, and it has this basis, if one is wanted. */
    boolean isFor(String text, String basis) {
        if (!basis.isEmpty() && !rule.basis().equals(basis)) {
            return false;
        }
        String all = Stream.concat(
                        Stream.of(rule.id(), rule.title(), sentence.words(), rule.body(), rule.note()),
                        rule.sources().stream().map(RuleView.Cited::words))
                .collect(Collectors.joining("\n"))
                .toLowerCase(Locale.ROOT);
        return Stream.of(text.strip().toLowerCase(Locale.ROOT).split("\\s+")).allMatch(all::contains);
    }
}
