package org.washwright.explain.vary;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.washwright.assessment.Outcome;
import org.washwright.assessment.Standing;
import org.washwright.engine.Firing;
import org.washwright.line.ProcessLine;
import org.washwright.line.ProcessLine.Status;
import org.washwright.rule.Effect;

/**
 * What came of trying a task, as far as one compares it with others.
 *
 * @param statuses status of every process
 * @param ranked what stands in its order, with points; empty when only statuses were asked for
 * @param refusedBy rules that rule a process out, by process
 * @param hangsOn rules that are undecided on ruling a process out altogether, by process
 * @param open how many conditions each process that stands hangs on
 */
public record Seen(
        Map<String, Status> statuses,
        List<Standing.Ranked> ranked,
        Map<String, List<String>> refusedBy,
        Map<String, List<String>> hangsOn,
        Map<String, Integer> open) {

    /** Id of the first; empty when nothing stands or the order was not asked for. */
    public String first() {
        return ranked.isEmpty() ? "" : ranked.get(0).process();
    }

    /** True when a process is not ruled out. */
    public boolean stands(String process) {
        return statuses.get(process) != Status.RULED_OUT;
    }

    static Seen of(Standing standing) {
        return of(standing.outcome(), standing.ranked());
    }

    static Seen of(Outcome outcome) {
        return of(outcome, List.of());
    }

    private static Seen of(Outcome outcome, List<Standing.Ranked> ranked) {
        Map<Integer, Firing> firings = new HashMap<>();
        outcome.firings().forEach(f -> firings.put(f.n(), f));
        Map<String, Status> statuses = new TreeMap<>();
        Map<String, List<String>> refusedBy = new TreeMap<>();
        Map<String, List<String>> hangsOn = new TreeMap<>();
        Map<String, Integer> open = new TreeMap<>();
        for (ProcessLine line : outcome.lines()) {
            String id = line.process().id();
            statuses.put(id, line.status());
            if (line.status() == Status.RULED_OUT) {
                refusedBy.put(id, rules(line.refusals(), firings, f -> true));
            } else {
                hangsOn.put(id, rules(line.conditions(), firings, f -> isUndecidedAltogether(f, id)));
                open.put(id, line.conditions().size());
            }
        }
        return new Seen(statuses, ranked, refusedBy, hangsOn, open);
    }

    private static List<String> rules(
            List<ProcessLine.Verdict> verdicts, Map<Integer, Firing> firings, Predicate<Firing> counts) {
        TreeSet<String> rules = new TreeSet<>();
        verdicts.forEach(v -> v.firings().stream()
                .map(firings::get)
                .filter(counts)
                .forEach(f -> rules.add(f.rule().id())));
        return List.copyOf(rules);
    }

    /** As long as such a firing is undecided, so is the process, whatever becomes of its line. */
    private static boolean isUndecidedAltogether(Firing firing, String process) {
        return !firing.certain()
                && firing.findings().stream()
                        .anyMatch(f -> f.targets().contains(process)
                                && f.effect() instanceof Effect.RuleOut r
                                && (r.role() == Effect.Role.MAIN || r.role() == Effect.Role.ANYWHERE));
    }
}
