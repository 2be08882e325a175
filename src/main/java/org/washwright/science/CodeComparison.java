package org.washwright.science;

import java.util.ArrayList;
import java.util.List;

/** Compares a component cleanliness code that was found with one that is agreed (ISO 16232:2018). */
public final class CodeComparison {

    /** What a comparison comes to. */
    public enum Met {
        YES,
        NO,
        UNDECIDED
    }

    private CodeComparison() {}

    /**
     * Whether what was found meets what is agreed. Levels are compared by the counts they hold at most: what was found is met
     * for sure when the most it may hold is allowed, and not met when the least it must hold is not. Codes on different bases,
     * or classes that were not counted, leave it open.
     */
    public static Met compare(ComponentCleanlinessCode found, ComponentCleanlinessCode agreed) {
        if (found.basis() != agreed.basis()) {
            return Met.UNDECIDED;
        }
        Met all = Met.YES;
        for (ComponentCleanlinessCode.Limit limit : agreed.limits()) {
            Met one = one(found, limit);
            if (one == Met.NO) {
                return Met.NO;
            }
            all = one == Met.UNDECIDED ? one : all;
        }
        return all;
    }

    private static Met one(ComponentCleanlinessCode found, ComponentCleanlinessCode.Limit limit) {
        char basis = found.basis();
        double allowed = most(limit.level(), basis);
        double most = 0;
        double least = 0;
        List<Character> counted = new ArrayList<>();
        for (ComponentCleanlinessCode.Limit f : found.limits()) {
            boolean within = f.smallest() >= limit.smallest() && f.largest() <= limit.largest();
            boolean touches = f.largest() >= limit.smallest() && f.smallest() <= limit.largest();
            if (touches) {
                most += most(f.level(), basis);
                for (char c = f.smallest(); c <= f.largest(); c++) {
                    counted.add(c);
                }
            }
            if (within) {
                least += least(f.level(), basis);
            }
        }
        boolean complete = true;
        for (char c = limit.smallest(); c <= limit.largest(); c++) {
            complete &= counted.contains(c);
        }
        if (least > allowed) {
            return Met.NO;
        }
        return complete && most <= allowed ? Met.YES : Met.UNDECIDED;
    }

    private static double most(int level, char basis) {
        return basis == 'N' ? Math.max(0, level) : ContaminationLevel.highest(level);
    }

    /** A level holds more than the level below; a count of basis N is the count itself. */
    private static double least(int level, char basis) {
        if (basis == 'N') {
            return Math.max(0, level);
        }
        return level <= 0 ? 0 : ContaminationLevel.highest(level - 1) + Math.ulp(ContaminationLevel.highest(level - 1));
    }
}
