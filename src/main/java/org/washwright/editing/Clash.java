package org.washwright.editing;

import java.util.List;
import java.util.Set;
import org.washwright.rulebook.FileChanged;
import org.washwright.rulebook.KeptFile;

/**
 * Two texts of one file: what stands there now, and what was refused because it was written against an older state.
 *
 * @param why in a sentence
 * @param theirs lines of what stands there now
 * @param yours lines of what was refused
 */
public record Clash(String why, List<Line> theirs, List<Line> yours) {

    /** A line, and whether the other text lacks it. */
    public record Line(String text, boolean differs) {}

    /** Holds both texts beside each other. */
    public static Clash of(FileChanged refusal, String yours) {
        String theirs = refusal.now().map(KeptFile::text).orElse("");
        return new Clash(refusal.getMessage(), lines(theirs, yours), lines(yours, theirs));
    }

    private static List<Line> lines(String text, String other) {
        Set<String> there = Set.copyOf(other.lines().distinct().toList());
        return text.lines().map(line -> new Line(line, !there.contains(line))).toList();
    }
}
