package org.washwright.rule;

import java.util.List;
import org.washwright.document.Place;

/**
 * One rule: when these patterns match, this is said.
 *
 * @param id unique in the edition
 * @param title what a reader calls it
 * @param basis where it comes from
 * @param sources what it cites
 * @param since from when it holds, free text
 * @param note remark of its author
 * @param place where it stands in the edition
 * @param patterns its conditions
 * @param effects its consequences
 */
public record Rule(
        String id,
        String title,
        Basis basis,
        List<Cite> sources,
        String since,
        String note,
        Place place,
        List<Pattern> patterns,
        List<Effect> effects) {

    /** Most patterns of a rule. */
    public static final int MAX_PATTERNS = 6;

    /** A source and the place within it; the place may be empty. */
    public record Cite(String source, String locator) {}

    /** Keeps copies. */
    public Rule {
        sources = List.copyOf(sources);
        patterns = List.copyOf(patterns);
        effects = List.copyOf(effects);
    }

    /** True when it matches composed stages and so runs over every line. */
    public boolean isLineRule() {
        return patterns.stream().anyMatch(p -> p.type().name().equals(FactTypes.STAGE));
    }
}
