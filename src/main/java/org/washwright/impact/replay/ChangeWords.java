package org.washwright.impact.replay;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import org.washwright.explain.compare.Comparison;
import org.washwright.explain.compare.Comparison.ProcessChange;
import org.washwright.explain.compare.Comparison.Standing;

/** What became of an answer, in words. */
final class ChangeWords {

    private static final int CAUSES = 3;

    private ChangeWords() {}

    static Weight weight(Comparison c, boolean onlyWords) {
        if (!c.before().leader().equals(c.after().leader())) {
            return Weight.LEADER;
        }
        if (c.processes().stream()
                .anyMatch(p -> !p.before().status().equals(p.after().status()))) {
            return Weight.STATUS;
        }
        if (c.processes().stream().anyMatch(p -> !p.before().equals(p.after()))) {
            return Weight.PLACE;
        }
        boolean line = c.processes().stream()
                .anyMatch(p -> !p.areas().isEmpty()
                        || !p.stages().isEmpty()
                        || !p.windows().isEmpty()
                        || !p.figures().isEmpty());
        return line ? Weight.LINE : onlyWords ? Weight.WORDING : Weight.SAID;
    }

    static String sentence(Comparison c, Weight weight) {
        List<String> parts = new ArrayList<>();
        if (weight == Weight.LEADER) {
            parts.add(leader(c.before().leader(), c.after().leader()));
        }
        count(parts, c.processes().stream().filter(ProcessChange::comes).count(), "comes in", "come in");
        count(parts, c.processes().stream().filter(ProcessChange::falls).count(), "falls out", "fall out");
        count(
                parts,
                c.processes().stream()
                        .filter(p -> p.before().stands()
                                && p.after().stands()
                                && !p.before().status().equals(p.after().status()))
                        .count(),
                "changes its status",
                "change their status");
        if (parts.isEmpty()) {
            parts.add(weight.words());
        }
        String text = String.join("; ", parts);
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1) + ".";
    }

    private static String leader(String before, String after) {
        if (before.isEmpty()) {
            return after + " stands first where nothing stood";
        }
        return after.isEmpty()
                ? "nothing stands any more where " + before + " stood first"
                : after + " stands first instead of " + before;
    }

    private static void count(List<String> parts, long n, String one, String many) {
        if (n > 0) {
            parts.add(n + (n == 1 ? " process " + one : " processes " + many));
        }
    }

    /** Findings of one answer alone, and those that say something else, each way of saying once. */
    static List<String> said(Comparison c) {
        LinkedHashSet<String> out = new LinkedHashSet<>();
        c.lost().forEach(s -> out.add("no longer: " + words(s)));
        c.gained().forEach(s -> out.add("now: " + words(s)));
        c.reworded().forEach(r -> out.add(words(r.before()) + " → " + words(r.after())));
        return out.stream().limit(Replaying.MOST_SAID).toList();
    }

    private static String words(Comparison.Said s) {
        String text = s.text().isEmpty() ? s.title() : s.text();
        String what = (s.verb() + " " + s.detail()).strip();
        return text + " (" + (what.isEmpty() ? "" : what + "; ") + s.rule() + (s.certain() ? "" : ", not decided")
                + ")";
    }

    static Impact.Process process(ProcessChange p) {
        return new Impact.Process(
                p.process(),
                p.name(),
                standing(p.before()),
                standing(p.after()),
                p.causes().stream()
                        .limit(CAUSES)
                        .map(Comparison.Cause::name)
                        .distinct()
                        .toList());
    }

    private static String standing(Standing s) {
        if (!s.stands()) {
            return s.status().equals("none") ? "not in this edition" : s.status();
        }
        return "place " + s.place() + ", " + s.status() + ", " + points(s.low(), s.high());
    }

    private static String points(double low, double high) {
        String from = String.format(Locale.ROOT, "%.0f", low);
        String to = String.format(Locale.ROOT, "%.0f", high);
        return (from.equals(to) ? from : from + " to " + to) + " points";
    }
}
