package org.washwright.explain.change;

import java.util.List;
import java.util.function.Predicate;
import org.washwright.assessment.Standing;
import org.washwright.explain.vary.Seen;
import org.washwright.line.ProcessLine.Status;

/** A goal as a test of what came of a task, and as a test of what may still come of a task of which less is known. */
record Aim(Goal.Kind kind, String process) {

    /** True when the order counts and not only what stands. */
    boolean needsOrder() {
        return kind == Goal.Kind.PUT_FIRST || kind == Goal.Kind.DISPLACE_FIRST;
    }

    /** True when the goal is reached. */
    boolean isReached(Seen seen) {
        return switch (kind) {
            case BRING_IN -> seen.statuses().get(process) == Status.RECOMMENDED;
            case LET_STAND -> seen.stands(process);
            case PUT_FIRST -> seen.first().equals(process);
            case DISPLACE_FIRST -> !seen.first().equals(process);
        };
    }

    /**
     * False when the goal is surely out of reach however what is not known turns out: what is decided with less known stays
     * decided with more, and points stay within their range.
     *
     * @param mayChange which rules may still read something that turns out or is changed
     */
    boolean isConceivable(Seen seen, Predicate<String> mayChange) {
        return switch (kind) {
            case BRING_IN ->
                seen.stands(process)
                        && seen.hangsOn().getOrDefault(process, List.of()).stream()
                                .allMatch(mayChange);
            case LET_STAND -> seen.stands(process);
            case PUT_FIRST ->
                seen.stands(process) && seen.ranked().stream().noneMatch(r -> isSurelyAhead(r, process, seen));
            case DISPLACE_FIRST -> mayBeOvertaken(seen);
        };
    }

    private static boolean isSurelyAhead(Standing.Ranked other, String process, Seen seen) {
        Standing.Ranked own = ranked(seen, process);
        return !other.process().equals(process)
                && other.status() == Status.RECOMMENDED
                && other.points().low() > own.points().high();
    }

    private boolean mayBeOvertaken(Seen seen) {
        if (seen.statuses().get(process) != Status.RECOMMENDED) {
            return true;
        }
        Standing.Ranked own = ranked(seen, process);
        return seen.ranked().stream()
                .anyMatch(r -> !r.process().equals(process)
                        && r.points().high() >= own.points().low());
    }

    private static Standing.Ranked ranked(Seen seen, String process) {
        return seen.ranked().stream()
                .filter(r -> r.process().equals(process))
                .findFirst()
                .orElseThrow();
    }

    /** Rules that stand in the way, where such can be named. */
    List<String> blockers(Seen seen) {
        if (kind == Goal.Kind.DISPLACE_FIRST) {
            return List.of();
        }
        return seen.stands(process)
                ? seen.hangsOn().getOrDefault(process, List.of())
                : seen.refusedBy().getOrDefault(process, List.of());
    }
}
