package org.washwright.engine;

import java.util.List;
import java.util.Optional;
import org.washwright.rule.Rule;

/**
 * A match with its number, what it read and what it says.
 *
 * @param n number in the answer, from 1
 * @param rule the rule
 * @param level level of the rule
 * @param certain false when undecided
 * @param line process id for a line rule, else empty
 * @param facts a fact per pattern; empty for {@code not} and {@code exists}
 * @param uses references of what its conditions read
 * @param held references of what holds it when undecided; an open list by the group's key
 * @param findings what it says
 */
public record Firing(
        int n,
        Rule rule,
        int level,
        boolean certain,
        String line,
        List<Optional<Fact>> facts,
        List<String> uses,
        List<String> held,
        List<Finding> findings) {

    /** Keeps copies. */
    public Firing {
        facts = List.copyOf(facts);
        uses = List.copyOf(uses);
        held = List.copyOf(held);
        findings = List.copyOf(findings);
    }
}
