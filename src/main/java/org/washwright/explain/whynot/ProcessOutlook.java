package org.washwright.explain.whynot;

import java.util.List;

/**
 * What keeps a process from standing, or from standing better.
 *
 * @param process its id
 * @param name what a reader calls it
 * @param status its status, in words
 * @param reasons what rules it out or what it hangs on
 * @param against rules that rule it out or oppose it and fired or might
 * @param silent rules that would speak for it and did not fire, with the conditions that failed or are undecided
 */
public record ProcessOutlook(
        String process, String name, String status, List<Reason> reasons, List<Outlook> against, List<Outlook> silent) {

    /** Keeps copies. */
    public ProcessOutlook {
        reasons = List.copyOf(reasons);
        against = List.copyOf(against);
        silent = List.copyOf(silent);
    }

    /** A sentence of the answer and the ids of the rules behind it. */
    public record Reason(String text, List<String> rules) {}
}
