package org.washwright.coverage;

import org.washwright.rule.Condition;

/**
 * How often a comparison was seen true, false and undecided.
 *
 * @param pattern pattern of the rule, from 0
 * @param test the comparison
 */
public record TestCoverage(int pattern, Condition.Test test, long yes, long no, long open) {

    /** What was never seen, in words; empty when both outcomes were. */
    public String missing() {
        if (yes > 0 && no > 0) {
            return "";
        }
        return yes > 0 ? "never false" : no > 0 ? "never true" : open > 0 ? "never decided" : "never reached";
    }
}
