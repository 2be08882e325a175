package org.washwright.coverage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.washwright.analysis.TestWords;
import org.washwright.assessment.Outcome;
import org.washwright.engine.Firing;
import org.washwright.rule.Edition;
import org.washwright.rule.Rule;

/**
 * How a set of tasks exercised the rules of an edition.
 *
 * @param tasks number of tasks
 * @param rules each rule in order of its id
 */
public record Coverage(int tasks, List<RuleCoverage> rules) {

    /** Keeps a copy. */
    public Coverage {
        rules = List.copyOf(rules);
    }

    /** Counts over what an edition made of tasks. */
    public static Coverage of(Edition edition, List<Outcome> outcomes) {
        List<RuleCoverage> out = new ArrayList<>();
        for (Rule rule : edition.rules()) {
            TestCounter counter = new TestCounter(rule);
            int fired = 0;
            int undecided = 0;
            for (Outcome outcome : outcomes) {
                counter.count(outcome);
                List<Firing> firings = outcome.of(rule.id());
                if (firings.stream().anyMatch(Firing::certain)) {
                    fired++;
                } else if (!firings.isEmpty()) {
                    undecided++;
                }
            }
            out.add(new RuleCoverage(rule, fired, undecided, outcomes.size() - fired - undecided, counter.counts()));
        }
        return new Coverage(outcomes.size(), out);
    }

    /** Rules that fired on at least one task. */
    public long fired() {
        return rules.stream().filter(r -> r.fired() > 0).count();
    }

    /** Comparisons in all. */
    public long tests() {
        return rules.stream().mapToLong(r -> r.tests().size()).sum();
    }

    /** Comparisons that were seen both true and false. */
    public long bothWays() {
        return rules.stream()
                .flatMap(r -> r.tests().stream())
                .filter(t -> t.missing().isEmpty())
                .count();
    }

    /** As plain data for programs. */
    public Map<String, Object> asData(Edition edition) {
        Map<String, Object> out = new TreeMap<>();
        out.put("tasks", tasks);
        out.put("rulesFired", fired());
        out.put("conditions", tests());
        out.put("conditionsBothWays", bothWays());
        out.put("rules", rules.stream().map(r -> rule(r, edition)).toList());
        return out;
    }

    private static Map<String, Object> rule(RuleCoverage r, Edition edition) {
        Map<String, Object> one = new TreeMap<>();
        one.put("rule", r.rule().id());
        one.put("fired", r.fired());
        one.put("undecided", r.undecided());
        one.put("failed", r.failed());
        one.put(
                "conditions",
                r.tests().stream()
                        .map(t -> Map.of(
                                "pattern", t.pattern() + 1,
                                "condition", TestWords.of(t.test(), edition),
                                "true", t.yes(),
                                "false", t.no(),
                                "undecided", t.open(),
                                "missing", t.missing()))
                        .toList());
        return one;
    }
}
