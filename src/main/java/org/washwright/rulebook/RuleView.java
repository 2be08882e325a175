package org.washwright.rulebook;

import com.fasterxml.jackson.annotation.JsonIgnore;
import java.util.List;
import java.util.Optional;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;
import org.washwright.rule.RuleText;

/**
 * A rule as told to people and programs.
 *
 * @param id unique in the edition
 * @param title what a reader calls it
 * @param basis where it comes from
 * @param sources what it cites
 * @param since from when it holds
 * @param note remark of its author
 * @param file file it stands in
 * @param line line in that file
 * @param level level in the graph of conclusions, from 0
 * @param lineRule true when it matches composed stages
 * @param text the rule in the rule language, numbers with their usual unit
 */
public record RuleView(
        String id,
        String title,
        String basis,
        List<Cited> sources,
        String since,
        String note,
        String file,
        int line,
        int level,
        boolean lineRule,
        String text) {

    /** A source and the place in it; {@code seen} is false when it is cited from memory. */
    public record Cited(String id, String title, int year, String locator, boolean seen) {
        /** The whole citation. */
        @JsonIgnore
        public String words() {
            return title + (year > 0 ? " (" + year + ")" : "") + (locator.isEmpty() ? "" : ", " + locator);
        }
    }

    static RuleView of(Edition edition, Rule rule) {
        return new RuleView(
                rule.id(),
                rule.title(),
                rule.basis().word(),
                rule.sources().stream().map(cite -> cited(edition, cite)).toList(),
                rule.since(),
                rule.note(),
                rule.place().file(),
                rule.place().line(),
                edition.levels().getOrDefault(rule.id(), 0),
                rule.isLineRule(),
                RuleText.readable(rule));
    }

    static Cited cited(Edition edition, Rule.Cite cite) {
        return Optional.ofNullable(edition.sources().get(cite.source()))
                .map(s -> new Cited(s.id(), s.title(), s.year(), cite.locator(), s.seen()))
                .orElseGet(() -> new Cited(cite.source(), cite.source(), 0, cite.locator(), false));
    }

    /** Conditions and consequences alone, without the head that pages show in words. */
    @JsonIgnore
    public String body() {
        int from = text.indexOf("when\n");
        int to = text.lastIndexOf("end\n");
        return from < 0 || to < from ? text : text.substring(from, to).stripTrailing();
    }
}
