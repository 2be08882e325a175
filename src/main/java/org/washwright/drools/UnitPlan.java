package org.washwright.drools;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.washwright.rule.Rule;

/**
 * Shares the rules of an edition out over canonical texts, each compiled for itself. Which text a rule stands in follows from
 * its id alone, as long as the number of rules stays within a power of two: so a changed rule changes one text.
 */
final class UnitPlan {

    /** Rules of a text, about: more make a change dearer to compile, fewer make a whole edition dearer. */
    static final int RULES_PER_UNIT = 24;

    private UnitPlan() {}

    /** The canonical texts of rules, in fixed order. */
    static List<String> texts(List<Rule> rules, Map<String, Integer> levels) {
        int shares = Integer.highestOneBit(Math.max(1, 2 * (rules.size() / RULES_PER_UNIT) - 1));
        SortedMap<Integer, List<Rule>> byShare = new TreeMap<>();
        rules.stream()
                .sorted(Comparator.comparing(Rule::id))
                .forEach(r -> byShare.computeIfAbsent(share(r.id(), shares), k -> new ArrayList<>())
                        .add(r));
        List<String> texts = new ArrayList<>();
        byShare.forEach((share, some) -> texts.add(CanonicalDrl.write("washwright.u" + share, some, levels)));
        return texts;
    }

    private static int share(String id, int shares) {
        int hash = id.hashCode();
        return (hash ^ (hash >>> 16)) & (shares - 1);
    }
}
