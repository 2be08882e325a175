package org.washwright.coverage;

import java.util.List;
import org.washwright.rule.Rule;

/**
 * How tasks exercised a rule.
 *
 * @param rule the rule
 * @param fired tasks on which it fired
 * @param undecided tasks on which it was undecided and did not fire
 * @param failed tasks on which it did neither
 * @param tests its comparisons in the order written
 */
public record RuleCoverage(Rule rule, int fired, int undecided, int failed, List<TestCoverage> tests) {

    /** Keeps a copy. */
    public RuleCoverage {
        tests = List.copyOf(tests);
    }

    /** True when it fired and every comparison was seen both true and false. */
    public boolean isComplete() {
        return fired > 0 && tests.stream().allMatch(t -> t.missing().isEmpty());
    }
}
