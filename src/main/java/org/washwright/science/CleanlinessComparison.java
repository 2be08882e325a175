package org.washwright.science;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.washwright.science.ComponentCleanlinessCode.Limit;
import org.washwright.science.ComponentCleanlinessCode.Meets;

/**
 * Compares a measured component cleanliness code with a demanded one. A measured level stands for all counts between its
 * bounds, so what follows is certain only where all of them agree.
 */
final class CleanlinessComparison {

    private final ComponentCleanlinessCode measured;
    private final boolean overlapping;

    CleanlinessComparison(ComponentCleanlinessCode measured) {
        this.measured = measured;
        int letters =
                measured.limits().stream().mapToInt(l -> l.classes().size()).sum();
        Set<SizeClass> different = EnumSet.noneOf(SizeClass.class);
        measured.limits().forEach(l -> different.addAll(l.classes()));
        this.overlapping = letters != different.size();
    }

    /** A class measured twice contradicts itself or says nothing new; nobody should decide by it. */
    Meets with(ComponentCleanlinessCode demand) {
        if (measured.basis() != demand.basis() || overlapping) {
            return Meets.UNDECIDED;
        }
        Meets all = Meets.YES;
        for (Limit limit : demand.limits()) {
            Meets one = with(limit);
            if (one == Meets.NO) {
                return Meets.NO;
            }
            all = one == Meets.UNDECIDED ? one : all;
        }
        return all;
    }

    private Meets with(Limit limit) {
        Set<SizeClass> open = EnumSet.copyOf(limit.classes());
        double most = 0;
        double least = 0;
        boolean above = false;
        for (Limit part : measured.limits()) {
            List<SizeClass> classes = part.classes();
            if (limit.classes().containsAll(classes)) {
                double lower = part.smallestCount(measured.basis());
                least += lower;
                // A level stays above its lower bound; a plain count is that count.
                above |= lower < part.largestCount(measured.basis());
            }
            if (open.removeAll(classes)) {
                most += part.largestCount(measured.basis());
            }
        }
        double allowed = limit.largestCount(measured.basis());
        if (least > allowed || (above && least >= allowed)) {
            return Meets.NO;
        }
        return open.isEmpty() && most <= allowed ? Meets.YES : Meets.UNDECIDED;
    }
}
