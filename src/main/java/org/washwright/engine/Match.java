package org.washwright.engine;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.washwright.rule.Rule;

/**
 * A rule matched on facts.
 *
 * @param rule the rule
 * @param facts a fact per pattern; empty for {@code not} and {@code exists}
 * @param certain false when the match hangs on what is not known
 */
public record Match(Rule rule, List<Optional<Fact>> facts, boolean certain) {

    private static final String NO_FACT = "-";

    /** By rule and matched facts; with levels before it, the order of firings in answers. */
    public static final Comparator<Match> ORDER =
            Comparator.comparing((Match m) -> m.rule().id()).thenComparing(Match::facts, Match::compare);

    /** Keeps a copy. */
    public Match {
        facts = List.copyOf(facts);
    }

    /** Ids of the matched facts, joined. */
    public String key() {
        return String.join(" ", facts.stream().map(Match::id).toList());
    }

    private static int compare(List<Optional<Fact>> one, List<Optional<Fact>> other) {
        for (int i = 0; i < Math.min(one.size(), other.size()); i++) {
            int order = id(one.get(i)).compareTo(id(other.get(i)));
            if (order != 0) {
                return order;
            }
        }
        return Integer.compare(one.size(), other.size());
    }

    private static String id(Optional<Fact> fact) {
        return fact.isPresent() ? fact.get().id() : NO_FACT;
    }
}
