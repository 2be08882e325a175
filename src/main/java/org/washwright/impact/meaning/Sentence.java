package org.washwright.impact.meaning;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** What a comparison of two editions comes to, in one sentence. */
final class Sentence {

    private Sentence() {}

    static String of(List<Difference> all, boolean sameFiles) {
        if (sameFiles) {
            return "Nothing differs: both are the same files.";
        }
        if (all.isEmpty()) {
            return "Nothing differs in meaning; only layout, comments or settings of the checks do.";
        }
        String changes = listed(all, Difference::answers);
        String words = listed(all, d -> !d.answers() && d.what() != What.MOVED);
        String moved = listed(all, d -> d.what() == What.MOVED);
        if (!changes.isEmpty()) {
            String rest = words.isEmpty() ? "" : "; besides, " + words;
            return "Answers may change: " + changes + rest + (moved.isEmpty() ? "." : "; " + moved + ".");
        }
        if (!words.isEmpty()) {
            return "No answer changes, except in its wording: " + words + (moved.isEmpty() ? "." : "; " + moved + ".");
        }
        return "Nothing differs in meaning: " + moved + ".";
    }

    /** For instance "2 rules changed, 1 term added". */
    private static String listed(List<Difference> all, Predicate<Difference> wanted) {
        List<String> parts = new ArrayList<>();
        for (Subject subject : Subject.values()) {
            for (What what : What.values()) {
                long n = all.stream()
                        .filter(wanted)
                        .filter(d -> d.subject() == subject && d.what() == what)
                        .count();
                if (n > 0) {
                    parts.add(subject.count(n) + " " + what.word());
                }
            }
        }
        return String.join(", ", parts);
    }
}
