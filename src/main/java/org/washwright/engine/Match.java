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

    /** By rule and matched facts; with levels before it, the order of firings in answers. */
    public static final Comparator<Match> ORDER =
            Comparator.comparing((Match m) -> m.rule().id()).thenComparing(Match::key);

    /** Keeps a copy. */
    public Match {
        facts = List.copyOf(facts);
    }

    /** Ids of the matched facts, joined. */
    public String key() {
        return String.join(
                " ", facts.stream().map(f -> f.map(Fact::id).orElse("-")).toList());
    }
}
