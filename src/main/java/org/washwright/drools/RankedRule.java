package org.washwright.drools;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.washwright.rule.Effect;
import org.washwright.rule.Rule;

/**
 * A rule with its place in answers.
 *
 * @param rule the rule
 * @param rank its place by level and id, from 0
 * @param concludes true when a match of it makes facts
 */
record RankedRule(Rule rule, int rank, boolean concludes) {

    /** These rules by id. */
    static Map<String, RankedRule> byId(List<Rule> rules, Map<String, Integer> levels) {
        List<Rule> inOrder = rules.stream()
                .sorted(Comparator.comparingInt((Rule r) -> levels.getOrDefault(r.id(), 0))
                        .thenComparing(Rule::id))
                .toList();
        Map<String, RankedRule> byId = new HashMap<>();
        for (Rule rule : inOrder) {
            boolean concludes = rule.effects().stream().anyMatch(Effect.Conclude.class::isInstance);
            byId.put(rule.id(), new RankedRule(rule, byId.size(), concludes));
        }
        return byId;
    }
}
