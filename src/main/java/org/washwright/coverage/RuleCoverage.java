package org.washwright.coverage;

import java.util.List;
import java.util.Optional;
import org.washwright.cases.Flips;
import org.washwright.rule.FactTypes;
import org.washwright.rule.Rule;

/**
 * How tasks exercised a rule.
 *
 * @param rule the rule
 * @param fired tasks on which it fired
 * @param undecided tasks on which it was undecided and did not fire
 * @param failed tasks on which it did neither
 * @param heldBack two tasks that differ in one thing, of which it fires on one and is silent on the other; empty when there
 *     are none such
 * @param tests its comparisons in the order written
 */
public record RuleCoverage(
        Rule rule, int fired, int undecided, int failed, Optional<Flips.Pair> heldBack, List<TestCoverage> tests) {

    /** Keeps a copy. */
    public RuleCoverage {
        tests = List.copyOf(tests);
    }

    /**
     * True when it reads nothing but processes and fired on every task: no task can hold such a rule back, and what it says
     * differs by process alone.
     */
    public boolean readsProcessesAlone() {
        return fired > 0
                && undecided == 0
                && failed == 0
                && rule.patterns().stream().allMatch(p -> p.type().name().equals(FactTypes.PROCESS));
    }

    /** True when it fired, one change held it back where any can, and every comparison was seen both true and false. */
    public boolean isComplete() {
        return fired > 0
                && (heldBack.isPresent() || readsProcessesAlone())
                && tests.stream().allMatch(t -> t.missing().isEmpty());
    }
}
