package org.washwright.explain.change;

import java.util.Set;

/**
 * How far the sets of one size were searched.
 *
 * @param size places in a set
 * @param sets sets there are
 * @param passedOver sets that surely can't reach the goal, or hold a smaller set that does
 * @param tried sets of which values were tried to the end
 * @param reached sets that reach the goal
 * @param left sets that were not tried to the end
 * @param combinations combinations of values in them
 * @param among places that stand in such sets
 */
record SetsOfSize(
        int size,
        long sets,
        long passedOver,
        long tried,
        int reached,
        long left,
        double combinations,
        Set<String> among) {}
