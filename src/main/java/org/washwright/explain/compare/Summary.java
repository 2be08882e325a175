package org.washwright.explain.compare;

import java.util.ArrayList;
import java.util.List;
import org.washwright.explain.compare.Comparison.AskedChange;
import org.washwright.explain.compare.Comparison.ProcessChange;

/** A comparison in one sentence. */
final class Summary {

    private static final int NAMED = 2;

    private Summary() {}

    static String of(
            Comparison.Side before,
            Comparison.Side after,
            List<AskedChange> asked,
            boolean same,
            List<ProcessChange> processes) {
        if (same) {
            return "Nothing differs: both ask the same and answer the same.";
        }
        List<String> moves = new ArrayList<>(List.of(leader(before, after)));
        count(moves, processes.stream().filter(ProcessChange::falls).count(), "falls out", "fall out");
        count(moves, processes.stream().filter(ProcessChange::comes).count(), "comes in", "come in");
        count(moves, turned(processes, "conditional"), "becomes conditional", "become conditional");
        count(moves, turned(processes, "recommended"), "becomes recommended", "become recommended");
        return with(asked) + String.join("; ", moves) + ".";
    }

    private static long turned(List<ProcessChange> processes, String status) {
        return processes.stream()
                .filter(p -> p.before().stands()
                        && p.after().status().equals(status)
                        && !p.before().status().equals(status))
                .count();
    }

    private static void count(List<String> moves, long n, String one, String many) {
        if (n > 0) {
            // The first count says of what.
            String what = moves.size() > 1 ? "" : n == 1 ? " process" : " processes";
            moves.add(n + what + " " + (n == 1 ? one : many));
        }
    }

    private static String leader(Comparison.Side before, Comparison.Side after) {
        if (before.leader().isEmpty()) {
            return after.leader().isEmpty() ? "still no process stands" : after.leader() + " leads where nothing stood";
        }
        if (after.leader().isEmpty()) {
            return "no process stands any more, where " + before.leader() + " led";
        }
        return after.leader().equals(before.leader())
                ? after.leader() + " still leads"
                : after.leader() + " takes the place of " + before.leader();
    }

    private static String with(List<AskedChange> asked) {
        if (asked.isEmpty()) {
            return "For the same request, ";
        }
        List<String> parts = asked.stream().limit(NAMED).map(Summary::part).toList();
        String more = asked.size() > NAMED ? " and " + (asked.size() - NAMED) + " other changes" : "";
        String joined = more.isEmpty() ? String.join(" and ", parts) : String.join(", ", parts);
        return "With " + (more.endsWith(" 1 other changes") ? joined + " and 1 other change" : joined + more) + ", ";
    }

    private static String part(AskedChange a) {
        if (a.before().equals(AskedChanges.NO_ENTRY)) {
            return a.after() + " added as " + a.name();
        }
        if (a.after().equals(AskedChanges.NO_ENTRY)) {
            return a.before() + " taken out as " + a.name();
        }
        return a.after() + " instead of " + a.before() + " as " + a.name();
    }
}
